package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.frame.RowOpening.Ball;
import turnalike.frame.RowOpening.Side;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Angle;
import turnalike.units.Length;

class RowOpeningTest {
    private static final double WITHIN = 2e-6;

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Outline body(Curve... curves) {
        return Outline.of(Length.ZERO, List.of(curves), Section.ROUND);
    }

    private static Curve level(double length, double radius) {
        return Line.level(mm(length), mm(radius));
    }

    private static Ball ball(Outline body, Side left, Side right, double apart, double height, double rakeDeg) {
        return new RowOpening(body, left, right, mm(apart), mm(height), Angle.ofDegrees(rakeDeg)).widest();
    }

    private static double between(Outline body, double apart, double height, double rakeDeg) {
        return ball(body, Side.PIECE, Side.PIECE, apart, height, rakeDeg)
                .diameter()
                .mm();
    }

    @ParameterizedTest
    @CsvSource({"0, 80", "25, 80", "40, 80"})
    void between_cylinders_a_ball_as_wide_as_the_gap_passes(double rakeDeg, double gap) {
        assertThat(between(body(level(900, 20)), 120, 900, rakeDeg)).isCloseTo(gap, within(WITHIN));
    }

    /** Two parallel rails, the perpendicular between them: H cos(rake). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 35})
    void where_the_rails_are_nearer_than_the_pieces_they_decide(double rakeDeg) {
        assertThat(between(body(level(60, 10)), 400, 60, rakeDeg))
                .isCloseTo(60 * Math.cos(Math.toRadians(rakeDeg)), within(WITHIN));
    }

    /** On one tread the foot is level and the rail slopes: with the axes far apart a circle in the wedge at the taller piece. */
    @Test
    void on_a_tread_the_ball_lies_by_the_taller_piece() {
        double rises = 0.3 * 400;
        Ball ball = RowOpening.ofTwo(
                        body(level(60, 10)), body(level(60 + rises, 10)), mm(400), mm(60), mm(0), mm(rises))
                .widest();
        // It touches the foot, the piece's side at 390 and the rail 60 + 0.3 x: (60 + 0.3 (390 - r) - r) cos = r.
        double expected = (60 + 0.3 * 390) / (1 + 0.3 + Math.hypot(1, 0.3));
        assertThat(ball.diameter().mm() / 2).isCloseTo(expected, within(WITHIN));
        assertThat(ball.aside().mm()).isCloseTo(390 - expected, within(1e-2));
        double narrow = RowOpening.ofTwo(body(level(900, 20)), body(level(940, 25)), mm(120), mm(900), mm(0), mm(40))
                .widest()
                .diameter()
                .mm();
        assertThat(narrow).isCloseTo(75, within(WITHIN));
    }

    /** Two of one kind on a rake are the same told either way, bodies and rails mirrored as well. */
    @Test
    void two_alike_on_a_rake_are_two_alike_on_a_rake() {
        Outline vase = body(level(40, 20), new EllipseArc(mm(60), mm(30), mm(30), mm(12), mm(12)), level(120, 12));
        double rise = 110 * Math.tan(Math.toRadians(32));
        double told = between(vase, 110, 220, 32);
        assertThat(RowOpening.ofTwo(vase, vase, mm(110), mm(220), mm(rise), mm(rise))
                        .widest()
                        .diameter()
                        .mm())
                .isCloseTo(told, within(2 * WITHIN));
        Outline other = body(level(70, 20), new EllipseArc(mm(60), mm(30), mm(30), mm(12), mm(12)), level(120, 12));
        double there = RowOpening.ofTwo(vase, other, mm(110), mm(220), mm(rise - 30), mm(rise))
                .widest()
                .diameter()
                .mm();
        double back = RowOpening.ofTwo(other, vase, mm(110), mm(250), mm(30 - rise), mm(-rise))
                .widest()
                .diameter()
                .mm();
        assertThat(back).isCloseTo(there, within(2 * WITHIN));
    }

    /**
     * Beads whose sides are half circles of radius b and which fill the height: a circle that touches both and the lower rail. With half the
     * pitch p, the beads' centres h up: Apollonius' circle of two equal circles and a line through (p/2, ρ): (p/2)² + (h − ρ)² = (b + ρ)², so
     * ρ = ((p/2)² + h² − b²) / (2 (h + b)).
     */
    @Test
    void a_circle_between_two_circles_and_a_line_is_apollonius() {
        double b = 40;
        double core = 5;
        double rail = 44;
        Outline beads = body(
                level(rail - b, core), new EllipseArc(mm(2 * b), mm(b), mm(b), mm(core), mm(b)), level(rail - b, core));
        double half = 60 - core; // from a bead's centre to the half-way line
        double expected = (half * half + rail * rail - b * b) / (2 * (rail + b));
        assertThat(between(beads, 120, 2 * rail, 0) / 2).isCloseTo(expected, within(WITHIN));
    }

    /** Beads an equal distance apart, in the middle of them the widest: two circles above and two below, ρ = √(m² + h²) − b. */
    @Test
    void between_four_beads_the_circle_touches_all_of_them() {
        double b = 20;
        double h = 34;
        Outline beads = body(
                new EllipseArc(mm(2 * b), mm(b), mm(b), mm(10), mm(b)),
                level(2 * h - 2 * b, 10),
                new EllipseArc(mm(2 * b), mm(b), mm(b), mm(10), mm(b)));
        // So near to one another that the beads run together: what is left lies between the beads.
        double m = 25 - 10;
        double expected = Math.min(15, Math.hypot(m, h) - b);
        assertThat(between(beads, 50, 2 * h + 2 * b, 0) / 2).isCloseTo(expected, within(WITHIN));
    }

    /** A circle of radius ρ between an upright line and a circle of radius c about a point e from it touches where ρ = (e - c) / 2 or more. */
    @Test
    void beside_a_post_a_cove_as_deep_as_a_half_circle_gives_what_it_has() {
        Outline cove = body(level(50, 40), new EllipseArc(mm(60), mm(30), mm(30), mm(40), mm(-30)), level(50, 40));
        // On the cove's middle: a circle between the face and the rims' corners, e - 40 = 20 from the face: D = 20, t
        // = 30:
        double expected = (20 + 30.0 * 30 / 20) / 2;
        Ball ball = ball(cove, Side.POST, Side.PIECE, 60, 160, 0);
        // but never more than the cove's own bottom leaves: (60 - 10) / 2
        assertThat(ball.diameter().mm() / 2).isCloseTo(Math.min(expected, 25), within(WITHIN));
        assertThat(ball.up().mm()).isCloseTo(80, within(0.01));
    }

    @Test
    void a_narrow_mouth_keeps_a_ball_out_of_a_deep_cove() {
        Outline cove = body(level(50, 40), new EllipseArc(mm(30), mm(15), mm(15), mm(40), mm(-35)), level(50, 40));
        double expected = (20 + 15.0 * 15 / 20) / 2;
        assertThat(ball(cove, Side.POST, Side.PIECE, 60, 130, 0).diameter().mm() / 2)
                .isCloseTo(expected, within(WITHIN));
        assertThat(between(cove, 120, 130, 0) / 2).isCloseTo(Math.hypot(20, 15), within(WITHIN));
    }

    private static Outline random(Random random) {
        List<Curve> curves = new ArrayList<>();
        int count = 3 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            double length = 5 + 40 * random.nextDouble();
            double one = 6 + 14 * random.nextDouble();
            double other = 6 + 14 * random.nextDouble();
            curves.add(
                    switch (random.nextInt(4)) {
                        case 0 -> new Line(mm(length), mm(one), mm(other));
                        case 1 ->
                            new EllipseArc(mm(length), mm(length / 2), mm(length / 2), mm(one), mm(2 + other / 2));
                        case 2 ->
                            new EllipseArc(mm(length), mm(length / 2), mm(length / 2), mm(12 + one), mm(-other / 2));
                        default ->
                            Polynomial.hermite(
                                    mm(length),
                                    mm(one),
                                    random.nextGaussian() / 3,
                                    mm(other),
                                    random.nextGaussian() / 3);
                    });
        }
        return Outline.of(Length.ZERO, curves, Section.ROUND);
    }

    /** Places of the outline, close where it may stand upright: at a segment's ends. */
    private static double[][] sampled(Outline body, int eachCurve) {
        List<double[]> out = new ArrayList<>();
        for (Segment segment : body.segments()) {
            double length = segment.curve().length().mm();
            for (int i = 0; i <= eachCurve; i++) {
                double x = length * (1 - Math.cos(Math.PI * i / eachCurve)) / 2;
                out.add(new double[] {
                    segment.curve().radiusMm(x), segment.start().mm() + x
                });
            }
        }
        return out.toArray(new double[0][]);
    }

    /** The circle about a place as the samples leave it: never smaller than the true one. */
    private static double sampledRadius(
            double[][] samples, double x, double y, Side left, Side right, double apart, double height, double rake) {
        double slope = Math.tan(rake);
        double cos = Math.cos(rake);
        double radius = Math.min((y - x * slope) * cos, (height + x * slope - y) * cos);
        radius = Math.min(radius, side(samples, left, x, y));
        return Math.min(radius, side(samples, right, apart - x, y - apart * slope));
    }

    private static double side(double[][] samples, Side side, double aside, double up) {
        if (side == Side.POST) {
            return aside;
        }
        double least = Double.POSITIVE_INFINITY;
        for (double[] sample : samples) {
            double out = Math.max(0, aside - sample[0]);
            least = Math.min(least, Math.hypot(out, up - sample[1]));
        }
        return least;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void no_circle_of_a_fine_grid_is_larger_and_the_one_found_is_free(long seed) {
        Random random = new Random(seed);
        Outline body = random(random);
        Side left = random.nextInt(3) == 0 ? Side.POST : Side.PIECE;
        Side right = left == Side.PIECE && random.nextInt(3) == 0 ? Side.POST : Side.PIECE;
        double rakeDeg = random.nextBoolean() ? 0 : 50 * random.nextDouble() - 25;
        double rake = Math.toRadians(rakeDeg);
        double apart = 45 + 40 * random.nextDouble();
        double height = body.length().mm() * (0.8 + 0.2 * random.nextDouble());
        Ball ball = ball(body, left, right, apart, height, rakeDeg);
        double[][] samples = sampled(body, 2000);
        double found = sampledRadius(samples, ball.aside().mm(), ball.up().mm(), left, right, apart, height, rake);
        assertThat(ball.diameter().mm() / 2).as("seed %d", seed).isCloseTo(found, within(0.01));
        assertThat(ball.atMost().mm() - ball.diameter().mm()).isBetween(0.0, WITHIN * 1.001);
        double[][] coarse = sampled(body, 120);
        double gridBest = 0;
        for (double x = 0; x <= apart; x += apart / 60) {
            for (double y = -apart; y <= height + apart; y += 1.5) {
                gridBest = Math.max(gridBest, sampledRadius(coarse, x, y, left, right, apart, height, rake));
            }
        }
        assertThat(gridBest)
                .as("seed %d", seed)
                .isLessThanOrEqualTo(ball.diameter().mm() / 2 + 0.2);
    }

    @Test
    void asking_for_a_size_agrees_with_the_largest() {
        for (long seed = 20; seed < 40; seed++) {
            Random random = new Random(seed);
            Outline body = random(random);
            RowOpening opening = new RowOpening(
                    body, Side.PIECE, Side.PIECE, mm(60), body.length(), Angle.ofDegrees((double) (seed % 3) * 15));
            Length widest = opening.widest().diameter();
            assertThat(opening.passesMoreThan(widest.minus(mm(1e-4))))
                    .as("seed %d", seed)
                    .isTrue();
            assertThat(opening.passesMoreThan(widest.plus(mm(1e-5))))
                    .as("seed %d", seed)
                    .isFalse();
        }
    }

    /** Waists in the middle on a rake leave a slanting passage of one width: the least of the boxes to tell apart. */
    @Test
    void a_passage_of_one_width_along_a_slant_is_found_too() {
        Outline waist = body(new Line(mm(400), mm(30), mm(10)), new Line(mm(400), mm(10), mm(30)));
        double rise = 120 * Math.tan(Math.toRadians(35));
        double k = 20.0 / 400;
        // At one height the walls are 10 + k t and 10 + k (rise - t) from their axes.
        double expected = (120 - 20 - k * rise) / Math.hypot(1, k);
        assertThat(between(waist, 120, 800, 35)).isCloseTo(expected, within(WITHIN));
    }

    @Test
    void bodies_that_run_into_one_another_from_end_to_end_let_nothing_through() {
        assertThat(between(body(level(300, 30)), 50, 300, 0)).isZero();
    }
}
