package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The edge's place is found again in lines written by another way of reckoning: by adding up light point by point. */
class EdgeModelTest {
    private static final double[] WOOD = {0.5, 0.32, 0.18};

    private static final double[] BLUE = {0.18, 0.3, 0.52};

    private static double density(double u) {
        return Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
    }

    private static double shape(double u, int which) {
        double[] shapes = new double[SoftEdge.SHAPES];
        SoftEdge.fill(u, shapes, 0);
        return shapes[which];
    }

    @Test
    void softened_shapes_agree_with_adding_up() {
        for (double u = -9; u <= 4; u += 0.37) {
            double root = 0;
            double depth = 0;
            double step = 2e-4;
            for (double t = step / 2; t < 6 - u; t += step) {
                root += Math.sqrt(t) * density(u + t) * step;
                depth += t * density(u + t) * step;
            }
            assertThat(shape(u, SoftEdge.ROOT)).as("root at %s", u).isCloseTo(root, within(2e-4));
            assertThat(shape(u, SoftEdge.DEPTH)).as("depth at %s", u).isCloseTo(depth, within(2e-4));
        }
        assertThat(shape(-20, SoftEdge.ROOT)).isCloseTo(Math.sqrt(20) - 0.125 / Math.pow(20, 1.5), within(1e-5));
    }

    @Test
    void level_and_depth_alone_are_those_among_all_shapes() {
        double[] two = new double[2];
        for (double u = -18; u < 8; u += 0.0137) {
            SoftEdge.fillDepth(u, two, 0);
            assertThat(two[0]).as("level at %s", u).isEqualTo(shape(u, SoftEdge.LEVEL));
            assertThat(two[1]).as("depth at %s", u).isEqualTo(shape(u, SoftEdge.DEPTH));
        }
    }

    @Test
    void what_is_written_changes_with_each_unknown_as_its_slope_says() {
        double[] state = {0.31, 0.4, 0.1, 0.03, 0.5, 0.01, 0.05, -0.04, -0.03, 0.06, 0.04, 0.07};
        for (double coarse : new double[] {0, 0.9}) {
            EdgeModel model = new EdgeModel();
            model.coarse(coarse);
            model.between(WOOD, BLUE, 0.7);
            for (int a = 0; a < EdgeModel.UNKNOWNS; a++) {
                double step = a == 0 ? 0.01 : 1e-3;
                double[][] sides = new double[2][];
                for (int side = 0; side < 2; side++) {
                    double[] moved = state.clone();
                    moved[a] += side == 0 ? -step : step;
                    model.predict(moved);
                    sides[side] = model.written().clone();
                }
                model.predict(state);
                model.derive(state);
                for (int k = 0; k < EdgeModel.ROWS; k++) {
                    double slope = (sides[1][k] - sides[0][k]) / (2 * step);
                    assertThat(model.by()[k * EdgeModel.UNKNOWNS + a])
                            .as("unknown %s, row %s, coarse %s", a, k, coarse)
                            .isCloseTo(slope, within(0.6 + 0.02 * Math.abs(slope)));
                }
            }
        }
    }

    /** Linear light at a place: dark rim inside, which a second lamp reaches from some depth on. */
    private static double light(double[] hue, int c, Lit lit, double d) {
        double second = lit.growth * Math.max(0, -d - lit.from);
        return hue[c] * (lit.rim + lit.root * Math.sqrt(Math.max(0, -d)) + second);
    }

    /** How the wood is lit: at its rim, from there by the root of the depth, and from a depth on by so much a pixel more. */
    private record Lit(double rim, double root, double from, double growth) {}

    private static double[][] line(
            double edge, double softness, double coarse, double rim, double root, double ground) {
        return line(edge, softness, coarse, new Lit(rim, root, 0, 0), ground);
    }

    private static double[][] line(double edge, double softness, double coarse, Lit lit, double ground) {
        int pad = 12;
        int n = EdgeModel.SAMPLES + 2 * pad;
        double[][] code = new double[3][n];
        for (int j = 0; j < n; j++) {
            double at = -EdgeModel.REACH + (j - pad) * EdgeModel.STEP;
            for (int c = 0; c < 3; c++) {
                double sum = 0;
                double step = 0.05;
                for (double t = -6 * softness; t <= 6 * softness; t += step) {
                    double d = at + t - edge;
                    double here = d < 0 ? light(WOOD, c, lit, d) : BLUE[c] * ground;
                    sum += here * density(t / softness) / softness * step;
                }
                code[c][j] = Gamma.code(sum);
            }
        }
        double[][] seen = new double[3][EdgeModel.SAMPLES];
        double[][] own = new double[3][1];
        for (int k = 0; k < EdgeModel.SAMPLES; k++) {
            double[] soft = new double[3];
            double weights = 0;
            for (int i = -pad; i <= pad; i++) {
                double weight = coarse == 0 ? i == 0 ? 1 : 0 : density(i * EdgeModel.STEP / coarse);
                weights += weight;
                EdgeModel.split(code[0][k + pad + i], code[1][k + pad + i], code[2][k + pad + i], own, 0);
                soft[1] += weight * own[1][0];
                soft[2] += weight * own[2][0];
            }
            EdgeModel.split(code[0][k + pad], code[1][k + pad], code[2][k + pad], own, 0);
            seen[0][k] = own[0][0];
            seen[1][k] = soft[1] / weights;
            seen[2][k] = soft[2] / weights;
        }
        return seen;
    }

    @Test
    void an_edge_is_found_where_it_is_even_where_wood_and_ground_are_equally_bright() {
        double softness = 0.8;
        // Rims from black to bright before a ground of one brightness: one of them is as bright as the ground.
        for (double rim : new double[] {0.02, 0.3, 0.5, 1.2}) {
            for (double edge : new double[] {-1.3, 0.27, 1.1}) {
                for (double coarse : new double[] {0, 1}) {
                    EdgeSearch search = new EdgeSearch(1, 2);
                    search.coarse(coarse);
                    search.take(line(edge, softness, coarse, rim, 0.15, 0.5), WOOD, BLUE, softness);
                    search.from(0);
                    double found = search.settle();
                    assertThat(found)
                            .as("rim %s, edge %s, coarse %s", rim, edge, coarse)
                            .isCloseTo(edge, within(0.05));
                }
            }
        }
    }

    /** A lamp behind the edge: the rim, dark as the ground is in the piece's shadow, grows bright only from some pixels within. */
    @Test
    void an_edge_is_found_where_light_reaches_the_wood_only_some_pixels_within() {
        double softness = 0.7;
        for (double from : new double[] {1, 1.6, 2.2}) {
            for (double edge : new double[] {-0.6, 0.1, 0.8}) {
                EdgeSearch search = new EdgeSearch(1.5, 2);
                search.coarse(1);
                search.take(line(edge, softness, 1, new Lit(0.1, 0.05, from, 0.12), 0.14), WOOD, BLUE, softness);
                search.from(new double[] {0, -1.2, 1.2, -2.6, 2.6});
                assertThat(search.settle()).as("from %s, edge %s", from, edge).isCloseTo(edge, within(0.16));
            }
        }
    }

    @Test
    void it_says_how_sure_it_is() {
        double softness = 0.7;
        SplittableRandom dice = new SplittableRandom(11);
        int within = 0;
        int rounds = 300;
        double[] edges = {-0.7, -0.22, 0.13, 0.61};
        double[][][] clean = new double[edges.length][][];
        for (int k = 0; k < edges.length; k++) {
            clean[k] = line(edges[k], softness, 0, 0.3, 0.12, 0.5);
        }
        for (int round = 0; round < rounds; round++) {
            int which = dice.nextInt(clean.length);
            double edge = edges[which];
            double[][] seen = new double[3][EdgeModel.SAMPLES];
            for (int c = 0; c < 3; c++) {
                for (int k = 0; k < seen[c].length; k++) {
                    seen[c][k] = clean[which][c][k] + 2 * dice.nextGaussian();
                }
            }
            EdgeSearch search = new EdgeSearch(2, 2);
            search.take(seen, WOOD, BLUE, softness);
            search.from(0);
            double found = search.settle();
            within += Math.abs(found - edge) <= search.sure() ? 1 : 0;
        }
        // Two thirds are promised; four standard deviations of such a count either way.
        assertThat(within).isBetween((int) (0.57 * rounds), (int) (0.8 * rounds));
    }
}
