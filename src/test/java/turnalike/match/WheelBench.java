package turnalike.match;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import turnalike.effort.Effort;
import turnalike.frame.Wheel;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * Placing on a wheel against plain enumeration, OR-Tools CP-SAT and random orders, one thread each. Prints a table; run it by hand.
 * Arguments: {@code exact}, {@code cpsat}, {@code choice}, {@code weights} or {@code scaling}, all by default; the last draws
 * {@code docs/placement-scaling.svg}.
 */
public final class WheelBench {
    private WheelBench() {}

    /** Runs what is asked for. */
    public static void main(String[] args) throws IOException {
        List<String> all = List.of("exact", "cpsat", "choice", "weights", "scaling");
        List<String> what = args.length == 0 ? all : List.of(args);
        OperatingSystemMXBean machine = ManagementFactory.getOperatingSystemMXBean();
        System.out.printf(
                "load %.1f on %d processors%n", machine.getSystemLoadAverage(), machine.getAvailableProcessors());
        if (what.contains("exact")) {
            againstEnumeration();
        }
        if (what.contains("cpsat")) {
            againstSolver();
        }
        if (what.contains("choice")) {
            choosing();
        }
        if (what.contains("weights")) {
            weightsOneToN();
        }
        if (what.contains("scaling")) {
            WheelScaling.run(Path.of("docs", "placement-scaling.svg"));
        }
    }

    private static void againstEnumeration() {
        for (int places : new int[] {8, 9, 10, 12}) {
            WheelProblem problem = random(places, places, 11);
            for (int warm = 0; warm < (places < 12 ? 200 : 20); warm++) {
                WheelMatch.solve(problem, Effort.unlimited());
            }
            double bestS = Double.POSITIVE_INFINITY;
            WheelPlacement placement = WheelMatch.solve(problem, Effort.unlimited());
            for (int run = 0; run < 50; run++) {
                long start = System.nanoTime();
                placement = WheelMatch.solve(problem, Effort.unlimited());
                bestS = Math.min(bestS, seconds(start));
            }
            double plainS = Double.POSITIVE_INFINITY;
            double plain = 0;
            for (int run = 0; run < (places < 10 ? 5 : places < 12 ? 2 : 1); run++) {
                long start = System.nanoTime();
                plain = enumerated(problem, Double.POSITIVE_INFINITY);
                plainS = Math.min(plainS, seconds(start));
            }
            System.out.printf(
                    "exact %d places: %.5f s, plain enumeration (one piece fixed) %.4f s, ratio %.1f, unbalance %.6f and %.6f%n",
                    places, bestS, plainS, plainS / bestS, placement.unbalance().gMm(), plain);
        }
    }

    /** Every order with the first piece fixed, the moment carried along: a fair plain enumeration, as far as it comes in the time. */
    private static double enumerated(WheelProblem problem, double seconds) {
        int n = problem.wheel().places();
        PlaceDirections compass = new PlaceDirections(n);
        double[] moments = moments(problem);
        double[] best = {Double.POSITIVE_INFINITY};
        deal(compass, moments, 1, new boolean[n], moments[0], 0, best, until(seconds));
        return Math.sqrt(best[0]);
    }

    private static void deal(
            PlaceDirections c,
            double[] moments,
            int place,
            boolean[] used,
            double x,
            double y,
            double[] best,
            Effort effort) {
        if (place == moments.length) {
            best[0] = Math.min(best[0], x * x + y * y);
            return;
        }
        if (moments.length - place >= 6 && effort.spent()) {
            return;
        }
        for (int i = 1; i < moments.length; i++) {
            if (!used[i]) {
                used[i] = true;
                double along = x + moments[i] * c.cos[place];
                double across = y + moments[i] * c.sin[place];
                deal(c, moments, place + 1, used, along, across, best, effort);
                used[i] = false;
            }
        }
    }

    private static void againstSolver() {
        Loader.loadNativeLibraries();
        WheelMatch.solve(random(24, 24, 1), Effort.ofAsks(100)); // warm
        for (int places : new int[] {12, 24, 60, 200}) {
            WheelProblem problem = random(places, places, 17);
            long start = System.nanoTime();
            WheelPlacement ours = WheelMatch.solve(problem, until(1));
            double oursS = seconds(start);
            double randomGMm = bestOfRandom(problem, oursS);
            double plainGMm = enumerated(problem, oursS);
            double[] solverS = {0};
            double solverGMm = solver(problem, 10, solverS);
            double oursGMm = Math.max(ours.unbalance().gMm(), 1e-12);
            System.out.printf(
                    "%d places: ours %.2e g mm in %.3f s%s, noise floor %.1f%n",
                    places, oursGMm, oursS, ours.bestProven() ? " (proven)" : "", ours.noiseFloorGMm());
            System.out.printf(
                    "    CP-SAT, %.1f s (%.0f times our time): %s%n",
                    solverS[0], solverS[0] / oursS, beside(solverGMm, oursGMm));
            System.out.printf("    best of random orders in our time: %s%n", beside(randomGMm, oursGMm));
            System.out.printf("    plain enumeration in our time: %s%n", beside(plainGMm, oursGMm));
            if (ours.bestProven()) {
                start = System.nanoTime();
                double wholeGMm = enumerated(problem, 60);
                System.out.printf(
                        "    plain enumeration to its end: %s, in %.0f times our time%n",
                        beside(wholeGMm, oursGMm), seconds(start) / oursS);
            }
        }
    }

    private static String beside(double theirsGMm, double oursGMm) {
        return Double.isInfinite(theirsGMm)
                ? "no order found"
                : "%.2e g mm, %.3g times ours".formatted(theirsGMm, theirsGMm / oursGMm);
    }

    private static double bestOfRandom(WheelProblem problem, double seconds) {
        int n = problem.wheel().places();
        double[] moments = moments(problem);
        PlaceDirections compass = new PlaceDirections(n);
        SplitMix64 dice = new SplitMix64(9);
        int[] order = new int[n];
        Arrays.setAll(order, i -> i);
        double best = Double.POSITIVE_INFINITY;
        long start = System.nanoTime();
        while (seconds(start) < seconds) {
            for (int k = 0; k < 100; k++) {
                dice.bringForward(order, n);
                double x = 0;
                double y = 0;
                for (int place = 0; place < n; place++) {
                    x += moments[order[place]] * compass.cos[place];
                    y += moments[order[place]] * compass.sin[place];
                }
                best = Math.min(best, x * x + y * y);
            }
        }
        return Math.sqrt(best);
    }

    /** An assignment of pieces to places whose moment's largest component along four lines is least; then measured truly. */
    private static double solver(WheelProblem problem, double seconds, double[] took) {
        int n = problem.wheel().places();
        double[] moments = moments(problem);
        double mean = Arrays.stream(moments).average().orElse(0);
        PlaceDirections compass = new PlaceDirections(n);
        CpModel model = new CpModel();
        BoolVar[][] stands = new BoolVar[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                stands[i][k] = model.newBoolVar("");
            }
        }
        for (int i = 0; i < n; i++) {
            List<Literal> across = new ArrayList<>();
            for (int k = 0; k < n; k++) {
                across.add(stands[k][i]);
            }
            model.addExactlyOne(stands[i]);
            model.addExactlyOne(across);
        }
        model.addEquality(stands[0][0], 1); // turning the wheel changes nothing
        IntVar left = model.newIntVar(0, 4_000_000_000L, "left");
        for (int d = 0; d < 4; d++) {
            double ux = Math.cos(Math.PI * d / 4);
            double uy = Math.sin(Math.PI * d / 4);
            LinearExprBuilder along = LinearExpr.newBuilder();
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    // The mean cancels round the wheel; without it the figures are small. Whole g mm: finer ones only
                    // slow it.
                    double part = (moments[i] - mean) * (compass.cos[k] * ux + compass.sin[k] * uy);
                    along.addTerm(stands[i][k], Math.round(part));
                }
            }
            LinearExpr sum = along.build();
            model.addLessOrEqual(sum, left);
            model.addGreaterOrEqual(LinearExpr.newBuilder().add(sum).add(left).build(), 0);
        }
        model.minimize(left);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        took[0] = solver.wallTime();
        if (status != CpSolverStatus.FEASIBLE && status != CpSolverStatus.OPTIMAL) {
            return Double.POSITIVE_INFINITY;
        }
        int[] pieceAt = new int[n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                if (solver.booleanValue(stands[i][k])) {
                    pieceAt[k] = i;
                }
            }
        }
        return PlainEnumeration.unbalanceGMm(problem, pieceAt);
    }

    private static void choosing() {
        int[][] sizes = {{8, 10}, {9, 12}, {10, 12}, {10, 14}, {10, 16}, {12, 14}, {60, 80}, {200, 1000}, {400, 2000}};
        for (int[] size : sizes) {
            WheelProblem problem = random(size[0], size[1], 23);
            for (boolean strict : new boolean[] {false, true}) {
                WheelProblem asked = new WheelProblem(
                        problem.pieces(), problem.wheel(), 4, problem.scale(), problem.given(), strict);
                long start = System.nanoTime();
                WheelPlacement placement = WheelMatch.solve(asked, until(10));
                System.out.printf(
                        "%d places of %d pieces%s: %.3e g mm%s, spread %.1f g, %d warnings, noise %.1f, %.2f s%n",
                        size[0],
                        size[1],
                        strict ? ", strict" : "",
                        placement.unbalance().gMm(),
                        placement.bestProven() ? " proven" : "",
                        placement.massSpread().grams(),
                        placement.warnings().size(),
                        placement.noiseFloorGMm(),
                        seconds(start));
            }
        }
    }

    private static void weightsOneToN() {
        for (int n = 6; n <= 32; n++) {
            WheelSearch search = new WheelSearch(WeightsOneToNTest.ring(n), 0, true);
            double start = WheelScaling.cpu();
            double[] reached = {Double.NaN, 0};
            double limit = n <= 19 ? 60 : 10;
            search.run(() -> {
                double now = WheelScaling.cpu() - start;
                if (search.leftGMm != reached[0]) {
                    reached[0] = search.leftGMm;
                    reached[1] = now;
                }
                return now > limit;
            });
            double end = WheelScaling.cpu() - start;
            System.out.printf(
                    "weights 1 … %d: |S| %.6e, 1000·|S|/Σw %.5e, reached by %.2f CPU s, %s, %.2f CPU s%n",
                    n,
                    search.leftGMm,
                    1000 * search.leftGMm / (n * (n + 1) / 2.0),
                    search.leftGMm == reached[0] ? reached[1] : end,
                    search.proven ? "proven" : "not proven",
                    end);
        }
    }

    static WheelArrays ring(WheelProblem problem) {
        double[] moments = moments(problem);
        int n = problem.wheel().places();
        return new WheelArrays(
                moments, moments, new PlaceDirections(n), new SetRule(moments, n, Double.MAX_VALUE), 0, 0);
    }

    static WheelProblem random(int places, int pieces, long seed) {
        Random random = new Random(seed * 7919);
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double massG = Math.rint(1500 + 60 * random.nextGaussian()) / 10;
            all.add(new Candidate("" + (i + 1), Mass.ofGrams(massG), Length.ofMm(290 + random.nextGaussian())));
        }
        Wheel wheel = new Wheel(places, Length.ofMm(60));
        return new WheelProblem(all, wheel, 100, Mass.ofGrams(0.1), List.of(), true);
    }

    private static double[] moments(WheelProblem problem) {
        return problem.pieces().stream()
                .mapToDouble(p -> p.mass().grams() * p.reach().mm())
                .toArray();
    }

    private static Effort until(double seconds) {
        long start = System.nanoTime();
        return () -> seconds(start) > seconds;
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
