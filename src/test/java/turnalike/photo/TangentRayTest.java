package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Contours of bodies known in closed form, made without the formula under test, lead back to the bodies; 800 mm from the camera. */
class TangentRayTest {
    private static final double DISTANCE = 800;

    private static final double MICRON = 1e-6;

    private static void leadsBack(double along, DoubleUnaryOperator squared, DoubleUnaryOperator radiusMm) {
        double step = 1e-5;
        double slope = (-squared.applyAsDouble(along + 2 * step)
                        + 8 * squared.applyAsDouble(along + step)
                        - 8 * squared.applyAsDouble(along - step)
                        + squared.applyAsDouble(along - 2 * step))
                / (12 * step);
        double g = squared.applyAsDouble(along);
        TangentRay ray = TangentRay.ofSlope(along, g, slope);
        assertThat(ray.radius() * DISTANCE).isCloseTo(radiusMm.applyAsDouble(ray.place() * DISTANCE), within(MICRON));
        TangentRay inverse = TangentRay.ofInverseSlope(along, g, 1 / slope);
        if (Math.abs(slope) > 1e-9) {
            assertThat(inverse.radius() * DISTANCE).isCloseTo(ray.radius() * DISTANCE, within(MICRON));
            assertThat(inverse.place() * DISTANCE).isCloseTo(ray.place() * DISTANCE, within(MICRON));
        }
    }

    /** A ray grazes a sphere when its direction d and the middle c have (d·c)² = d²(c² − R²). */
    private static DoubleUnaryOperator sphere(double middle, double radius) {
        double c2 = middle * middle + DISTANCE * DISTANCE - radius * radius;
        return x -> Math.pow(x * middle + DISTANCE, 2) / c2 - x * x - 1;
    }

    @Test
    void a_sphere_is_found_wherever_it_stands() {
        for (double middle : new double[] {-350, -120, 0, 210, 333}) {
            for (double radius : new double[] {4, 18, 45}) {
                DoubleUnaryOperator squared = sphere(middle, radius);
                for (double off = -0.9; off <= 0.9; off += 0.1) {
                    double along = (middle + off * radius) / DISTANCE;
                    if (squared.applyAsDouble(along) > 1e-6) {
                        leadsBack(along, squared, x -> Math.sqrt(radius * radius - (x - middle) * (x - middle)));
                    }
                }
            }
        }
    }

    /** The contour of a cylinder is two straight lines: a plane through the camera touches it where the sine of its angle is r over the distance. */
    @Test
    void a_cylinder_is_found() {
        for (double radius : new double[] {3, 20, 60}) {
            double squared = radius * radius / (DISTANCE * DISTANCE - radius * radius);
            for (double along = -0.5; along <= 0.5; along += 0.1) {
                leadsBack(along, x -> squared, x -> radius);
            }
        }
    }

    /** A cone's contour are two lines through the picture of its tip, at x = tip on the axis: planes through the tip and the camera. */
    @Test
    void a_cone_is_found() {
        double tip = -900;
        for (double slope : new double[] {0.01, 0.05, 0.12}) {
            // The plane through camera, tip and a line of the cone touches it: its unit normal n has n·axis = −sin of
            // the half angle.
            double sin = slope / Math.sqrt(1 + slope * slope);
            // n ⟂ (tip, 0, D): n = (a, b, −a·tip/D); a = −sin; b from its unit length.
            double a = -sin;
            double c = -a * tip / DISTANCE;
            double b = Math.sqrt(1 - a * a - c * c);
            DoubleUnaryOperator squared = x -> Math.pow((a * x + c) / b, 2);
            for (double along = -0.4; along <= 0.4; along += 0.1) {
                leadsBack(along, squared, x -> slope * (x - tip));
            }
        }
    }

    /** A ring with a round section, its outer half as a bead: its contour by the normal through the ring's middle circle, in closed form. */
    @Test
    void a_torus_is_found() {
        double ring = 22;
        double tube = 9;
        for (double middle : new double[] {-300, -40, 150, 310}) {
            for (double angle = 0.15 * Math.PI; angle <= 0.85 * Math.PI; angle += 0.05 * Math.PI) {
                double[] here = torusRay(middle, ring, tube, angle);
                double step = 1e-4;
                double[] b1 = torusRay(middle, ring, tube, angle - step);
                double[] a1 = torusRay(middle, ring, tube, angle + step);
                double[] b2 = torusRay(middle, ring, tube, angle - 2 * step);
                double[] a2 = torusRay(middle, ring, tube, angle + 2 * step);
                double byAlong = (b2[0] - 8 * b1[0] + 8 * a1[0] - a2[0]) / (12 * step);
                double bySquared = (b2[1] - 8 * b1[1] + 8 * a1[1] - a2[1]) / (12 * step);
                TangentRay ray = TangentRay.ofSlope(here[0], here[1], bySquared / byAlong);
                assertThat(ray.place() * DISTANCE).isCloseTo(middle - tube * Math.cos(angle), within(1e-5));
                assertThat(ray.radius() * DISTANCE).isCloseTo(ring + tube * Math.sin(angle), within(MICRON));
            }
        }
    }

    /**
     * X and Y² of the ray that grazes the torus on the circle at that angle of its section: the point on the circle where the normal is square
     * to the ray, n = (−cos, sin·across, sin·towards), p·n = 0 with the camera at the origin.
     */
    private static double[] torusRay(double middle, double ring, double tube, double angle) {
        double x = middle - tube * Math.cos(angle);
        double r = ring + tube * Math.sin(angle);
        // p = (x, r·s, D + r·c), n = (−cos a, s·sin a, c·sin a): −x cos a + r sin a + D c sin a = 0.
        double c = (x * Math.cos(angle) - r * Math.sin(angle)) / (DISTANCE * Math.sin(angle));
        double depth = DISTANCE + r * c;
        double across = r * Math.sqrt(1 - c * c);
        return new double[] {x / depth, across * across / (depth * depth)};
    }

    @Test
    void no_ray_on_a_spheres_contour_runs_through_it() {
        DoubleUnaryOperator squared = sphere(200, 30);
        for (double along = 0.22; along <= 0.28; along += 0.005) {
            TangentRay ray = TangentRay.ofSlope(along, squared.applyAsDouble(along), 0);
            for (double x = 171; x < 229; x += 1) {
                assertThat(ray.passing(x / DISTANCE) * DISTANCE)
                        .isGreaterThanOrEqualTo(Math.sqrt(900 - (x - 200) * (x - 200)) - MICRON);
            }
        }
    }
}
