package turnalike.job.original;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import turnalike.trace.Snap;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Drawings of an invented foot by a hand that shakes, round a picture's pixels, and in a fine zigzag. */
class ShakyDrawingTest {
    private static final int LENGTH_MM = 150;
    private static final List<String> KINDS = List.of("tenon", "fillet", "bead", "taper", "tenon");

    /** A tenon, a fillet, a bead between roots of 15, a taper and a tenon. */
    private static double radius(double x) {
        if (x < 20) {
            return 8;
        } else if (x < 26) {
            return 15;
        } else if (x < 46) {
            return 15 + 6 * Math.sqrt(1 - Math.pow((x - 36) / 10, 2));
        } else if (x < 126) {
            return 12 + 6 * (x - 46) / 80;
        }
        return 8;
    }

    private static Traced traced(List<double[]> points, Optional<Length> error) {
        StringBuilder path = new StringBuilder("M0 0");
        for (double[] each : points) {
            path.append(String.format(Locale.ROOT, " L%.4f %.4f", each[0], -each[1]));
        }
        String svg = "<svg width=\"200mm\" height=\"80mm\" viewBox=\"0 -40 200 80\"><path d=\"%s L%d 0 Z\"/></svg>"
                .formatted(path, LENGTH_MM);
        OriginalWish wish = OriginalWish.of(UnitSystem.METRIC, Optional.empty(), error, Snap.NONE);
        return OriginalTrace.drawing(svg, DrawnOutline.Format.SVG, wish)
                .traced()
                .orElseThrow();
    }

    private static List<double[]> each(double step, DoubleUnaryOperator radius) {
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i <= Math.round(LENGTH_MM / step); i++) {
            out.add(new double[] {i * step, radius.applyAsDouble(i * step)});
        }
        return out;
    }

    private static List<String> kinds(Traced traced) {
        return traced.run().members().stream()
                .map(each -> each.member().kind().word())
                .toList();
    }

    @Test
    void a_shaking_hand_is_fitted_to_within_its_own_shake() {
        Random random = new Random(11);
        for (double shake : new double[] {0.05, 0.1, 0.3}) {
            Traced traced = traced(each(0.4, x -> radius(x) + shake * random.nextGaussian()), Optional.empty());
            assertThat(kinds(traced)).as("shake %s", shake).isEqualTo(KINDS);
            assertThat(traced.original().surest().mm()).isCloseTo(shake, within(0.35 * shake));
            assertThat(traced.warnings()).anyMatch(line -> line.startsWith("The outline wavers by some"));
            List<TracedMember> members = traced.run().members();
            assertThat(members.get(3).member().length().mm()).isCloseTo(80, within(0.6));
        }
    }

    @Test
    void how_well_its_diameters_are_known_may_be_said() {
        Random random = new Random(12);
        Traced traced = traced(each(0.4, x -> radius(x) + 0.1 * random.nextGaussian()), Optional.of(Length.ofMm(0.3)));
        assertThat(kinds(traced)).isEqualTo(KINDS);
        assertThat(traced.original().surest().mm()).isEqualTo(0.15);
        assertThat(traced.warnings()).noneMatch(line -> line.contains("wavers"));
    }

    @Test
    void steps_of_a_pictures_pixels_are_followed_halfway() {
        double pixel = 0.5;
        List<double[]> out = new ArrayList<>();
        double last = 0;
        for (int i = 0; i < LENGTH_MM / pixel; i++) {
            double r = Math.round(radius((i + 0.5) * pixel) / pixel) * pixel;
            if (r != last) {
                out.add(new double[] {i * pixel, last});
                out.add(new double[] {i * pixel, r});
            }
            last = r;
        }
        out.add(new double[] {LENGTH_MM, last});
        Traced traced = traced(out.subList(1, out.size()), Optional.empty());
        assertThat(kinds(traced)).isEqualTo(KINDS);
        assertThat(traced.warnings()).anyMatch(line -> line.startsWith("The outline runs in steps of 0.5 mm"));
    }

    /** Twelve grooves with square shoulders: the edges are as upright and alike as a picture's steps. */
    @Test
    void grooves_in_a_row_are_no_steps() {
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            double r = i % 2 == 0 ? 10 : 9;
            out.add(new double[] {i * 6, r});
            out.add(new double[] {i * 6 + 6, r});
        }
        Traced traced = traced(out, Optional.empty());
        assertThat(traced.run().members()).hasSize(25);
        assertThat(traced.warnings()).noneMatch(line -> line.contains("steps"));
    }

    @Test
    void a_fine_zigzag_is_one_cylinder() {
        int[] next = {0};
        Traced traced = traced(each(0.1, x -> 10 + next[0]++ % 2), Optional.empty());
        assertThat(traced.run().members()).hasSizeLessThan(4);
        assertThat(traced.warnings()).anyMatch(line -> line.startsWith("The outline wavers by some"));
    }

    @Test
    void what_is_drawn_exactly_is_still_taken_exactly() {
        Traced traced = traced(each(0.4, ShakyDrawingTest::radius), Optional.empty());
        assertThat(traced.original().surest().mm()).isEqualTo(0.02);
        assertThat(traced.warnings()).noneMatch(line -> line.contains("wavers") || line.contains("steps"));
    }
}
