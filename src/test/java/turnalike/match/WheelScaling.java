package turnalike.match;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.Supplier;
import turnalike.effort.Effort;

/** How placing on a wheel scales: CPU time to proof against the number of places, and what is left over after a second. One thread. */
final class WheelScaling {
    private static final int[] LARGE = {12, 24, 60, 120, 200, 400};

    private WheelScaling() {}

    /** Prints both tables and draws them into {@code picture}. */
    static void run(Path picture) throws IOException {
        TreeMap<Integer, Double> published = new TreeMap<>();
        TreeMap<Integer, Double> invented = new TreeMap<>();
        toProof(() -> WeightsOneToNTest.ring(13), 10); // warm
        System.out.println("CPU seconds to proof: places, weights 1 … n, invented weights");
        for (int n = 6; n <= 19; n++) {
            int places = n;
            if (n <= 17 || n == 19) {
                published.put(n, toProof(() -> WeightsOneToNTest.ring(places), n < 16 ? 10 : 1));
            }
            if (n <= 17) {
                invented.put(n, toProof(() -> WheelBench.ring(WheelBench.random(places, places, 17)), n < 14 ? 10 : 1));
            }
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %s | %s |%n",
                    n,
                    published.containsKey(n) ? "%.4f".formatted(published.get(n)) : "",
                    invented.containsKey(n) ? "%.4f".formatted(invented.get(n)) : "");
        }
        TreeMap<Integer, Double> left = new TreeMap<>();
        TreeMap<Integer, Double> floor = new TreeMap<>();
        System.out.println(
                "g mm left over after 1 CPU second: places, invented weights, noise floor of a scale of 0.1 g");
        for (int places : LARGE) {
            WheelProblem problem = WheelBench.random(places, places, 17);
            WheelPlacement placement = WheelMatch.solve(problem, cpuSeconds(1));
            left.put(places, placement.unbalance().gMm());
            floor.put(places, placement.noiseFloorGMm());
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %.2e%s | %.1f |%n",
                    places,
                    left.get(places),
                    placement.bestProven() ? " (proven)" : "",
                    floor.get(places));
        }
        Files.writeString(picture, new Plots(published, invented, left, floor).svg());
    }

    /** The quickest of some runs; the processor's time, as the machine may have others to serve. */
    private static double toProof(Supplier<WheelArrays> ring, int runs) {
        double least = Double.POSITIVE_INFINITY;
        for (int run = 0; run < runs; run++) {
            double start = cpu();
            WheelSearch search = new WheelSearch(ring.get(), 0, true);
            search.run(cpuSeconds(100));
            if (!search.proven) {
                return Double.NaN;
            }
            least = Math.min(least, cpu() - start);
        }
        return least;
    }

    private static Effort cpuSeconds(double seconds) {
        double start = cpu();
        return () -> cpu() - start > seconds;
    }

    static double cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    /** Two plots side by side, each with a logarithmic height. */
    private record Plots(
            TreeMap<Integer, Double> published,
            TreeMap<Integer, Double> invented,
            TreeMap<Integer, Double> left,
            TreeMap<Integer, Double> floor) {
        private static final int WIDTH = 300;
        private static final int HEIGHT = 240;

        String svg() {
            Plot proof = new Plot(60, 5, 20, -5, 1, false);
            Plot rest = new Plot(450, 10, 500, -6, 3, true);
            return """
                    <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 790 350" font-family="sans-serif" font-size="12">
                    <rect width="790" height="350" fill="white"/>
                    """
                    + proof.frame("CPU seconds to proof, by places", List.of(6, 8, 10, 12, 14, 16, 19))
                    + proof.line(published, "#7a3b10", "weights 1 … n", 3)
                    + proof.line(invented, "#1f5f8b", "invented weights", 18)
                    + rest.frame("g·mm left after 1 s, by places", List.of(12, 24, 60, 120, 200, 400))
                    + rest.line(floor, "#777777", "what a 0.1 g scale can tell", 3)
                    + rest.line(left, "#1f5f8b", "invented weights", 18)
                    + "</svg>\n";
        }
    }

    /** @param low the lowest power of ten shown; {@code high} the highest; {@code ratio} whether places are spaced by their logarithm */
    private record Plot(int x, int from, int to, int low, int high, boolean ratio) {
        String frame(String title, List<Integer> ticks) {
            StringBuilder svg =
                    new StringBuilder(text(x, 28, "start", title).replace("<text", "<text font-weight=\"bold\""));
            for (int power = low; power <= high; power++) {
                int y = (int) Math.round(y(Math.pow(10, power)));
                svg.append("<path d=\"M%d %dh%d\" stroke=\"#dddddd\"/>%n".formatted(x, y, Plots.WIDTH));
                svg.append(text(x - 6, y + 4, "end", "1e" + power));
            }
            for (int places : ticks) {
                svg.append(text((int) Math.round(x(places)), 50 + Plots.HEIGHT + 18, "middle", "" + places));
            }
            return svg.toString();
        }

        String line(TreeMap<Integer, Double> values, String colour, String name, int nameAt) {
            StringBuilder points = new StringBuilder();
            StringBuilder dots = new StringBuilder();
            values.forEach((places, value) -> {
                if (value > 0) {
                    points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(places), y(value)));
                    dots.append(String.format(
                            Locale.ROOT,
                            "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\"/>%n",
                            x(places),
                            y(value),
                            colour));
                }
            });
            return "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"/>%n"
                            .formatted(points, colour)
                    + dots
                    + text(x + 6, 50 + Plots.HEIGHT + 36 + nameAt, "start", name)
                            .replace("<text", "<text fill=\"%s\"".formatted(colour));
        }

        private double x(double places) {
            double share =
                    ratio ? Math.log(places / from) / Math.log((double) to / from) : (places - from) / (to - from);
            return x + share * Plots.WIDTH;
        }

        private double y(double value) {
            return 50 + Plots.HEIGHT * (high - Math.log10(value)) / (high - low);
        }

        private static String text(int x, int y, String anchor, String words) {
            return "<text x=\"%d\" y=\"%d\" text-anchor=\"%s\">%s</text>%n".formatted(x, y, anchor, words);
        }
    }
}
