package turnalike.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Length;

/** What every curve must keep. */
class CurveTest {
    private static List<Curve> curves(Random random) {
        double length = 1 + 80 * random.nextDouble();
        double from = 1 + 20 * random.nextDouble();
        double to = 1 + 20 * random.nextDouble();
        double halfWidth = length * (0.6 + random.nextDouble());
        double centre = length - halfWidth + (2 * halfWidth - length) * random.nextDouble();
        double rise = (random.nextBoolean() ? 1 : -0.9) * from * random.nextDouble();
        return List.of(
                new Line(mm(length), mm(from), mm(to)),
                new EllipseArc(mm(length), mm(centre), mm(halfWidth), mm(from), mm(rise)),
                Polynomial.quadraticThrough(mm(length), mm(from), mm((from + to) / 2 * 1.1), mm(to)),
                Polynomial.hermite(mm(length), mm(from), 0.1, mm(to), -0.1));
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    @Test
    void every_integral_agrees_with_quadrature() {
        IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(16, 1e-11, 1e-300);
        Seeds.each(60, random -> {
            for (Curve curve : curves(random)) {
                double length = curve.length().mm();
                for (int k = 0; k <= 2; k++) {
                    for (int p = 0; p <= 4; p++) {
                        int xPower = k;
                        int rPower = p;
                        // x = L(1 − cos φ)/2 smooths the upright ends of an arc
                        double expected = integrator.integrate(
                                1_000_000,
                                phi -> {
                                    double x = length * (1 - Math.cos(phi)) / 2;
                                    double weight = length / 2 * Math.sin(phi);
                                    return Math.pow(x, xPower) * Math.pow(curve.radiusMm(x), rPower) * weight;
                                },
                                0,
                                Math.PI);
                        assertThat(curve.integral(k, p))
                                .as("%s k=%d p=%d", curve, k, p)
                                .isCloseTo(expected, withinPercentage(1e-7));
                    }
                }
            }
        });
    }

    @Test
    void reversed_twice_is_the_same_shape() {
        Seeds.each(60, random -> {
            for (Curve curve : curves(random)) {
                double length = curve.length().mm();
                for (int i = 0; i <= 20; i++) {
                    double x = length * i / 20;
                    assertThat(curve.reversed().radiusMm(length - x)).isCloseTo(curve.radiusMm(x), within(1e-6));
                    assertThat(curve.reversed().reversed().radiusMm(x)).isCloseTo(curve.radiusMm(x), within(1e-6));
                }
            }
        });
    }

    @Test
    void level_places_are_level_and_bound_the_curve() {
        Seeds.each(60, random -> {
            for (Curve curve : curves(random)) {
                double least = Math.min(curve.startRadiusMm(), curve.endRadiusMm());
                double most = Math.max(curve.startRadiusMm(), curve.endRadiusMm());
                for (double x : curve.levelPlacesMm()) {
                    assertThat(curve.slope(x)).isCloseTo(0, within(1e-9));
                    least = Math.min(least, curve.radiusMm(x));
                    most = Math.max(most, curve.radiusMm(x));
                }
                for (int i = 0; i <= 200; i++) {
                    assertThat(curve.radiusMm(curve.length().mm() * i / 200)).isBetween(least - 1e-9, most + 1e-9);
                }
            }
        });
    }

    @Test
    void an_impossible_curve_cannot_be_made() {
        assertThatThrownBy(() -> new Line(mm(0), mm(1), mm(1))).hasMessageContaining("length");
        assertThatThrownBy(() -> new Line(mm(1), mm(-1), mm(1))).hasMessageContaining("radius");
        assertThatThrownBy(() -> new EllipseArc(mm(10), mm(5), mm(4), mm(5), mm(1)))
                .hasMessageContaining("ellipse");
        assertThatThrownBy(() -> new EllipseArc(mm(10), mm(5), mm(5), mm(5), mm(-6)))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> Polynomial.quadraticThrough(mm(10), mm(5), mm(-1), mm(5)))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> new Polynomial(mm(1), List.of(1.0, 1.0, 1.0, 1.0, 1.0)))
                .hasMessageContaining("degree");
        assertThatThrownBy(() -> new Outline(List.of())).hasMessageContaining("segment");
        Segment first = new Segment(mm(0), Line.level(mm(5), mm(3)), Section.ROUND);
        Segment apart = new Segment(mm(6), Line.level(mm(5), mm(3)), Section.ROUND);
        assertThatThrownBy(() -> new Outline(List.of(first, apart))).hasMessageContaining("segment 1");
    }

    @Test
    void on_a_shoulder_the_radius_is_that_of_the_segment_which_ends_there() {
        Outline outline = new Outline(List.of(
                new Segment(mm(0), Line.level(mm(5), mm(3)), Section.ROUND),
                new Segment(mm(5), Line.level(mm(5), mm(8)), Section.SQUARE)));
        assertThat(outline.radiusAt(mm(5)).mm()).isEqualTo(3);
        assertThat(outline.radiusAt(mm(5.001)).mm()).isEqualTo(8);
        assertThat(outline.sectionAt(mm(5.001))).isEqualTo(Section.SQUARE);
        assertThat(outline.radiusAt(mm(99)).mm()).isEqualTo(8);
    }
}
