package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
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
    private static final BeamWood WOOD = new BeamWood(10_000, 800, Density.ofKgPerM3(700));

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

    /**
     * Under an even load 1 the moment is x(L − x)/2 and the rod gives way by x(L³ − 2Lx² + x³)/24EI and, sheared, x(L − x)/2S (any handbook
     * of mechanics; from memory): of the fourth degree, exact at the elements' ends.
     */
    @Test
    void an_even_load_bends_and_shears_an_even_rod_by_the_handbook() {
        BeamMesh mesh = mesh(cone(300, 20, 20), 17, 123);
        double[] even = new double[mesh.stationMm.length];
        Arrays.fill(even, 1);
        BeamStatics.Field field =
                new BeamStatics(mesh, WOOD, Supports.BETWEEN_CENTRES, 0).under(even, new double[even.length]);
        double ei = 10_000 * Math.PI / 4 * Math.pow(20, 4);
        double s = 0.9 * 800 * Math.PI * 400;
        for (int i = 0; i < mesh.nodeMm.length; i++) {
            double x = mesh.nodeMm[i];
            double bent = x * (2.7e7 - 600 * x * x + x * x * x) / (24 * ei);
            assertThat(field.asideAt(i)).isCloseTo(bent + x * (300 - x) / (2 * s), within(1e-12));
        }
        // A chuck instead of the centre: L⁴/8EI and L²/2S at the free end; a turning load m bends it by mL³/3EI.
        BeamStatics bracket = new BeamStatics(mesh, WOOD, Supports.CHUCK, 0);
        int last = mesh.elements();
        assertThat(bracket.under(even, new double[even.length]).asideAt(last))
                .isCloseTo(8.1e9 / (8 * ei) + 9e4 / (2 * s), within(1e-12));
        assertThat(bracket.under(new double[even.length], even).asideAt(last))
                .isCloseTo(2.7e7 / (3 * ei), within(1e-12));
    }

    /** Two centres, a chuck, a chuck and a centre: the lever arms of what holds the rod. */
    @Test
    void one_newton_bends_an_even_rod_by_the_moments_of_the_handbook() {
        BeamMesh mesh = mesh(cone(300, 20, 20), 100);
        int node = Arrays.binarySearch(mesh.nodeMm, 100);
        BeamStatics.Push centres = new BeamStatics(mesh, WOOD, Supports.BETWEEN_CENTRES, 0)
                .pushes()
                .at(node);
        BeamStatics.Push bracket =
                new BeamStatics(mesh, WOOD, Supports.CHUCK, 0).pushes().at(node);
        BeamStatics.Push propped = new BeamStatics(
                        mesh, new BeamWood(10_000, 4e7, WOOD.density()), Supports.CHUCK_AND_TAILSTOCK, 0)
                .pushes()
                .at(node);
        // The tailstock bears a²(3L − a)/2L³ of the load (any handbook of mechanics; from memory), without shear.
        double tail = 1e4 * (900 - 100) / (2 * 2.7e7);
        for (int i = 0; i < mesh.nodeMm.length; i++) {
            double x = mesh.nodeMm[i];
            assertThat(Math.abs(centres.momentNmm(i)))
                    .isCloseTo(x < 100 ? x * 200 / 300 : 100 * (300 - x) / 300, within(1e-9));
            assertThat(Math.abs(bracket.momentNmm(i))).isCloseTo(Math.max(0, 100 - x), within(1e-9));
            assertThat(Math.abs(propped.momentNmm(i)))
                    .isCloseTo(Math.abs(tail * (300 - x) - Math.max(0, 100 - x)), within(1e-3));
        }
    }

    /** Rows and columns of any size, also with what stands first at nought. */
    @Test
    void a_few_equations_give_back_what_they_were_built_from() {
        Seeds.each(100, random -> {
            double[][] rows = new double[4][4];
            double[] x = new double[4];
            double[] right = new double[4];
            for (int j = 0; j < 4; j++) {
                x[j] = (random.nextDouble() - 0.5) * Math.pow(10, 12 * j - 18);
            }
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    double size = Math.pow(10, 3 * i) / Math.pow(10, 12 * j - 18);
                    rows[i][j] = i == j ? 0 : size * (1 + random.nextDouble() * ((i + j) % 3));
                    right[i] += rows[i][j] * x[j];
                }
            }
            double[] found = SmallSystem.solve(rows, right);
            for (int j = 0; j < 4; j++) {
                assertThat(found[j] / x[j]).isCloseTo(1, within(1e-9));
                double byInverse = 0;
                for (int i = 0; i < 4; i++) {
                    byInverse += SmallSystem.inverse(rows)[j][i] * right[i];
                }
                assertThat(byInverse / x[j]).isCloseTo(1, within(1e-9));
            }
        });
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
        double[][] start = new double[3][n];
        for (int k = 0; k < 3; k++) {
            for (int i = 0; i < n; i++) {
                start[k][i] = Math.sin((k + 1) * Math.PI * station[i]);
            }
        }
        SubspaceIteration found = new SubspaceIteration(start, weight, (shape, image) -> {
                    Arrays.fill(image, 0);
                    for (int k = 0; k < n - 1; k++) {
                        double share = 0;
                        for (int i = 0; i < n; i++) {
                            share += shape[i] * sines[k][i];
                        }
                        for (int i = 0; i < n; i++) {
                            image[i] += Math.pow(4, 1 - k) * share * sines[k][i];
                        }
                    }
                })
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
    void a_plain_rod_from_coarse_elements_is_the_closed_forms() {
        EvenRod rod = EvenRod.round(800, 40, 10_000, 800, 700e-12, 0);
        Beam beam = new Beam(mesh(cone(800, 20, 20), 200), WOOD, Supports.BETWEEN_CENTRES, 0);
        assertThat(beam.first() / rod.pinned(1)).isCloseTo(1, within(1e-5));
        Beam.Natural natural = beam.natural();
        assertThat(natural.first() / rod.pinned(1)).isCloseTo(1, within(1e-5));
        assertThat(natural.second() / rod.pinned(2)).isCloseTo(1, within(1e-5));
        assertThat(natural.nodeMm()).isCloseTo(400, within(0.01));
        assertThat(beam.bucklingN() / rod.buckling(1)).isCloseTo(1, within(1e-5));
        assertThat(beam.pressed(5000).bucklingN() / rod.buckling(1)).isCloseTo(1, within(1e-5));
        double inertia = Math.PI / 4 * Math.pow(20, 4);
        double shear = 0.9 * 800 * Math.PI * 400;
        double[] sag = beam.sagMmPerN();
        double[] node = beam.mesh().nodeMm;
        for (int i = 0; i < node.length; i++) {
            double a = node[i];
            double bent = a * a * (800 - a) * (800 - a) / (3 * 10_000 * inertia * 800);
            assertThat(sag[i]).isCloseTo(bent + a * (800 - a) / (800 * shear), within(1e-12));
        }
        assertThat(beam.halved().mesh().elements()).isEqualTo(2 * beam.mesh().elements());
        assertThat(beam.halved().first() / rod.pinned(1)).isCloseTo(1, within(1e-6));
    }

    /** Round: I/r = πr³/4; square: s³/6√2 across the corners; at a shoulder the thinner side's. */
    @Test
    void the_modulus_at_an_elements_end_is_the_weaker_sides() {
        Outline outline = Outline.of(
                Length.ZERO, List.of(Line.level(mm(100), mm(20)), Line.level(mm(60), mm(12))), Section.ROUND);
        BeamMesh mesh = mesh(outline);
        for (int i = 0; i < mesh.nodeMm.length; i++) {
            double r = mesh.nodeMm[i] < 99.9 ? 20 : 12;
            assertThat(mesh.modulusMm3[i]).isCloseTo(Math.PI / 4 * r * r * r, within(1e-8));
        }
        Outline square = Outline.of(Length.ZERO, List.of(Line.level(mm(100), mm(20))), Section.SQUARE);
        assertThat(mesh(square).modulusMm3[5]).isCloseTo(64_000 / (6 * Math.sqrt(2)), within(1e-8));
    }

    /** π²E·(π/4)·r₁²r₂²/L² (Dinnik's case I ∝ x⁴; from memory); the node of a cone's second mode lies toward the thin end. */
    @Test
    void a_cone_settles_and_says_how_much_halving_changed() {
        List<Length> places = List.of(mm(0), mm(100), mm(333), mm(1000));
        BeamLoad load = BeamLoad.of(Force.ofNewtons(10));
        Whip whip = Whip.of(cone(1000, 20, 10), WOOD, load, places);
        double unsheared = Math.pow(Math.PI, 3) * 10_000 / 4 * 400 * 100 / 1e6;
        assertThat(whip.buckling().newtons())
                .isBetween(unsheared / (1 + unsheared / (0.9 * 800 * Math.PI * 100)), unsheared);
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
        Whip turned = Whip.of(cone(1000, 20, 10).reversed(), WOOD, load, places);
        assertThat(turned.steady().mm()).isCloseTo(1000 - whip.steady().mm(), within(0.01));
    }

    /** The unit load's sag by a hundred thousand plain midpoints: moment and shear by statics. */
    private static double sag(double a) {
        int parts = 100_000;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double x = (i + 0.5) * 1000 / parts;
            double moment = x < a ? x * (1000 - a) / 1000 : a * (1000 - x) / 1000;
            double across = x < a ? (1000 - a) / 1000 : a / 1000;
            double r = 20 - x / 100;
            sum += 1000.0 / parts * moment * moment / (10_000 * Math.PI / 4 * Math.pow(r, 4));
            sum += 1000.0 / parts * across * across / (0.9 * 800 * Math.PI * r * r);
        }
        return sum;
    }
}
