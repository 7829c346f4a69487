package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import turnalike.units.Angle;
import turnalike.units.Length;

class RimFitTest {
    /**
     * Gander, Golub and Strebel, BIT 34 (1994) 558–578, geometric fit: centre 4.73978, 2.98353, radius 4.71423, Σd² 1.22760, spread 1.41300
     * (paper VERIFIED, figures FROM MEMORY and recomputed, per shared/references.md j).
     */
    @Test
    void the_published_six_points_give_the_published_circle() {
        double[][] points = {{1, 7}, {2, 6}, {5, 8}, {7, 7}, {9, 5}, {3, 7}};
        List<RimPoint> rim = new ArrayList<>();
        for (double[] p : points) {
            rim.add(new RimPoint(Angle.ofRadians(Math.atan2(p[1], p[0])), Length.ofMm(Math.hypot(p[0], p[1]))));
        }
        RimFit fit = RimFit.of(rim);
        assertThat(fit.radius().mm()).isCloseTo(4.71423, within(5e-6));
        assertThat(fit.offset().mm() * Math.cos(fit.offsetAt().radians())).isCloseTo(4.73978, within(5e-6));
        assertThat(fit.offset().mm() * Math.sin(fit.offsetAt().radians())).isCloseTo(2.98353, within(5e-6));
        assertThat(fit.runOut().mm()).isCloseTo(1.41300, within(5e-6));
        assertThat(fit.residuals().stream().mapToDouble(r -> r.mm() * r.mm()).sum())
                .isCloseTo(1.22760, within(5e-6));
    }

    @Test
    void a_circle_off_the_axle_is_round() {
        // Exactly: the distance to a circle of radius 300 about (2, 0).
        RimFit fit = fit(16, angle -> 2 * Math.cos(angle) + Math.sqrt(90_000 - 4 * Math.pow(Math.sin(angle), 2)));
        assertThat(fit.runOut().mm()).isCloseTo(0, within(1e-9));
        assertThat(fit.offset().mm()).isCloseTo(2, within(1e-9));
        assertThat(fit.radius().mm()).isCloseTo(300, within(1e-9));
    }

    @Test
    void a_wave_of_order_one_is_only_offset_and_one_of_order_two_is_run_out_of_twice_its_height() {
        assertThat(fit(36, angle -> 300 + 0.5 * Math.cos(angle)).runOut().mm()).isLessThan(0.001);
        RimFit oval = fit(36, angle -> 300 + 0.5 * Math.cos(2 * angle));
        assertThat(oval.runOut().mm()).isCloseTo(1, within(1e-3));
        assertThat(oval.offset().mm()).isCloseTo(0, within(1e-9));
    }

    @Test
    void no_circle_goes_through_two_points_or_one_spot() {
        assertThatThrownBy(() -> fit(2, angle -> 1)).isInstanceOf(IllegalArgumentException.class);
        RimPoint spot = new RimPoint(Angle.ofDegrees(10), Length.ofMm(5));
        assertThatThrownBy(() -> RimFit.of(List.of(spot, spot, spot))).isInstanceOf(IllegalArgumentException.class);
    }

    private static RimFit fit(int points, DoubleUnaryOperator radiusMm) {
        List<RimPoint> rim = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            Angle at = Angle.ofDegrees(360.0 * i / points);
            rim.add(new RimPoint(at, Length.ofMm(radiusMm.applyAsDouble(at.radians()))));
        }
        return RimFit.of(rim);
    }
}
