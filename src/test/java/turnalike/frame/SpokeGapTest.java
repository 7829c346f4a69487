package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Section;
import turnalike.units.Length;

/** The gap between spokes against closed forms, and against points strewn over both surfaces. */
@Tag("long-sums")
class SpokeGapTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static RadialBody cylinder(double diameter, double from, double length) {
        return RadialBody.level(mm(diameter), mm(from), mm(length));
    }

    /** Two cylinders in one plane are nearest at their inner rims: 2 (s sin(θ/2) − r cos(θ/2)). */
    @Test
    void cylinders_are_nearest_at_the_hub() {
        SpokeGap gap = SpokeGap.of(cylinder(20, 60, 200), 12, Length.ZERO);
        assertThat(gap.gap().mm())
                .isCloseTo(2 * (60 * Math.sin(Math.PI / 12) - 10 * Math.cos(Math.PI / 12)), within(1e-12));
        assertThat(gap.at().mm()).isZero();
        assertThat(gap.apart()).isEqualTo(1);
    }

    /** A ball's surface stands its radius off its centre, whatever the angle: 2 (s sin(θ/2) − R). */
    @Test
    void balls_are_nearest_on_the_line_of_their_centres() {
        EllipseArc half = new EllipseArc(mm(30), mm(15), mm(15), Length.ZERO, mm(15));
        RadialBody ball = new RadialBody(Outline.of(Length.ZERO, List.of(half), Section.ROUND), mm(70));
        for (int places : new int[] {3, 5, 8, 14, 40}) {
            double pitch = Math.PI / places;
            assertThat(SpokeGap.of(ball, places, Length.ZERO).gap().mm())
                    .as("%d places", places)
                    .isCloseTo(2 * (85 * Math.sin(pitch) - 15), within(1e-9));
            double apart = Math.hypot(2 * 85 * Math.sin(pitch), 12) - 30;
            if (apart > 0.1 && 2 * 85 * Math.sin(2 * pitch) - 30 > apart) {
                assertThat(SpokeGap.of(ball, places, mm(12)).gap().mm())
                        .as("%d places, staggered", places)
                        .isCloseTo(apart, within(1e-3));
            }
        }
    }

    /** Opposite one another: the two inner ends, hub to hub. */
    @Test
    void two_places_are_as_far_apart_as_the_hub_is_thick() {
        assertThat(SpokeGap.of(cylinder(20, 60, 200), 2, Length.ZERO).gap().mm())
                .isCloseTo(120, within(1e-9));
        // Set off by 50 the faces overlap no more than that: level 120, up 50 less both radii.
        assertThat(SpokeGap.of(cylinder(20, 60, 200), 2, mm(50)).gap().mm())
                .isCloseTo(Math.hypot(120, 30), within(1e-3));
    }

    @Test
    void a_square_counts_with_half_its_diagonal() {
        RadialBody square =
                new RadialBody(Outline.of(Length.ZERO, List.of(Line.level(mm(100), mm(10))), Section.SQUARE), mm(60));
        assertThat(SpokeGap.of(square, 12, Length.ZERO).gap().mm())
                .isCloseTo(
                        2 * (60 * Math.sin(Math.PI / 12) - 10 * Math.sqrt(2) * Math.cos(Math.PI / 12)), within(1e-12));
    }

    @Test
    void next_but_one_counts_once_the_neighbours_are_set_far_off() {
        RadialBody body = cylinder(20, 60, 200);
        SpokeGap far = SpokeGap.of(body, 12, mm(200));
        assertThat(far.apart()).isEqualTo(2);
        assertThat(far.gap()).isEqualTo(SpokeGap.of(body, 6, Length.ZERO).gap());
    }

    private static Outline anyOutline(Random random) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Length length = mm(5 + 30 * random.nextDouble());
            double low = 4 + 8 * random.nextDouble();
            double high = low + 10 * random.nextDouble();
            curves.add(
                    switch (random.nextInt(4)) {
                        case 0 -> new EllipseArc(length, length.times(0.5), length.times(0.5), mm(low), mm(high - low));
                        case 1 ->
                            new EllipseArc(length, length.times(0.5), length.times(0.5), mm(high), mm(low - high));
                        case 2 -> Polynomial.quadraticThrough(length, mm(low), mm(high), mm(low + 2));
                        default -> new Line(length, mm(low), mm(high));
                    });
        }
        return Outline.of(Length.ZERO, curves, Section.ROUND);
    }

    /** Points of a spoke's rings, in space: the spoke lies level at an angle, its axis so high. */
    private static List<double[]> strewn(RadialBody body, double angle, double height, int along, int around) {
        List<double[]> out = new ArrayList<>();
        double length = body.outline().length().mm();
        for (int i = 0; i <= along; i++) {
            double x = length * i / along;
            double r = body.outline().radiusAt(mm(x)).mm();
            double s = body.from().mm() + x;
            for (int k = 0; k < around; k++) {
                double phi = 2 * Math.PI * k / around;
                double aside = r * Math.cos(phi);
                out.add(new double[] {
                    s * Math.cos(angle) - aside * Math.sin(angle),
                    s * Math.sin(angle) + aside * Math.cos(angle),
                    height + r * Math.sin(phi)
                });
            }
        }
        return out;
    }

    private static double nearest(List<double[]> one, List<double[]> other) {
        double best = Double.POSITIVE_INFINITY;
        for (double[] p : one) {
            for (double[] q : other) {
                double x = p[0] - q[0];
                double y = p[1] - q[1];
                double z = p[2] - q[2];
                best = Math.min(best, x * x + y * y + z * z);
            }
        }
        return Math.sqrt(best);
    }

    /** No two points on the surfaces are nearer than the gap told, and some are nearly as near; in one plane and set off. */
    @Test
    void strewn_points_come_as_near_and_no_nearer() {
        Random random = new Random(7);
        int looked = 0;
        for (int round = 0; round < 24; round++) {
            RadialBody body = new RadialBody(anyOutline(random), mm(50 + 40 * random.nextDouble()));
            int places = 4 + 2 * random.nextInt(6);
            double stagger = round % 3 == 0 ? 0 : 40 * random.nextDouble();
            SpokeGap told = SpokeGap.of(body, places, mm(stagger));
            if (told.gap().mm() < 1) {
                continue;
            }
            double angle = 2 * Math.PI / places * told.apart();
            double height = told.apart() == 1 ? stagger : 0;
            double seen = nearest(strewn(body, 0, 0, 110, 36), strewn(body, angle, height, 110, 36));
            assertThat(seen)
                    .as("round %d", round)
                    .isGreaterThan(told.gap().mm() - 1e-6)
                    .isLessThan(told.gap().mm() + 0.5);
            assertThat(SpokeGap.isAtLeast(body, places, mm(stagger), told.gap().times(0.999)))
                    .isTrue();
            assertThat(SpokeGap.isAtLeast(body, places, mm(stagger), told.gap().times(1.01)))
                    .isFalse();
            looked++;
        }
        assertThat(looked).isGreaterThan(10);
    }
}
