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
    void the_slope_is_the_difference_of_near_radii() {
        Seeds.each(60, random -> {
            for (Curve curve : curves(random)) {
                double length = curve.length().mm();
                for (int i = 2; i <= 18; i++) {
                    double x = length * i / 20;
                    double step = length * 1e-5;
                    double expected = (curve.radiusMm(x + step) - curve.radiusMm(x - step)) / (2 * step);
                    assertThat(curve.slope(x)).as("%s at %s", curve, x).isCloseTo(expected, within(1e-5));
                }
            }
        });
    }

    @Test
    void a_place_outside_is_taken_as_the_nearer_end() {
        Seeds.each(20, random -> {
            for (Curve curve : curves(random)) {
                double length = curve.length().mm();
                assertThat(curve.startRadiusMm()).isEqualTo(curve.radiusMm(0));
                assertThat(curve.endRadiusMm()).isEqualTo(curve.radiusMm(length));
                assertThat(curve.radiusMm(-3)).isEqualTo(curve.radiusMm(0));
                assertThat(curve.radiusMm(length + 3)).isEqualTo(curve.radiusMm(length));
                assertThat(curve.slope(-3)).isEqualTo(curve.slope(0));
                assertThat(curve.slope(length + 3)).isEqualTo(curve.slope(length));
            }
        });
    }

    @Test
    void a_half_ellipse_stands_upright_at_both_ends() {
        EllipseArc bead = new EllipseArc(mm(10), mm(5), mm(5), mm(8), mm(3));
        assertThat(bead.slope(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(bead.slope(10)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(bead.radiusMm(0)).isEqualTo(8);
        assertThat(bead.radiusMm(5)).isEqualTo(11);
        assertThat(bead.radiusMm(2)).isCloseTo(8 + 3 * 0.8, within(1e-12)); // t = −0.6, √(1 − 0.36) = 0.8
    }

    @Test
    void a_curve_is_level_only_strictly_inside_and_a_flat_one_nowhere() {
        assertThat(new EllipseArc(mm(10), mm(4), mm(6), mm(8), mm(3)).levelPlacesMm())
                .containsExactly(4.0);
        assertThat(new EllipseArc(mm(5), mm(0), mm(5), mm(8), mm(3)).levelPlacesMm())
                .isEmpty();
        assertThat(new EllipseArc(mm(5), mm(5), mm(5), mm(8), mm(3)).levelPlacesMm())
                .isEmpty();
        assertThat(new EllipseArc(mm(10), mm(4), mm(6), mm(8), mm(0)).levelPlacesMm())
                .isEmpty();
        assertThat(Line.level(mm(10), mm(4)).levelPlacesMm()).isEmpty();
        // 5 + (u − 1/4)², (u − 0)², (u − 1)²; 5 + u − u³ is level at 1/√3; (u − 1/2)³ once, where its double root is.
        assertThat(new Polynomial(mm(8), List.of(5 + 1 / 16.0, -0.5, 1.0)).levelPlacesMm())
                .containsExactly(2.0);
        assertThat(new Polynomial(mm(8), List.of(5.0, 0.0, 1.0)).levelPlacesMm())
                .isEmpty();
        assertThat(new Polynomial(mm(8), List.of(5.0, -2.0, 1.0)).levelPlacesMm())
                .isEmpty();
        assertThat(new Polynomial(mm(8), List.of(5.0, 1.0)).levelPlacesMm()).isEmpty();
        assertThat(new Polynomial(mm(8), List.of(5.0)).levelPlacesMm()).isEmpty();
        assertThat(new Polynomial(mm(1), List.of(5.0, 1.0, 0.0, -1.0)).levelPlacesMm())
                .singleElement()
                .satisfies(u -> assertThat(u).isCloseTo(1 / Math.sqrt(3), within(1e-12)));
        assertThat(new Polynomial(mm(1), List.of(5.0, 0.75, -1.5, 1.0)).levelPlacesMm())
                .singleElement()
                .satisfies(u -> assertThat(u).isCloseTo(0.5, within(1e-12)));
        // Derivative 6 (u − 1/3)(u − 2/3): the higher place first on the way.
        assertThat(new Polynomial(mm(3), List.of(5.0, 4 / 3.0, -3.0, 2.0)).levelPlacesMm())
                .hasSize(2)
                .satisfies(places -> assertThat(places.get(0)).isCloseTo(1, within(1e-9)))
                .satisfies(places -> assertThat(places.get(1)).isCloseTo(2, within(1e-9)));
    }

    /** Of a double root rounding makes two, a digit in the last place apart and in either order. */
    @Test
    void level_places_come_in_order_even_where_two_fall_together() {
        Seeds.each(2000, random -> {
            double place = 0.1 + 0.8 * random.nextDouble();
            double steepness = 1 + 9 * random.nextDouble();
            // Slope: 3 · steepness · (u − place)².
            Polynomial flat = new Polynomial(
                    mm(1), List.of(50.0, 3 * steepness * place * place, -3 * steepness * place, steepness));
            assertThat(flat.levelPlacesMm()).isSorted();
        });
    }

    @Test
    void a_curve_may_touch_the_axis_but_not_cross_it() {
        assertThat(new Line(mm(5), mm(3), mm(0)).endRadiusMm()).isZero();
        assertThat(new Line(mm(5), mm(0), mm(3)).startRadiusMm()).isZero();
        assertThat(new EllipseArc(mm(10), mm(5), mm(5), mm(3), mm(-3)).radiusMm(5))
                .isZero();
        assertThatThrownBy(() -> new EllipseArc(mm(10), mm(5), mm(5), mm(3), mm(-3.01)))
                .hasMessageContaining("radius");
        // Its lowest place is outside the arc, and the lower end decides: √(1 − 0.36) = 0.8 of 3 is 2.4.
        assertThat(new EllipseArc(mm(2), mm(5), mm(5), mm(2.4000001), mm(-3)).endRadiusMm())
                .isCloseTo(0, within(1e-6));
        assertThatThrownBy(() -> new EllipseArc(mm(2), mm(5), mm(5), mm(2.399999), mm(-3)))
                .hasMessageContaining("radius");
        assertThat(Polynomial.quadraticThrough(mm(10), mm(1), mm(0), mm(1)).radiusMm(5))
                .isZero();
        // A hair of a millionth of a millimetre in a metre is rounding, and reads as the axis itself.
        assertThat(Polynomial.quadraticThrough(mm(1000), mm(1), mm(-5e-7), mm(1))
                        .radiusMm(500))
                .isZero();
        assertThatThrownBy(() -> Polynomial.quadraticThrough(mm(1000), mm(1), mm(-5e-6), mm(1)))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> Polynomial.quadraticThrough(mm(10), mm(1), mm(-0.01), mm(1)))
                .hasMessageContaining("radius");
        assertThatThrownBy(() -> new Line(mm(5), mm(3), mm(-0.01))).hasMessageContaining("end radius");
    }

    @Test
    void an_arc_may_reach_the_ends_of_its_ellipse_but_not_past_them() {
        assertThat(new EllipseArc(mm(10), mm(5), mm(5), mm(5), mm(1)).startRadiusMm())
                .isEqualTo(5);
        assertThatThrownBy(() -> new EllipseArc(mm(5), mm(5.001), mm(5), mm(5), mm(1)))
                .hasMessageContaining("ellipse");
        assertThatThrownBy(() -> new EllipseArc(mm(5), mm(-0.001), mm(5), mm(5), mm(1)))
                .hasMessageContaining("ellipse");
        assertThatThrownBy(() -> new EllipseArc(mm(5), mm(2), mm(0), mm(5), mm(1)))
                .hasMessageContaining("half width must be above zero");
        assertThatThrownBy(() -> new EllipseArc(mm(0), mm(2), mm(5), mm(5), mm(1)))
                .hasMessageContaining("length must be above zero");
        // What rounding leaves of a long arc, a millionth of a millionth of it, is let pass.
        assertThat(new EllipseArc(mm(5), mm(1000 + 5e-10), mm(1000), mm(5), mm(1)).startRadiusMm())
                .isEqualTo(5);
        assertThatThrownBy(() -> new EllipseArc(mm(5), mm(1000 + 5e-9), mm(1000), mm(5), mm(1)))
                .hasMessageContaining("ellipse");
        assertThatThrownBy(() -> new Polynomial(mm(0), List.of(1.0))).hasMessageContaining("length");
        assertThatThrownBy(() -> new Polynomial(mm(1), List.of())).hasMessageContaining("degree");
    }

    /** The least of a quadratic by going along it in small steps. */
    @Test
    void the_least_of_a_quadratic_is_that_found_along_it() {
        Seeds.each(300, random -> {
            double start = 20 * random.nextDouble() - 5;
            double middle = 20 * random.nextDouble() - 5;
            double end = 20 * random.nextDouble() - 5;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 2000; i++) {
                double u = i / 2000.0;
                // Lagrange's form through u = 0, 1/2, 1.
                double r = start * (1 - u) * (1 - 2 * u) + middle * 4 * u * (1 - u) + end * u * (2 * u - 1);
                least = Math.min(least, r);
            }
            assertThat(Polynomial.leastOfQuadratic(mm(start), mm(middle), mm(end))
                            .mm())
                    .isCloseTo(least, within(1e-4));
        });
    }

    @Test
    void every_kind_of_curve_can_be_told_apart() {
        Curve.Cases<String> cases = new Curve.Cases<>() {
            @Override
            public String line(Line line) {
                return "line";
            }

            @Override
            public String ellipseArc(EllipseArc arc) {
                return "arc";
            }

            @Override
            public String polynomial(Polynomial polynomial) {
                return "polynomial";
            }
        };
        assertThat(curves(new Random(1)).stream().map(curve -> curve.match(cases)))
                .containsExactly("line", "arc", "polynomial", "polynomial");
    }

    @Test
    void a_moment_higher_than_the_second_is_refused() {
        EllipseArc arc = new EllipseArc(mm(10), mm(5), mm(5), mm(5), mm(1));
        assertThatThrownBy(() -> arc.integral(3, 2)).hasMessageContaining("power of x");
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

    /** The places told have the slope asked for, and a walk along the curve sees it cross that slope nowhere else. */
    @Test
    void a_slope_is_found_wherever_the_curve_takes_it() {
        Seeds.each(60, random -> {
            for (Curve curve : curves(random)) {
                double asked = 2 * random.nextDouble() - 1;
                List<Double> told = curve.placesOfSlopeMm(asked);
                for (double x : told) {
                    assertThat(curve.slope(x)).isCloseTo(asked, within(1e-9));
                }
                int crossed = 0;
                int steps = 4000;
                for (int i = 1; i < steps - 1; i++) {
                    double one = curve.slope(curve.length().mm() * i / steps) - asked;
                    double next = curve.slope(curve.length().mm() * (i + 1) / steps) - asked;
                    crossed += one * next < 0 ? 1 : 0;
                }
                assertThat(told).hasSizeGreaterThanOrEqualTo(crossed).hasSizeLessThanOrEqualTo(crossed + 1);
            }
        });
    }
}
