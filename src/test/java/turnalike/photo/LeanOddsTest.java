package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Leans that are drawn as a camera held by eye has them, of pieces the ends of which are sharp, chamfered, rounded over or domed as they come. */
@Tag("long-sums")
class LeanOddsTest {
    private static final double HALF = 0.45;

    private static final int PIECES = 24;

    /** From an end's face to its flank: how far in, and the radius there. */
    private static List<double[]> end(SplittableRandom dice, double radius) {
        double kind = dice.nextDouble();
        double wide = kind < 0.3 ? 0 : kind < 0.6 ? dice.nextDouble(0.05, 0.3) : dice.nextDouble(0.1, 0.5);
        double eased = kind < 0.6 ? dice.nextDouble(0.5) : 1;
        List<double[]> circles = new ArrayList<>();
        for (int k = 0; k <= 40; k++) {
            double share = k / 40.0;
            double out = (1 - eased) * share + eased * Math.sin(Math.PI / 2 * share);
            double deep = (1 - eased) * share + eased * (1 - Math.cos(Math.PI / 2 * share));
            circles.add(new double[] {radius * wide * deep, radius * (1 - wide + wide * out)});
        }
        return circles;
    }

    @Test
    void leans_lie_within_what_is_stated_as_often_as_they_should() throws Unsure {
        SplittableRandom dice = new SplittableRandom(1128);
        int within = 0;
        int withinTwo = 0;
        double squares = 0;
        for (int k = 0; k < PIECES; k++) {
            double radius = dice.nextDouble(0.02, 0.06);
            List<double[]> piece = new ArrayList<>();
            end(dice, radius).forEach(circle -> piece.add(new double[] {-HALF + circle[0], circle[1]}));
            end(dice, radius).forEach(circle -> piece.add(new double[] {HALF - circle[0], circle[1]}));
            double lean = Math.toRadians(Math.max(-6, Math.min(6, 2.5 * dice.nextGaussian())));
            ViewFit.View view =
                    HullContour.fit(piece, Math.toDegrees(lean), 0.1).fit(HullContour.AXIS);
            double off = Math.abs(view.tilt() - lean);
            within += off < view.tiltUncertainty() ? 1 : 0;
            withinTwo += off < 2 * view.tiltUncertainty() ? 1 : 0;
            squares += Math.toDegrees(off) * Math.toDegrees(off);
        }
        // Of 24, 16 are expected within one, 23 within two; one in a hundred times fewer than 11 and than 20.
        assertThat(within).isGreaterThan(10);
        assertThat(withinTwo).isGreaterThan(19);
        assertThat(Math.sqrt(squares / PIECES)).isLessThan(1.25);
    }
}
