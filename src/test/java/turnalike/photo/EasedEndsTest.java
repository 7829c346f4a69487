package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cylinders with chamfered ends whose corners sandpaper has taken off: taken for chamfers with sharp corners they came out a third too narrow. */
class EasedEndsTest {
    private static final double HALF = 0.45;

    private static final double RADIUS = 0.045;

    private static final double WIDE = 0.22;

    private static final double EASED = 0.5;

    /** From the start's face to the end's. */
    private static List<double[]> piece() {
        List<double[]> circles = new ArrayList<>();
        for (int k = 0; k <= 60; k++) {
            circles.add(new double[] {-HALF + deep(k / 60.0), out(k / 60.0)});
        }
        for (int k = 60; k >= 0; k--) {
            circles.add(new double[] {HALF - deep(k / 60.0), out(k / 60.0)});
        }
        return circles;
    }

    private static double out(double share) {
        return RADIUS * (1 - WIDE + WIDE * ((1 - EASED) * share + EASED * Math.sin(Math.PI / 2 * share)));
    }

    private static double deep(double share) {
        return RADIUS * WIDE * ((1 - EASED) * share + EASED * (1 - Math.cos(Math.PI / 2 * share)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 1.5})
    void eased_chamfers_tell_the_lean(double lean) throws Unsure {
        ViewFit.View view = HullContour.fit(piece(), lean, 0.05).fit(HullContour.AXIS);
        assertThat(Math.toDegrees(view.tilt())).isCloseTo(lean, within(0.7));
        double length = (view.end().place() - view.start().place()) * Math.exp(view.logFocal());
        assertThat(length).isCloseTo(2 * HALF, within(0.0045 * 2 * HALF));
    }
}
