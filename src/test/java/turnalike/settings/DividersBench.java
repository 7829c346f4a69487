package turnalike.settings;

import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import turnalike.effort.Effort;
import turnalike.settings.PatternFamilies.Family;

/**
 * Our divider search and an OR-Tools CP-SAT model side by side on the same patterns in one run. Arguments: seconds allowed to each for
 * each pattern (default 10), patterns per size (default 3), then the numbers of marks (default 10 15 20); {@code ours} as the first
 * argument leaves CP-SAT out. {@code turnings} as the first argument takes invented turnings instead, ours alone, each time with details
 * at random and mirrored; the sizes are then members. Prints settings/bound/sum of steps, {@code ?} where not all is proven, and the ratio of times.
 */
final class DividersBench {
    private static final int CP_SAT_WORKERS = 8;

    private DividersBench() {}

    public static void main(String[] arguments) {
        boolean turnings = arguments.length > 0 && arguments[0].equals("turnings");
        boolean alone = turnings || (arguments.length > 0 && arguments[0].equals("ours"));
        double[] numbers = Arrays.stream(arguments)
                .skip(alone ? 1 : 0)
                .mapToDouble(Double::parseDouble)
                .toArray();
        double seconds = numbers.length > 0 ? numbers[0] : 10;
        int patterns = numbers.length > 1 ? (int) numbers[1] : 3;
        double[] sizes =
                numbers.length > 2 ? Arrays.copyOfRange(numbers, 2, numbers.length) : new double[] {10, 15, 20};
        warmUp();
        if (turnings) {
            turnings(seconds, patterns, sizes);
            return;
        }
        for (Family family : Family.values()) {
            for (double size : sizes) {
                for (int seed = 0; seed < patterns; seed++) {
                    double[] marks = PatternFamilies.marks(family, (int) size, new Random(5 + seed));
                    line(family + " " + (int) size + " seed " + (5 + seed), marks, seconds, alone);
                }
            }
        }
    }

    private static void turnings(double seconds, int patterns, double[] sizes) {
        for (double size : sizes) {
            for (boolean mirrored : new boolean[] {false, true}) {
                for (int seed = 1; seed <= patterns; seed++) {
                    double[] marks =
                            PatternFamilies.turning((int) size, mirrored, new Random(seed * 7919L + (int) size));
                    line(
                            (mirrored ? "mirrored " : "random ") + (int) size + ", " + marks.length + " marks, seed "
                                    + seed,
                            marks,
                            seconds,
                            true);
                }
            }
        }
    }

    private static void warmUp() {
        for (Family family : Family.values()) {
            Dividers.solve(
                    DividersTest.problem(PatternFamilies.marks(family, 16, new Random(1))), Effort.ofAsks(100_000));
        }
    }

    private static void line(String name, double[] marks, double seconds, boolean alone) {
        long start = System.nanoTime();
        long end = start + (long) (seconds * 1e9);
        DividerPlan plan = Dividers.solve(DividersTest.problem(marks), () -> System.nanoTime() > end)
                .findPlan()
                .orElseThrow();
        double ours = (System.nanoTime() - start) * 1e-9;
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%-28s ours %2d/%2d/%3d%-2s %7.3f s",
                name,
                plan.settings().size(),
                plan.lowerBound(),
                plan.sumOfSteps(),
                plan.tiesProven() ? "" : plan.fewestProven() ? "?" : "??",
                ours));
        if (!alone) {
            CpSatDividers.Found found = new CpSatDividers(marks, 0.1, 3).solve(seconds, CP_SAT_WORKERS);
            text.append(String.format(
                    Locale.ROOT,
                    "   CP-SAT %2d/%2.0f/%3d%-2s %7.3f s   ratio %8.1f%s",
                    found.settings(),
                    Math.max(0, Math.ceil(found.bound() - 1e-6)),
                    found.sumOfSteps(),
                    found.proven() == 3 ? "" : found.proven() > 0 ? "?" : "??",
                    found.seconds(),
                    found.seconds() / ours,
                    found.proven() == 3 ? "" : " or more"));
        }
        System.out.println(text);
    }
}
