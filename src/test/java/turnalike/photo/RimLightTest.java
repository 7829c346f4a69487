package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Round bars lit by Lambert's law. */
class RimLightTest {
    private static final int WIDTH = 900;

    private static final int HEIGHT = 400;

    private static final double RADIUS = 45;

    private static final double MIDDLE = 200.3;

    private static final double GRAIN = 0.05;

    private static final double NOISE = 2;

    private static final double[] LIME = {0.62, 0.53, 0.38};

    /** Lamps by how far they stand from straight above the bar, radians, the upper edge's side positive, and what comes from all round. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Lamps(double even, double... strengthAndAngle) {
        /** Light where the surface faces so far from straight above. */
        double at(double facing) {
            double light = even;
            for (int k = 0; k < strengthAndAngle.length; k += 2) {
                light += strengthAndAngle[k] * Math.max(0, Math.cos(facing - strengthAndAngle[k + 1]));
            }
            return light;
        }

        /** At a depth under the upper edge or, negative radius, the lower one. */
        double under(double depth, double radius) {
            double facing = Math.asin(1 - depth / Math.abs(radius));
            return at(radius > 0 ? facing : -facing);
        }
    }

    private static double expected(double[] told, double depth) {
        double light = told[0] + told[1] * Math.sqrt(depth) + told[2] * depth;
        for (int i = 0; i < EdgeModel.LATE_COUNT; i++) {
            light += told[3 + i] * Math.max(0, depth - EdgeModel.lateDepth(i));
        }
        return light;
    }

    @Test
    void light_close_to_the_rim_is_told_from_light_farther_within() {
        for (Lamps lamps : new Lamps[] {
            new Lamps(0.1, 0.9, 0.4),
            new Lamps(0.1, 0.9, 0.4, 0.3, -0.3),
            new Lamps(0.3, 0.6, 0),
            new Lamps(0.05, 0.9, 0.6, 0.2, -0.5)
        }) {
            for (double radius : new double[] {30, 45, 90, -90}) {
                double[] sines = new double[18];
                double[] light = new double[18];
                double from = Math.sqrt(1 - Math.pow(1 - 2.5 / Math.abs(radius), 2));
                for (int k = 0; k < sines.length; k++) {
                    sines[k] = from + (0.8 - from) * k / 17;
                    light[k] = lamps.under(Math.abs(radius) * (1 - Math.sqrt(1 - sines[k] * sines[k])), radius);
                }
                double[] told = RimLight.told(sines, light, Math.abs(radius));
                assertThat(told).as("%s, radius %s", lamps, radius).hasSize(RimLight.NUMBERS);
                double brightest = light[17];
                for (double depth = 0; depth < 6; depth += 0.5) {
                    assertThat(expected(told, depth))
                            .as("%s, radius %s, depth %s", lamps, radius, depth)
                            .isCloseTo(lamps.under(depth, radius), within(0.07 * brightest));
                }
            }
        }
    }

    @Test
    void a_lit_edge_is_found_where_it_is_though_the_wood_has_grain() throws IOException, Unsure {
        Lamps lamps = new Lamps(0.05, 0.85, 0.43);
        double upper = 0;
        double lower = 0;
        for (int seed = 1; seed <= 4; seed++) {
            double[] off = off(lamps, new double[] {0.5, 0.49, 0.46}, seed);
            upper += off[0] / 4;
            lower += off[1] / 4;
        }
        // Not told of the light farther within, the lit edge comes out 0.028 pixels too far.
        assertThat(upper).as("upper edge").isCloseTo(0, within(0.015));
        assertThat(lower).as("lower edge").isCloseTo(0, within(0.05));
    }

    /** How far out the upper edge and the lower one are found, in the mean along the bar. */
    private static double[] off(Lamps lamps, double[] ground, long seed) throws IOException, Unsure {
        byte[] png = png(lamps, ground, seed);
        Picture picture = Picture.decode(png, PictureFile.read(png), 1);
        int along = WIDTH - 200;
        int across = (int) (2 * RADIUS);
        double[] x = new double[2 * (along + across)];
        double[] y = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            int j = k < along + across ? k : k - along - across;
            boolean side = j >= along;
            double[] from = {100 + Math.min(j, along), MIDDLE - RADIUS + (side ? j - along : 0)};
            x[k] = k < along + across ? from[0] : WIDTH - from[0];
            y[k] = k < along + across ? from[1] : 2 * MIDDLE - from[1];
        }
        EdgeFit.Fitted fitted = new EdgeFit(
                        picture,
                        CoarseColour.of(PictureFile.read(png), 1),
                        new Sight.AxisLine(WIDTH / 2.0, MIDDLE, 0),
                        x,
                        y)
                .fit();
        double[] sum = new double[2];
        int[] count = new int[2];
        for (int k = 0; k < x.length; k++) {
            if (Math.abs(fitted.x()[k] - WIDTH / 2.0) < WIDTH / 2.0 - 150) {
                int side = fitted.y()[k] < MIDDLE ? 0 : 1;
                sum[side] += Math.abs(fitted.y()[k] - MIDDLE) - RADIUS;
                count[side]++;
            }
        }
        return new double[] {sum[0] / count[0], sum[1] / count[1]};
    }

    private static byte[] png(Lamps lamps, double[] ground, long seed) throws IOException {
        int parts = 16;
        double[][] fine = new double[3][HEIGHT * parts];
        SplittableRandom dice = new SplittableRandom(seed);
        // Grain that runs along the bar, three pixels wide.
        double[] grain = dice.doubles(HEIGHT / 3 + 1, 1 - GRAIN, 1 + GRAIN).toArray();
        for (int k = 0; k < fine[0].length; k++) {
            double at = ((k + 0.5) / parts - MIDDLE) / RADIUS;
            for (int c = 0; c < 3; c++) {
                fine[c][k] = Math.abs(at) < 1 ? LIME[c] * lamps.at(-Math.asin(at)) * grain[k / (3 * parts)] : ground[c];
            }
        }
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean beside = Math.abs(x + 0.5 - WIDTH / 2.0) > WIDTH / 2.0 - 100;
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    double light = beside ? ground[c] : soft(fine[c], (y + 0.5) * parts, 0.6 * parts, parts);
                    long code = Math.round(Gamma.code(light) + NOISE * dice.nextGaussian());
                    rgb = (rgb << 8) | (int) Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    /** What a pixel sees through a lens of that softness. */
    private static double soft(double[] fine, double middle, double softness, int pixel) {
        int reach = 3 * pixel;
        double sum = 0;
        double weights = 0;
        for (int k = Math.max(0, (int) middle - reach); k < Math.min(fine.length, (int) middle + reach); k++) {
            double u = (k + 0.5 - middle) / softness;
            double half = pixel / 2.0 / softness;
            double weight = NormalShare.below(u + half) - NormalShare.below(u - half);
            sum += weight * fine[k];
            weights += weight;
        }
        return sum / weights;
    }
}
