package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Density;
import turnalike.units.Force;
import turnalike.units.Length;

/** The parts that whip is reckoned with, each by itself against closed forms. */
class BeamPartsTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Outline cone(double lengthMm, double fromMm, double toMm) {
        return Outline.of(Length.ZERO, List.of(new Line(mm(lengthMm), mm(fromMm), mm(toMm))), Section.ROUND);
    }

    private static BeamMesh mesh(Outline outline, double... placesMm) {
        return BeamMesh.of(outline, placesMm, BeamMesh.Fineness.COARSE);
    }

    /** ∫₀¹ tᵏ dt = 1/(k + 1), to degree 7; from the start to a point, to degree 3. */
    @Test
    void four_points_integrate_powers_exactly() {
        for (int k = 0; k <= 7; k++) {
            double whole = 0;
            for (int j = 0; j < GaussLegendre.COUNT; j++) {
                whole += GaussLegendre.whole(j) * Math.pow(GaussLegendre.at(j), k);
            }
            assertThat(whole).isCloseTo(1.0 / (k + 1), within(1e-14));
        }
        for (int k = 0; k <= 3; k++) {
            for (int i = 0; i < GaussLegendre.COUNT; i++) {
                double part = 0;
                for (int j = 0; j < GaussLegendre.COUNT; j++) {
                    part += GaussLegendre.upTo(i, j) * Math.pow(GaussLegendre.at(j), k);
                }
                assertThat(part).isCloseTo(Math.pow(GaussLegendre.at(i), k + 1) / (k + 1), within(1e-14));
            }
        }
    }

    /** A symmetric matrix built from chosen values and turned axes gives them back, largest first, also when they differ by 10¹². */
    @Test
    void the_small_eigenproblem_gives_back_what_it_was_built_from() {
        Seeds.each(200, random -> {
            double[] values = {5 + random.nextDouble(), 2 + random.nextDouble(), 1e-12 * (1 + random.nextDouble())};
            double[][] axes = axes(random.nextDouble() * 6, random.nextDouble() * 6, random.nextDouble() * 6);
            double[][] matrix = new double[3][3];
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 3; k++) {
                    for (int v = 0; v < 3; v++) {
                        matrix[i][k] += values[v] * axes[v][i] * axes[v][k];
                    }
                }
            }
            double before = matrix[0][1];
            JacobiEigen found = JacobiEigen.of(matrix);
            assertThat(matrix[0][1]).as("left as it was").isEqualTo(before);
            for (int v = 0; v < 3; v++) {
                assertThat(found.value(v)).isCloseTo(values[v], within(1e-14 * 6));
                double[] vector = found.vector(v);
                double along = 0;
                for (int i = 0; i < 3; i++) {
                    along += vector[i] * axes[v][i];
                }
                assertThat(Math.abs(along)).isCloseTo(1, within(1e-12));
            }
        });
    }

    /** Three axes at right angles, by three turns. */
    private static double[][] axes(double a, double b, double c) {
        double[][] out = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        int[][] planes = {{0, 1}, {1, 2}, {0, 2}};
        double[] turns = {a, b, c};
        for (int k = 0; k < 3; k++) {
            for (double[] axis : out) {
                double one = axis[planes[k][0]];
                double other = axis[planes[k][1]];
                axis[planes[k][0]] = Math.cos(turns[k]) * one - Math.sin(turns[k]) * other;
                axis[planes[k][1]] = Math.sin(turns[k]) * one + Math.cos(turns[k]) * other;
            }
        }
        return out;
    }

    /** Values graded by powers of ten keep their relative accuracy: λ of (1, ε; ε, 2ε²) are 1 + ε² and ε² to first order. */
    @Test
    void a_small_value_beside_a_large_one_keeps_its_digits() {
        double e = 1e-6;
        JacobiEigen graded = JacobiEigen.of(new double[][] {{2 * e * e, e}, {e, 1}});
        assertThat(graded.value(0)).isCloseTo(1, within(1e-11));
        assertThat(graded.value(1) / (e * e)).isCloseTo(1, within(1e-9));
        JacobiEigen equal = JacobiEigen.of(new double[][] {{3, 1}, {1, 3}});
        assertThat(equal.value(0)).isCloseTo(4, within(1e-14));
        assertThat(equal.value(1)).isCloseTo(2, within(1e-14));
        assertThat(Math.abs(equal.vector(0)[0])).isCloseTo(Math.sqrt(0.5), within(1e-14));
        assertThat(equal.vector(0)[0]).isCloseTo(equal.vector(0)[1], within(1e-14));
    }

    /** −y″ = 1 has y = x(L − x)/2, −y″ = x has y = x(L² − x²)/6: cubics at most, so exact at stations and element ends. */
    @Test
    void loads_of_degree_nought_and_one_are_integrated_exactly() {
        BeamMesh mesh = mesh(cone(300, 20, 12), 17, 123);
        PoissonSolver solver = new PoissonSolver(mesh);
        int n = mesh.stationMm.length;
        double[] even = new double[n];
        double[] rising = new double[n];
        for (int i = 0; i < n; i++) {
            even[i] = 1;
            rising[i] = mesh.stationMm[i];
        }
        double[] nodesEven = solver.atNodes(even);
        double[] nodesRising = solver.atNodes(rising);
        for (int i = 0; i < mesh.nodeMm.length; i++) {
            double x = mesh.nodeMm[i];
            assertThat(nodesEven[i]).isCloseTo(x * (300 - x) / 2, within(1e-8));
            assertThat(nodesRising[i]).isCloseTo(x * (90_000 - x * x) / 6, within(1e-6));
        }
        double[] out = new double[n];
        solver.solve(even, out);
        solver.solve(rising, rising);
        for (int i = 0; i < n; i++) {
            double x = mesh.stationMm[i];
            assertThat(out[i]).isCloseTo(x * (300 - x) / 2, within(1e-8));
            assertThat(rising[i]).as("into itself").isCloseTo(x * (90_000 - x * x) / 6, within(1e-6));
        }
    }

    /** T with the known values 4, 1, 1/4 … on sines: each settles, largest first, with its sine as shape. */
    @Test
    void the_iteration_finds_the_largest_values_and_their_shapes() {
        int n = 8;
        double[] station = new double[n];
        double[] weight = new double[n];
        for (int i = 0; i < n; i++) {
            station[i] = (i + 0.5) / n;
            weight[i] = 2;
        }
        double[][] sines = new double[n - 1][n];
        for (int k = 0; k < n - 1; k++) {
            for (int i = 0; i < n; i++) {
                // Unlike the start's sines: the first three are mixed up by the rest.
                sines[k][i] = Math.cos((k + 1) * Math.PI * station[i]) / 2;
            }
        }
        SubspaceIteration found = new SubspaceIteration(
                        station,
                        weight,
                        (shape, image) -> {
                            java.util.Arrays.fill(image, 0);
                            for (int k = 0; k < n - 1; k++) {
                                double share = 0;
                                for (int i = 0; i < n; i++) {
                                    share += shape[i] * sines[k][i];
                                }
                                for (int i = 0; i < n; i++) {
                                    image[i] += Math.pow(4, 1 - k) * share * sines[k][i];
                                }
                            }
                        },
                        3)
                .settle(2, 1e-14);
        assertThat(found.value[0]).isCloseTo(4, within(1e-12));
        assertThat(found.value[1]).isCloseTo(1, within(1e-12));
        for (int k = 0; k < 2; k++) {
            double size = 0;
            double along = 0;
            for (int i = 0; i < n; i++) {
                size += weight[i] * found.shape[k][i] * found.shape[k][i];
                along += Math.sqrt(2) * found.shape[k][i] * sines[k][i];
            }
            assertThat(size).isCloseTo(1, within(1e-12));
            assertThat(Math.abs(along)).isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void elements_end_at_joints_and_at_the_places_asked_for_and_fill_the_length() {
        Outline outline = Outline.of(
                mm(50),
                List.of(Line.level(mm(100), mm(20)), new Line(mm(60), mm(20), mm(8)), Line.level(mm(40), mm(12))),
                Section.ROUND);
        BeamMesh mesh = mesh(outline, 33.3, 177.7);
        List<Double> nodes = new ArrayList<>();
        for (double node : mesh.nodeMm) {
            nodes.add(node);
        }
        assertThat(nodes).isSorted().doesNotHaveDuplicates().contains(0.0, 33.3, 100.0, 160.0, 177.7, 200.0);
        assertThat(mesh.lengthMm()).isEqualTo(200);
        assertThat(mesh.elements()).isEqualTo(nodes.size() - 1);
        for (int i = 0; i < mesh.stationMm.length; i++) {
            double x = mesh.stationMm[i];
            double r = x < 100 ? 20 : x < 160 ? 20 - 12 * (x - 100) / 60 : 12;
            assertThat(mesh.areaMm2[i]).isCloseTo(Math.PI * r * r, within(1e-8));
            assertThat(mesh.inertiaMm4[i]).isCloseTo(Math.PI / 4 * Math.pow(r, 4), within(1e-6));
        }
        BeamMesh halved = mesh.halved();
        assertThat(halved.elements()).isEqualTo(2 * mesh.elements());
        for (int e = 0; e < mesh.elements(); e++) {
            assertThat(halved.nodeMm[2 * e]).isEqualTo(mesh.nodeMm[e]);
            assertThat(halved.nodeMm[2 * e + 1]).isCloseTo((mesh.nodeMm[e] + mesh.nodeMm[e + 1]) / 2, within(1e-12));
        }
        assertThat(halved.lengthMm()).isEqualTo(200);
        assertThat(mesh.thickened()).isFalse();
        assertThat(mesh(cone(100, 20, 0)).thickened()).isTrue();
    }

    /** Within an element the second moment changes by no more than the fineness allows; a steep cone needs more elements. */
    @Test
    void steep_stretches_get_shorter_elements() {
        BeamMesh steep = mesh(cone(100, 40, 4));
        for (int e = 0; e < steep.elements(); e++) {
            double from = 40 - 0.36 * steep.nodeMm[e];
            double to = 40 - 0.36 * steep.nodeMm[e + 1];
            assertThat(Math.pow(from / to, 4)).isLessThanOrEqualTo(2);
        }
        assertThat(mesh(cone(100, 20, 20)).elements()).isEqualTo(20);
    }

    /** A rod of 20 mm radius and 800 mm: closed forms for everything told; the steady's place is the second mode's node. */
    @Test
    void a_plain_rod_from_coarse_elements_is_the_handbooks() {
        double inertia = Math.PI / 4 * Math.pow(20, 4);
        double area = Math.PI * 400;
        Beam beam = new Beam(mesh(cone(800, 20, 20), 200), 10_000, 700e-12);
        double omega = Math.pow(Math.PI / 800, 2) * Math.sqrt(10_000 * inertia / (700e-12 * area));
        assertThat(beam.first() / omega).isCloseTo(1, within(1e-5));
        Beam.Natural natural = beam.natural();
        assertThat(natural.first() / omega).isCloseTo(1, within(1e-5));
        assertThat(natural.second() / omega).isCloseTo(4, within(1e-4));
        assertThat(natural.nodeMm()).isCloseTo(400, within(0.01));
        assertThat(beam.bucklingN() / (Math.PI * Math.PI * 10_000 * inertia / 640_000))
                .isCloseTo(1, within(1e-5));
        double[] sag = beam.sagMmPerN();
        double[] node = beam.mesh().nodeMm;
        for (int i = 0; i < node.length; i++) {
            double a = node[i];
            assertThat(sag[i]).isCloseTo(a * a * (800 - a) * (800 - a) / (3 * 10_000 * inertia * 800), within(1e-12));
        }
        assertThat(beam.halved().mesh().elements()).isEqualTo(2 * beam.mesh().elements());
        assertThat(beam.halved().first() / omega).isCloseTo(1, within(1e-6));
    }

    /** π²E·(π/4)·r₁²r₂²/L² (Dinnik's case I ∝ x⁴; from memory); the node of a cone's second mode lies toward the thin end. */
    @Test
    void a_cone_settles_and_says_how_much_halving_changed() {
        List<Length> places = List.of(mm(0), mm(100), mm(333), mm(1000));
        Whip whip = Whip.of(cone(1000, 20, 10), 10_000, Density.ofKgPerM3(700), Force.ofNewtons(10), places);
        assertThat(whip.buckling().newtons())
                .isCloseTo(Math.pow(Math.PI, 3) * 10_000 / 4 * 400 * 100 / 1e6, within(0.01));
        assertThat(whip.steady().mm()).isBetween(510.0, 600.0);
        assertThat(whip.halvingChange()).isPositive().isLessThan(Whip.SETTLED);
        assertThat(whip.sags()).extracting(Whip.Sag::place).containsExactlyElementsOf(places);
        assertThat(whip.sags().get(0).sag().mm()).isCloseTo(0, within(1e-12));
        assertThat(whip.sags().get(3).sag().mm()).isCloseTo(0, within(1e-12));
        for (int i = 1; i <= 2; i++) {
            assertThat(whip.sags().get(i).sag().mm())
                    .isCloseTo(10 * sag(places.get(i).mm()), within(1e-6));
        }
        assertThat(whip.most()).isEqualTo(whip.sags().get(2));
        assertThat(whip.cutting()).isEqualTo(Force.ofNewtons(10));
        Whip turned =
                Whip.of(cone(1000, 20, 10).reversed(), 10_000, Density.ofKgPerM3(700), Force.ofNewtons(10), places);
        assertThat(turned.steady().mm()).isCloseTo(1000 - whip.steady().mm(), within(0.01));
    }

    /** The unit load's sag by a hundred thousand plain midpoints. */
    private static double sag(double a) {
        int parts = 100_000;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double x = (i + 0.5) * 1000 / parts;
            double moment = x < a ? x * (1000 - a) / 1000 : a * (1000 - x) / 1000;
            sum += 1000.0 / parts * moment * moment / (10_000 * Math.PI / 4 * Math.pow(20 - x / 100, 4));
        }
        return sum;
    }
}
