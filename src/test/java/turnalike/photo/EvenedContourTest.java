package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class EvenedContourTest {
    private static final int WIDTH = 560;

    private static final int HEIGHT = 160;

    private static final double MIDDLE = 80;

    private static final double RADIUS = 35.3;

    /** Where the bar ends, from the picture's left and right. */
    private static final int BESIDE = 60;

    /** Of a weave's threads, and how much brighter or darker than the mean one is. */
    private static final int THREAD = 5;

    private static final double STRAYS = 0.4;

    @Test
    void a_contour_that_follows_threads_is_laid_where_it_runs() {
        double[][] contour = contour(1.2, 1);
        EvenedContour rough = new EvenedContour(contour[0], contour[1], 20);
        assertThat(rough.roughness()).isGreaterThan(0.15);
        assertThat(astray(rough.points())).isLessThan(0.75 * astray(contour));
    }

    @Test
    void a_contour_without_noise_stays_where_it_is_corners_too() {
        double[][] contour = contour(0, 1);
        EvenedContour even = new EvenedContour(contour[0], contour[1], 12);
        assertThat(even.roughness()).isLessThan(0.01);
        double[][] points = even.points();
        for (int k = 0; k < contour[0].length; k++) {
            assertThat(Math.hypot(points[0][k] - contour[0][k], points[1][k] - contour[1][k]))
                    .as("point %d", k)
                    .isLessThan(0.5);
        }
        assertThat(astray(points)).isLessThan(0.02);
    }

    @Test
    void edges_are_found_on_a_coarse_weave_where_each_line_alone_is_led_astray_by_threads() throws IOException, Unsure {
        double sum = 0;
        for (int seed = 1; seed <= 2; seed++) {
            byte[] png = png(seed);
            Picture picture = Picture.decode(png, PictureFile.read(png), 1);
            double[][] walked = contour(1.2, seed);
            EdgeFit.Fitted fitted = new EdgeFit(
                            picture,
                            CoarseColour.of(PictureFile.read(png), 1),
                            new Sight.AxisLine(WIDTH / 2.0, MIDDLE, 0),
                            walked[0],
                            walked[1])
                    .fit();
            sum += astray(new double[][] {fitted.x(), fitted.y()}) / 2;
        }
        // Each line for itself: 0.64.
        assertThat(sum).isLessThan(0.35);
    }

    /** How far the long sides' points lie off them, root mean square. */
    private static double astray(double[][] contour) {
        double sum = 0;
        int count = 0;
        for (int k = 0; k < contour[0].length; k++) {
            if (Math.abs(contour[0][k] - WIDTH / 2.0) < WIDTH / 2.0 - BESIDE - 15) {
                sum += Math.pow(Math.abs(contour[1][k] - MIDDLE) - RADIUS, 2);
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    /** Once round the bar, straying as a weave would have it by so much, some pixels at a time. */
    private static double[][] contour(double strays, long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        int along = WIDTH - 2 * BESIDE;
        int across = (int) (2 * RADIUS);
        double[][] contour = new double[2][2 * (along + across)];
        double off = 0;
        for (int k = 0; k < contour[0].length; k++) {
            if (k % THREAD == 0) {
                off = strays * dice.nextGaussian();
            }
            int j = k % (along + across);
            boolean first = k < along + across;
            boolean side = j >= along;
            double x = BESIDE + Math.min(j, along) + (side ? off : 0);
            double y = MIDDLE - RADIUS + (side ? j - along : -off);
            contour[0][k] = first ? x : WIDTH - x;
            contour[1][k] = first ? y : 2 * MIDDLE - y;
        }
        return contour;
    }

    /** A bar of wood on a weave that is nearly of its hue, softened by its neighbours. */
    private static byte[] png(long seed) throws IOException {
        SplittableRandom dice = new SplittableRandom(seed);
        double[][] threads = new double[HEIGHT / THREAD + 1][WIDTH / THREAD + 1];
        for (double[] row : threads) {
            for (int i = 0; i < row.length; i++) {
                row[i] = 1 + STRAYS * (2 * dice.nextDouble() - 1);
            }
        }
        double[][][] light = new double[HEIGHT][WIDTH][3];
        double[] wood = {0.36, 0.22, 0.1};
        double[] cloth = {0.2, 0.15, 0.09};
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean beside = x < BESIDE || x >= WIDTH - BESIDE;
                double below = Math.max(0, Math.min(1, y + 1 - (MIDDLE - RADIUS)));
                double above = Math.max(0, Math.min(1, MIDDLE + RADIUS - y));
                double share = beside ? 0 : below + above - 1;
                double at = Math.max(-1, Math.min(1, (y + 0.5 - MIDDLE) / RADIUS));
                double lit = 0.45 + 0.55 * Math.sqrt(1 - at * at);
                for (int c = 0; c < 3; c++) {
                    light[y][x][c] = share * lit * wood[c] + (1 - share) * cloth[c] * threads[y / THREAD][x / THREAD];
                }
            }
        }
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    long code = Math.round(Gamma.code(softened(light, x, y, c)) + 1.2 * dice.nextGaussian());
                    rgb = (rgb << 8) | (int) Math.max(0, Math.min(255, code));
                }
                image.setRGB(x, y, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static double softened(double[][][] light, int x, int y, int c) {
        double sum = 0;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                double weight = (j == 0 ? 0.5 : 0.25) * (i == 0 ? 0.5 : 0.25);
                sum += weight
                        * light[Math.max(0, Math.min(HEIGHT - 1, y + j))][Math.max(0, Math.min(WIDTH - 1, x + i))][c];
            }
        }
        return sum;
    }
}
