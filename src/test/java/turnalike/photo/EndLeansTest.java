package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far off the lean is that two ends of one kind tell, and whether what is stated holds, over many exact contours: what docs/photo.md says of it. */
@Tag("long-sums")
class EndLeansTest {
    private static final double FOCAL = 1280;

    private static final double HALF = 0.34;

    private static final double NOISE = 0.05;

    private static final int PIECES = 12;

    private static final Sight.AxisLine AXIS = new Sight.AxisLine(600, 450, 0.1);

    /** Circles of a piece whose rims have such a chamfer or rounding, as a share of their radius; it is so much thicker in its middle. */
    private static List<double[]> piece(double rim, double chamfer, double round, double thicker) {
        List<double[]> circles = new ArrayList<>();
        for (int k = 0; k <= 40; k++) {
            double turn = Math.PI / 2 * k / 40;
            double in = round > 0 ? round * rim * (1 - Math.cos(turn)) : chamfer * rim * k / 40;
            double out = round > 0 ? round * rim * (1 - Math.sin(turn)) : chamfer * rim * (1 - k / 40.0);
            circles.add(new double[] {-HALF + in, rim - out});
            circles.add(new double[] {HALF - in, rim - out});
        }
        for (int k = -100; k <= 100; k++) {
            double share = k / 100.0;
            double place = (HALF - (chamfer + round) * rim) * share;
            circles.add(new double[] {place, rim + thicker * rim * (1 - share * share)});
        }
        return circles;
    }

    /** Noise of neighbouring points goes together, as the picture's softness makes it. */
    private static double[] noisy(double[] line, SplittableRandom dice) {
        double[] out = line.clone();
        double[] noise = new double[line.length + 2];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = NOISE * dice.nextGaussian();
        }
        for (int i = 0; i < line.length; i++) {
            out[i] += (noise[i] + noise[i + 1] + noise[i + 2]) / Math.sqrt(3);
        }
        return out;
    }

    @ParameterizedTest
    @CsvSource({"chamfer, 0.04, 0.4", "rounding, 0.024, 1.0", "rounding, 0.04, 0.5", "handle, 0.04, 0.5"})
    void two_ends_of_a_kind_tell_the_lean(String kind, double rim, double mostDegrees) throws Unsure {
        SplittableRandom dice = new SplittableRandom(5);
        FocalGuess guess = new FocalGuess(FOCAL, 0.03, "a lens known to three per cent");
        double squares = 0;
        int beyond = 0;
        for (int k = 0; k < PIECES; k++) {
            double lean = Math.toRadians(dice.nextDouble(-3, 3));
            double chamfer = kind.equals("chamfer") ? dice.nextDouble(0.05, 0.3) : 0;
            double round = kind.equals("chamfer") ? 0 : dice.nextDouble(0.1, 0.6);
            double thicker = kind.equals("handle") ? dice.nextDouble(0.1, 0.5) : 0;
            Sight sight = new Sight(FOCAL, 1200, 900, AXIS, lean);
            double[][] points = HullContour.of(piece(rim, chamfer, round, thicker), sight, 0);
            ViewFit.View view = new ViewFit(
                            noisy(points[0], dice),
                            noisy(points[1], dice),
                            new double[points[0].length],
                            1200,
                            900,
                            guess,
                            ViewFit.TiltGuess.BY_EYE)
                    .fit(AXIS);
            double off = view.tilt() - lean;
            squares += off * off;
            beyond += Math.abs(off) > 2.5 * view.tiltUncertainty() ? 1 : 0;
        }
        assertThat(Math.toDegrees(Math.sqrt(squares / PIECES))).isLessThan(mostDegrees);
        assertThat(beyond).isLessThanOrEqualTo(1);
    }
}
