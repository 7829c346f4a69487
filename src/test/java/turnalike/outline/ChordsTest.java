package turnalike.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Length;

class ChordsTest {
    private static List<Polynomial> random(Random random) {
        List<MonotoneCubic.Point> points = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < 2 + random.nextInt(6); i++) {
            points.add(new MonotoneCubic.Point(Length.ofMm(at), Length.ofMm(5 + 20 * random.nextDouble())));
            at += 1 + 10 * random.nextDouble();
        }
        return MonotoneCubic.through(points);
    }

    /** Samples never see more than the true gap; with 2,000 of them they miss the top of a cubic by a few millionths of it. */
    @Test
    void the_gap_is_the_greatest_that_samples_find() {
        Seeds.each(60, random -> {
            List<Polynomial> pieces = random(random);
            Chords chords = Chords.of(pieces);
            double length =
                    pieces.stream().mapToDouble(piece -> piece.length().mm()).sum();
            double from = 0.5 * length * random.nextDouble();
            double to = from + (length - from) * (0.1 + 0.9 * random.nextDouble());
            double sampled = 0;
            double first = chords.radiusMm(from);
            double last = chords.radiusMm(to);
            for (int i = 0; i <= 2000; i++) {
                double u = i / 2000.0;
                double line = first * (1 - u) + last * u;
                sampled = Math.max(sampled, Math.abs(chords.radiusMm(from + u * (to - from)) - line));
            }
            double gap = chords.gapMm(from, to);
            assertThat(gap).isGreaterThanOrEqualTo(sampled - 1e-9);
            assertThat(gap).isCloseTo(sampled, within(1e-4));
        });
    }

    /** r = 10 + 4u(1 − u) over 8 mm stands 1 above its chord at the middle; over its first half the middle is a quarter of that. */
    @Test
    void a_parabola_stands_a_quarter_as_far_above_half_its_chord() {
        Chords bow = Chords.of(List.of(new Polynomial(Length.ofMm(8), List.of(10.0, 4.0, -4.0))));
        assertThat(bow.gapMm(0, 8)).isCloseTo(1, within(1e-12));
        assertThat(bow.gapMm(0, 4)).isCloseTo(0.25, within(1e-12));
        assertThat(bow.radiusMm(4)).isCloseTo(11, within(1e-12));
    }

    @Test
    void a_chord_backwards_and_a_curve_of_nothing_are_faults_of_ours() {
        Chords flat = Chords.of(List.of(new Polynomial(Length.ofMm(8), List.of(10.0))));
        assertThat(flat.gapMm(1, 7)).isZero();
        assertThatThrownBy(() -> flat.gapMm(3, 3)).hasMessageContaining("3.0");
        assertThatThrownBy(() -> Chords.of(List.of())).hasMessageContaining("no pieces");
    }
}
