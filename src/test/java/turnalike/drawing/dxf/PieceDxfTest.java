package turnalike.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.DrawingsTest;
import turnalike.drawing.piece.Samples;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Details;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class PieceDxfTest {
    /** The chords' promise, and what six printed decimals take. */
    private static final double TRUE_MM = 0.005 + 2e-6;

    @Test
    void the_outline_read_back_follows_every_radius_and_closes_along_the_axis() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            DxfReading read = new DxfReading(PieceDxf.outline(pattern));
            assertThat(read.header).containsEntry("$ACADVER", "AC1009").containsEntry("$INSUNITS", "4");
            assertThat(read.entities).hasSize(1);
            DxfReading.Entity outline = read.entities.get(0);
            assertThat(outline.groups()).containsEntry(70, "1").containsEntry(8, "OUTLINE");
            List<double[]> vertices = outline.vertices();
            int last = vertices.size() - 1;
            assertThat(vertices.get(last - 1)[0]).isCloseTo(pattern.length().mm(), within(1e-6));
            assertThat(vertices.get(last - 1)[1]).isZero();
            assertThat(vertices.get(last)).containsExactly(0, 0, 0);
            follows(pattern, vertices.subList(0, last - 1));
        }
    }

    @Test
    void the_template_is_the_same_profile_under_a_straight_back_with_a_line_at_each_inner_mark() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            DxfReading read = new DxfReading(PieceDxf.template(pattern, UnitSystem.METRIC));
            List<double[]> card = read.entities.get(0).vertices();
            follows(pattern, card.subList(0, card.size() - 2));
            double back = pattern.outline().largestRadius().mm() + 30;
            assertThat(card.get(card.size() - 1)).containsExactly(new double[] {0, back, 0}, within(1e-6));
            List<Double> lines = read.entities.stream()
                    .filter(entity -> entity.kind().equals("LINE"))
                    .map(line -> {
                        assertThat(line.number(10)).isEqualTo(line.number(11));
                        return line.number(10);
                    })
                    .toList();
            List<Mark> inner = pattern.marks().subList(1, pattern.marks().size() - 1);
            assertThat(lines).hasSameSizeAs(inner);
            for (int i = 0; i < lines.size(); i++) {
                assertThat(lines.get(i)).isCloseTo(inner.get(i).place().mm(), within(1e-6));
            }
        }
    }

    @Test
    void circle_arcs_stay_arcs() {
        Length ten = Length.ofMm(10);
        Pattern pattern = new Pattern(
                "round details",
                new Stock(Section.ROUND, Length.ofMm(60), Length.ofMm(40)),
                List.of(
                        new Bead(Length.ofMm(20), Length.ofMm(30), Length.ofMm(50), Details.NONE),
                        new Cove(ten.times(2), Length.ofMm(50), Length.ofMm(30), Details.NONE)));
        List<double[]> vertices =
                new DxfReading(PieceDxf.outline(pattern)).entities.get(0).vertices();
        // Semicircles of radius 10: tan(180°/4) = 1, the bead clockwise, the cove anticlockwise, a shoulder between
        // them.
        assertThat(vertices).hasSize(6);
        assertThat(vertices.get(0)).containsExactly(new double[] {0, 15, -1}, within(1e-6));
        assertThat(vertices.get(1)).containsExactly(new double[] {20, 15, 0}, within(1e-6));
        assertThat(vertices.get(2)).containsExactly(new double[] {20, 25, 1}, within(1e-6));
    }

    @Test
    void names_of_any_alphabet_leave_plain_text_on_one_line() {
        Pattern three = Samples.three();
        Pattern named = new Pattern("Spöke №1\n  0\nEOF", three.stock(), three.members());
        assertThat(new DxfReading(PieceDxf.template(named, UnitSystem.INCH)).entities)
                .isNotEmpty();
    }

    /** Each stretch of the polyline, walked in small steps, lies on the outline; and the whole length is walked without a gap. */
    private static void follows(Pattern pattern, List<double[]> vertices) {
        Outline outline = pattern.outline();
        assertThat(vertices.get(0)[0]).isZero();
        double reached = 0;
        for (int i = 0; i + 1 < vertices.size(); i++) {
            double[] from = vertices.get(i);
            double[] to = vertices.get(i + 1);
            assertThat(from[0]).as("forwards, from where the last ended").isCloseTo(reached, within(1e-9));
            assertThat(to[0]).isGreaterThanOrEqualTo(from[0]);
            reached = to[0];
            if (to[0] - from[0] < 1e-6) {
                continue; // a shoulder
            }
            for (double[] point : along(from, to)) {
                double radius = outline.radiusAt(Length.ofMm(point[0])).mm();
                assertThat(nearest(outline, point, radius)).isLessThanOrEqualTo(TRUE_MM);
            }
        }
        assertThat(reached).isCloseTo(pattern.length().mm(), within(1e-6));
    }

    /** Straight across where the outline is not steep, else the true distance, sought nearby. */
    private static double nearest(Outline outline, double[] point, double radius) {
        double best = Math.abs(point[1] - radius);
        for (int k = -400; k <= 400 && best > TRUE_MM; k++) {
            double x = point[0] + k * 2.5e-5;
            if (x > 0 && x < outline.end().mm()) {
                double r = outline.radiusAt(Length.ofMm(x)).mm();
                best = Math.min(best, Math.hypot(x - point[0], r - point[1]));
            }
        }
        return best;
    }

    /** Places between two vertices: on the chord, or on the arc that its bulge tells (angle 4·atan bulge). */
    private static List<double[]> along(double[] from, double[] to) {
        List<double[]> out = new ArrayList<>();
        double angle = 4 * Math.atan(from[2]);
        for (double u : new double[] {0.1, 0.3, 0.5, 0.7, 0.9}) {
            if (angle == 0) {
                out.add(new double[] {from[0] + u * (to[0] - from[0]), from[1] + u * (to[1] - from[1])});
                continue;
            }
            double half = Math.hypot(to[0] - from[0], to[1] - from[1]) / 2;
            double radius = half / Math.sin(Math.abs(angle) / 2);
            double apothem = radius * Math.cos(Math.abs(angle) / 2) * Math.signum(angle);
            double ux = (to[0] - from[0]) / (2 * half);
            double uy = (to[1] - from[1]) / (2 * half);
            double cx = (from[0] + to[0]) / 2 - apothem * uy;
            double cy = (from[1] + to[1]) / 2 + apothem * ux;
            double start = Math.atan2(from[1] - cy, from[0] - cx);
            out.add(new double[] {cx + radius * Math.cos(start + u * angle), cy + radius * Math.sin(start + u * angle)
            });
        }
        return out;
    }
}
