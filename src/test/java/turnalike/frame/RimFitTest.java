package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
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

    /** Points that stand alternately half a millimetre out and in on a circle off the axle: whoever fits it finds the circle between them. */
    @Test
    void each_point_is_told_how_far_outside_or_inside_it_stands() {
        List<RimPoint> rim = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double angle = 2 * Math.PI * i / 12;
            double radius = 200 + (i % 2 == 0 ? 0.5 : -0.5);
            double x = 3 + radius * Math.cos(angle);
            double y = -4 + radius * Math.sin(angle);
            rim.add(new RimPoint(Angle.ofRadians(Math.atan2(y, x)), Length.ofMm(Math.hypot(x, y))));
        }
        RimFit fit = RimFit.of(rim);
        assertThat(fit.radius().mm()).isCloseTo(200, within(1e-9));
        assertThat(fit.offset().mm()).isCloseTo(5, within(1e-9));
        assertThat(fit.offsetAt().degrees()).isCloseTo(360 - Math.toDegrees(Math.atan2(4, 3)), within(1e-9));
        assertThat(fit.runOut().mm()).isCloseTo(1, within(1e-9));
        for (int i = 0; i < 12; i++) {
            assertThat(fit.residuals().get(i).mm()).isCloseTo(i % 2 == 0 ? 0.5 : -0.5, within(1e-9));
        }
    }

    /** No circle near it fits better: the sum of squares grows whichever way centre or radius is moved. */
    @Test
    void the_circle_is_the_one_of_least_squares() {
        Seeds.each(30, random -> {
            int points = 4 + random.nextInt(12);
            List<RimPoint> rim = new ArrayList<>();
            for (int i = 0; i < points; i++) {
                rim.add(new RimPoint(
                        Angle.ofDegrees(360.0 * (i + 0.5 * random.nextDouble()) / points),
                        Length.ofMm(300 + 4 * random.nextDouble())));
            }
            RimFit fit = RimFit.of(rim);
            double x = fit.offset().mm() * Math.cos(fit.offsetAt().radians());
            double y = fit.offset().mm() * Math.sin(fit.offsetAt().radians());
            double least = squares(rim, x, y, fit.radius().mm());
            assertThat(fit.residuals().stream()
                            .mapToDouble(r -> r.mm() * r.mm())
                            .sum())
                    .isCloseTo(least, within(1e-9));
            for (double step : new double[] {-1e-3, 1e-3}) {
                assertThat(squares(rim, x + step, y, fit.radius().mm())).isGreaterThan(least);
                assertThat(squares(rim, x, y + step, fit.radius().mm())).isGreaterThan(least);
                assertThat(squares(rim, x, y, fit.radius().mm() + step)).isGreaterThan(least);
            }
        });
    }

    /**
     * The same circle by another route: Hipparchus's decompositions throughout, begun at the circle of least algebraic distance (linear: x² +
     * y² = 2ax + 2by + c), then Gauss and Newton's steps by QR of the slopes themselves, where ours solves their normal equations by Cramer's
     * rule. Rims as they are measured: 4 to 40 places around, up to a fiftieth from round, the axle up to a fifth off.
     */
    @Test
    void hipparchus_finds_the_same_circle() {
        Seeds.each(300, random -> {
            int points = 4 + random.nextInt(37);
            double radiusMm = Math.pow(10, 1 + 2 * random.nextDouble());
            double xMm = 0.2 * radiusMm * (2 * random.nextDouble() - 1);
            double yMm = 0.2 * radiusMm * (2 * random.nextDouble() - 1);
            List<RimPoint> rim = new ArrayList<>();
            for (int i = 0; i < points; i++) {
                double angle = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / points;
                double out = radiusMm * (1 + 0.02 * (2 * random.nextDouble() - 1));
                double x = xMm + out * Math.cos(angle);
                double y = yMm + out * Math.sin(angle);
                rim.add(new RimPoint(Angle.ofRadians(Math.atan2(y, x)), Length.ofMm(Math.hypot(x, y))));
            }
            RimFit fit = RimFit.of(rim);
            double[] other = circleByQr(rim);
            assertThat(fit.radius().mm()).isCloseTo(other[2], within(SAME * radiusMm));
            assertThat(fit.offset().mm() * Math.cos(fit.offsetAt().radians()))
                    .isCloseTo(other[0], within(SAME * radiusMm));
            assertThat(fit.offset().mm() * Math.sin(fit.offsetAt().radians()))
                    .isCloseTo(other[1], within(SAME * radiusMm));
        });
    }

    /** A share of the radius, far below any digit that is printed. */
    private static final double SAME = 1e-12;

    /** Centre x, centre y and radius in mm. */
    private static double[] circleByQr(List<RimPoint> rim) {
        int n = rim.size();
        double[] x = new double[n];
        double[] y = new double[n];
        RealMatrix rows = new Array2DRowRealMatrix(n, 3);
        RealVector right = new ArrayRealVector(n);
        for (int i = 0; i < n; i++) {
            x[i] = rim.get(i).radius().mm() * Math.cos(rim.get(i).at().radians());
            y[i] = rim.get(i).radius().mm() * Math.sin(rim.get(i).at().radians());
            rows.setRow(i, new double[] {2 * x[i], 2 * y[i], 1});
            right.setEntry(i, x[i] * x[i] + y[i] * y[i]);
        }
        double[] circle = new QRDecomposition(rows).getSolver().solve(right).toArray();
        circle[2] = Math.sqrt(circle[2] + circle[0] * circle[0] + circle[1] * circle[1]);
        // So near a circle each step leaves a small share of the error; forty are more than it takes.
        for (int step = 0; step < 40; step++) {
            for (int i = 0; i < n; i++) {
                double distance = Math.hypot(x[i] - circle[0], y[i] - circle[1]);
                rows.setRow(i, new double[] {(x[i] - circle[0]) / distance, (y[i] - circle[1]) / distance, 1});
                right.setEntry(i, distance - circle[2]);
            }
            RealVector move = new QRDecomposition(rows).getSolver().solve(right);
            for (int k = 0; k < 3; k++) {
                circle[k] += move.getEntry(k);
            }
        }
        return circle;
    }

    private static double squares(List<RimPoint> rim, double xMm, double yMm, double radiusMm) {
        return rim.stream()
                .mapToDouble(point -> Math.hypot(
                                point.radius().mm() * Math.cos(point.at().radians()) - xMm,
                                point.radius().mm() * Math.sin(point.at().radians()) - yMm)
                        - radiusMm)
                .map(distance -> distance * distance)
                .sum();
    }

    @Test
    void three_points_lie_on_their_circle_and_points_in_one_line_on_none() {
        RimFit fit = fit(3, angle -> 10 + Math.cos(angle));
        assertThat(fit.runOut().mm()).isCloseTo(0, within(1e-9));
        List<RimPoint> line = List.of(
                new RimPoint(Angle.ofDegrees(0), Length.ofMm(1)),
                new RimPoint(Angle.ofDegrees(0), Length.ofMm(2)),
                new RimPoint(Angle.ofDegrees(0), Length.ofMm(3)));
        assertThatThrownBy(() -> RimFit.of(line)).hasMessageContaining("one line");
    }
}
