package turnalike.photo;

import com.sun.management.OperatingSystemMXBean;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import turnalike.effort.Effort;
import turnalike.units.Length;

/**
 * Tracing a drawn picture of 12 megapixels beside a bare pass of OpenCV on the same file in the same run: decoding, grey, Otsu's threshold, outer
 * contours. Both begin at the file's bytes and decode it. Both in CPU time of the whole process, ours with all its threads, OpenCV's held to one, and by the clock. OpenCV is asked through
 * Python's package opencv-python-headless, which is no part of the build: without it ours is told alone. Arguments: how many rounds (default 5), how many before that are not counted (default
 * 5: the compilers of Java work beside the first ones).
 */
final class PhotoBench {
    private static final int WIDTH = 4000;

    private static final int HEIGHT = 3000;

    /** Drawn as seen from far off: a long lens. */
    private static final int FAR_MM = 600;

    private static final String BARE = """
            import sys, time, cv2
            cv2.setNumThreads(1)
            for k in range(int(sys.argv[2])):
                began, clock = time.process_time(), time.perf_counter()
                grey = cv2.cvtColor(cv2.imread(sys.argv[1]), cv2.COLOR_BGR2GRAY)
                _, parted = cv2.threshold(grey, 0, 255, cv2.THRESH_BINARY_INV + cv2.THRESH_OTSU)
                found, _ = cv2.findContours(parted, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
                print((time.process_time() - began) * 1000, (time.perf_counter() - clock) * 1000)
            """;

    private PhotoBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5;
        Path folder = Files.createTempDirectory("turnalike-photo-bench");
        byte[] jpeg = PhotoRender.withFocal(PhotoRender.jpeg(drawn(), 0.92f), FAR_MM, 1);
        Path picture = Files.write(folder.resolve("drawn.jpg"), jpeg);
        int warmUp = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
        double[][] ours = ours(jpeg, rounds, warmUp);
        double[][] theirs = bare(picture, rounds);
        if (theirs[0].length == 0) {
            System.out.println("OpenCV: not asked, Python's opencv-python-headless is not installed");
        }
        for (int k = 0; k < 2; k++) {
            String what = k == 0 ? "of CPU" : "by the clock";
            double middle = middle(ours[k]);
            System.out.printf(Locale.ROOT, "ours: %.0f ms %s in the middle of %d%n", middle, what, rounds);
            if (theirs[k].length > 0) {
                double bare = middle(theirs[k]);
                System.out.printf(Locale.ROOT, "OpenCV: %.0f ms, ratio %.1f%n", bare, middle / bare);
            }
        }
        Files.delete(picture);
        Files.delete(folder);
    }

    /** CPU time of each round, then the clock's, milliseconds. */
    private static double[][] ours(byte[] jpeg, int rounds, int warmUp) {
        OperatingSystemMXBean process = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        double[][] ms = new double[2][rounds];
        for (int k = -warmUp; k < rounds; k++) {
            long began = process.getProcessCpuTime();
            long clock = System.nanoTime();
            PhotoTrace trace = PhotoTrace.of(jpeg, PhotoWish.ofSpan(Length.ofMm(600)), Effort.unlimited());
            if (!(trace instanceof PhotoTrace.Traced)) {
                throw new IllegalStateException(trace.toString());
            }
            if (k >= 0) {
                ms[0][k] = (process.getProcessCpuTime() - began) / 1e6;
                ms[1][k] = (System.nanoTime() - clock) / 1e6;
            }
        }
        return ms;
    }

    /** Likewise; empty where it cannot be asked. */
    private static double[][] bare(Path picture, int rounds) throws IOException, InterruptedException {
        Process python;
        try {
            python = new ProcessBuilder("python3", "-c", BARE, picture.toString(), String.valueOf(rounds))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException notThere) {
            return new double[2][0];
        }
        String said = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (python.waitFor() != 0) {
            return new double[2][0];
        }
        double[][] ms = new double[2][rounds];
        List<String> lines = said.lines().toList();
        for (int k = 0; k < rounds; k++) {
            String[] both = lines.get(k).split(" ", -1);
            ms[0][k] = Double.parseDouble(both[0]);
            ms[1][k] = Double.parseDouble(both[1]);
        }
        return ms;
    }

    private static double middle(double[] all) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** An invented spindle seen from far off, dull and round, on a plain ground that darkens to one side. */
    private static BufferedImage drawn() {
        TurnedShape shape = TurnedShape.random(12, 600, 28);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(3);
        double pixels = 5.4;
        double[] wood = {0.42, 0.24, 0.11};
        for (int x = 0; x < WIDTH; x++) {
            double place = (x + 0.5 - WIDTH / 2.0) / pixels + 300;
            double half = place < 0 || place > 600 ? 0 : pixels * shape.at(place);
            for (int y = 0; y < HEIGHT; y++) {
                double across = y + 0.5 - HEIGHT / 2.0;
                double inside = Math.max(0, Math.min(1, half - Math.abs(across) + 0.5));
                double share = half == 0 ? 0 : Math.max(-1, Math.min(1, across / half));
                double lit = 0.25 + 0.75 * Math.max(0, Math.cos(Math.asin(share) + 0.6));
                double ground = 0.5 + 0.1 * y / HEIGHT;
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    double code =
                            Gamma.code(inside * wood[c] * lit + (1 - inside) * ground) + 1.5 * dice.nextGaussian();
                    rgb = (rgb << 8) | (int) Math.max(0, Math.min(255, Math.round(code)));
                }
                image.setRGB(x, y, rgb);
            }
        }
        return image;
    }
}
