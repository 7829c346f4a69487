package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Contours of one square from end to end, made from where its rims' points are: how it stands is read off its ends. */
class EndTurnTest {
    private static final double FOCAL = 1000;

    private static final double PLACE = 0.35;

    private static final double HALF = 0.025;

    /** A contour whose edges stand at two Y and whose ends' rims at so many times a place, by Y, with noise of a fifth of a pixel. */
    private static SquaredContour contour(double from, double to, DoubleUnaryOperator rim) {
        Sight sight = new Sight(FOCAL, 1200, 900, new Sight.AxisLine(600, 450, 0), 0);
        List<PixelPoint> points = new ArrayList<>();
        double step = 1 / FOCAL;
        double one = PLACE * rim.applyAsDouble(0.999 * from);
        double other = PLACE * rim.applyAsDouble(0.999 * to);
        for (double y = from; y < to; y += step) {
            points.add(sight.pixel(PLACE * rim.applyAsDouble(0.999 * y), y));
        }
        for (double x = other; x > -other; x -= step) {
            points.add(sight.pixel(x, to));
        }
        for (double y = to; y > from; y -= step) {
            points.add(sight.pixel(-PLACE * rim.applyAsDouble(0.999 * y), y));
        }
        for (double x = -one; x < one; x += step) {
            points.add(sight.pixel(x, from));
        }
        SplittableRandom dice = new SplittableRandom(3);
        return new SquaredContour(
                sight,
                points.stream()
                        .mapToDouble(point -> point.x() + 0.2 * dice.nextGaussian())
                        .toArray(),
                points.stream().mapToDouble(PixelPoint::y).toArray(),
                new double[points.size()]);
    }

    @Test
    void a_square_s_turn_is_read_off_its_end() {
        for (double degrees : new double[] {-44, -40, -30, -12, 0, 5, 20, 38, 43}) {
            SquareSection section = new SquareSection(HALF, Math.toRadians(degrees));
            SquaredContour contour =
                    contour(-section.seen(false), section.seen(true), across -> 1 / section.near(across));
            double seen = (section.seen(true) + section.seen(false)) / 2;
            for (boolean start : new boolean[] {true, false}) {
                EndTurn turn = EndTurn.of(contour, start, seen).orElseThrow();
                assertThat(Math.toDegrees(turn.from(section.arris())))
                        .as("%s degrees", degrees)
                        .isLessThan(1);
            }
        }
    }

    @Test
    void a_near_square_s_rim_is_plainly_no_round_s() {
        double half = 0.05;
        for (double degrees : new double[] {-44, -40, -30, -12, 0, 20, 43}) {
            SquareSection section = new SquareSection(half, Math.toRadians(degrees));
            SquaredContour contour =
                    contour(-section.seen(false), section.seen(true), across -> 1 / section.near(across));
            EndTurn turn = EndTurn.of(contour, true, (section.seen(true) + section.seen(false)) / 2)
                    .orElseThrow();
            assertThat(turn.plain()).as("%s degrees", degrees).isTrue();
        }
    }

    /** Seen in a view that leans by so many degrees too much or too little, its face narrower by a chamfer. */
    @Test
    void no_round_s_rim_is_plainly_a_square_s() {
        for (double radius : new double[] {0.015, 0.03, 0.05, 0.07}) {
            for (double lean : new double[] {-8, -5, -2, 0, 2, 5, 8}) {
                for (double chamfer : new double[] {0, 0.1, 0.3, 0.5}) {
                    double seen = radius / Math.sqrt(1 - radius * radius);
                    DoubleUnaryOperator rim = across -> round(radius, chamfer, Math.toRadians(lean), across);
                    SquaredContour contour = contour(-seen, seen, rim);
                    for (boolean start : new boolean[] {true, false}) {
                        assertThat(EndTurn.of(contour, start, seen).filter(EndTurn::plain))
                                .as("radius %s, lean %s, chamfer %s", radius, lean, chamfer)
                                .isEmpty();
                    }
                }
            }
        }
    }

    /** How far out a round's end is seen, in units of its place: a circle, and its chamfer beyond the face. */
    private static double round(double radius, double chamfer, double lean, double across) {
        double face = radius * (1 - chamfer);
        double most = 0;
        for (int angle = 0; angle <= 180; angle++) {
            double turned = Math.toRadians(angle - 90);
            for (int part = 0; part <= 20; part++) {
                double r = face + (radius - face) * part / 20;
                double depth = 1 - r * Math.cos(turned);
                if (Math.abs(r * Math.sin(turned) / depth - across) < 2.5e-3) {
                    double place = PLACE - (r - face) + lean * (1 - depth);
                    most = Math.max(most, place / depth / PLACE);
                }
            }
        }
        return most;
    }

    @Test
    void ends_that_contradict_one_another_tell_nothing() {
        EndTurn one = new EndTurn(Math.toRadians(43), 0.2, true);
        assertThat(one.with(new EndTurn(Math.toRadians(30), 0.2, true))).isEmpty();
        // A quarter of a turn on it is the same square.
        EndTurn both = one.with(new EndTurn(Math.toRadians(-45), 0.2, true)).orElseThrow();
        assertThat(Math.toDegrees(both.arris())).isCloseTo(44, within(1e-9));
    }

    @Test
    void a_section_shows_what_it_was_made_to() {
        for (double degrees : new double[] {-45, -20, 0, 33}) {
            SquareSection section = SquareSection.showing(0.03, Math.toRadians(degrees));
            assertThat((section.seen(true) + section.seen(false)) / 2).isCloseTo(0.03, within(1e-9));
        }
    }
}
