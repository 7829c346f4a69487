package turnalike.stock.boards;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import turnalike.effort.Effort;

/**
 * Published one-dimensional bin packing, ours beside OR-Tools in one run (SCIP on the arc-flow model), one thread each, the same
 * instances. The file stays outside the project: {@code instance,set,capacity,n,lower_bound,upper_bound,…,items}, items parted by blanks,
 * bounds that are closed.
 *
 * <p>{@code BoardSearchBench FILE [MOST_ITEMS [SECONDS]]}: instances of at most so many items, so many seconds for SCIP; 0 leaves it out.
 * Without a file, invented instances of 60 pieces.
 */
public final class BoardSearchBench {
    private BoardSearchBench() {}

    private record Instance(String name, int items, Question question, long optimum) {}

    public static void main(String[] arguments) throws IOException {
        List<Instance> instances = arguments.length > 0
                ? read(Path.of(arguments[0]), arguments.length > 1 ? Integer.parseInt(arguments[1]) : 120)
                : invented();
        double seconds = arguments.length > 2 ? Double.parseDouble(arguments[2]) : 20;
        BoardSearch.solve(instances.get(0).question(), Long.MAX_VALUE, Effort.ofAsks(100_000), "warm-up");
        List<Double> ratios = new ArrayList<>();
        int proven = 0;
        int agree = 0;
        for (Instance each : instances) {
            long before = cpu();
            BoardSearch.Outcome ours =
                    BoardSearch.solve(each.question(), Long.MAX_VALUE, Effort.ofAsks(3_000_000), "bins");
            double took = (cpu() - before) / 1e9;
            long cost = ours.found().map(BoardSearch.Found::cost).orElse(-1L);
            boolean right = ours.proven() && (each.optimum() < 0 || cost == each.optimum());
            proven += right ? 1 : 0;
            String line = String.format(
                    Locale.ROOT,
                    "%-22s %4d  ours %4d %s %7.3f s CPU",
                    each.name(),
                    each.items(),
                    cost,
                    right ? "proven" : "OPEN  ",
                    took);
            if (seconds > 0) {
                CpSatPacking.Found reference = ArcFlowPacking.solve(each.question(), seconds);
                ratios.add(reference.seconds() / Math.max(took, 1e-4));
                agree += reference.cost() == cost ? 1 : 0;
                line += String.format(
                        Locale.ROOT,
                        "  SCIP %4d %s %7.3f s, %.1f times ours",
                        reference.cost(),
                        reference.proven() ? "proven" : "open  ",
                        reference.seconds(),
                        reference.seconds() / Math.max(took, 1e-4));
            }
            System.out.println(line);
        }
        Collections.sort(ratios);
        System.out.printf(Locale.ROOT, "proven at the known optimum %d of %d%n", proven, instances.size());
        if (!ratios.isEmpty()) {
            System.out.printf(
                    Locale.ROOT,
                    "SCIP found the same in %d; its time is %.1f times ours in the median, %.1f at the least%n",
                    agree,
                    ratios.get(ratios.size() / 2),
                    ratios.get(0));
        }
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static List<Instance> read(Path file, int mostItems) throws IOException {
        List<Instance> out = new ArrayList<>();
        for (String line : Files.readAllLines(file).stream().skip(1).toList()) {
            String[] cells = line.split(",", -1);
            int items = Integer.parseInt(cells[3]);
            if (items <= mostItems) {
                int[] lengths = Arrays.stream(cells[cells.length - 1].strip().split(" ", -1))
                        .mapToInt(Integer::parseInt)
                        .toArray();
                Question question = Packings.question(Long.parseLong(cells[2]), lengths);
                out.add(new Instance(cells[0], items, question, Long.parseLong(cells[5])));
            }
        }
        return out;
    }

    private static List<Instance> invented() {
        List<Instance> out = new ArrayList<>();
        for (int seed = 0; seed < 12; seed++) {
            int[] lengths = new java.util.Random(seed).ints(60, 200, 500).toArray();
            out.add(new Instance("invented " + seed, 60, Packings.question(1_000, lengths), -1));
        }
        return out;
    }
}
