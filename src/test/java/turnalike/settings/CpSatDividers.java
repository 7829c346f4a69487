package turnalike.settings;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The contract's divider rule put to OR-Tools CP-SAT, written from the contract alone: it shares no code with our search. A Boolean per
 * opening window, per distance, and per way a mark can be struck (from which mark, in which round); each mark is struck in exactly one
 * way, and a pair of marks is stepped one way at most. Three solves in a row, one for each part of the aim.
 */
final class CpSatDividers {
    private static final double NOISE_MM = 1e-9;

    /**
     * What the model found.
     *
     * @param proven how many of the three parts of the aim were proven; figures beyond that are the best found, or -1
     * @param bound proven lower bound on the settings
     */
    record Found(int settings, int sumOfSteps, double longestMm, int proven, double bound, double seconds) {}

    private final double[] marks;
    private final double toleranceMm;
    private final int mostSteps;
    private final double[] distances;
    private final CpModel model = new CpModel();
    private final List<BoolVar> windows = new ArrayList<>();
    private final BoolVar[] open;
    private final LinearExprBuilder sumOfSteps = LinearExpr.newBuilder();

    CpSatDividers(double[] marks, double toleranceMm, int mostSteps) {
        Loader.loadNativeLibraries();
        this.marks = marks.clone();
        this.toleranceMm = toleranceMm;
        this.mostSteps = mostSteps;
        this.distances = distinctDistances();
        this.open = new BoolVar[distances.length];
        addWindows();
        addStrikes();
    }

    Found solve(double secondsEach, int workers) {
        long start = System.nanoTime();
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(secondsEach).setNumWorkers(workers);
        LinearExpr count = LinearExpr.sum(windows.toArray(new BoolVar[0]));
        model.minimize(count);
        CpSolverStatus status = solver.solve(model);
        double bound = solver.bestObjectiveBound();
        int settings = status == CpSolverStatus.UNKNOWN ? -1 : (int) Math.round(solver.objectiveValue());
        if (status != CpSolverStatus.OPTIMAL) {
            return new Found(settings, -1, -1, 0, bound, since(start));
        }
        model.addLinearConstraint(count, settings, settings);
        model.minimize(sumOfSteps);
        status = solver.solve(model);
        int sum = status == CpSolverStatus.UNKNOWN ? -1 : (int) Math.round(solver.objectiveValue());
        if (status != CpSolverStatus.OPTIMAL) {
            return new Found(settings, sum, -1, 1, bound, since(start));
        }
        model.addLinearConstraint(sumOfSteps, sum, sum);
        IntVar longest = model.newIntVar(0, distances.length, "longest");
        for (int i = 0; i < distances.length; i++) {
            model.addGreaterOrEqual(longest, i + 1).onlyEnforceIf(open[i]);
        }
        model.minimize(longest);
        status = solver.solve(model);
        int proven = status == CpSolverStatus.OPTIMAL ? 3 : 2;
        int rank = status == CpSolverStatus.UNKNOWN ? -1 : (int) Math.round(solver.objectiveValue());
        return new Found(settings, sum, rank <= 0 ? rank : distances[rank - 1], proven, bound, since(start));
    }

    private static double since(long start) {
        return (System.nanoTime() - start) * 1e-9;
    }

    private void addWindows() {
        List<List<Literal>> servedBy = new ArrayList<>();
        for (int i = 0; i < distances.length; i++) {
            open[i] = model.newBoolVar("distance" + i);
            servedBy.add(new ArrayList<>());
        }
        int last = -1;
        for (int i = 0; i < distances.length; i++) {
            int j = i;
            while (j + 1 < distances.length && distances[j + 1] - distances[i] <= 2 * toleranceMm + NOISE_MM) {
                j++;
            }
            if (j > last) {
                last = j;
                BoolVar window = model.newBoolVar("window" + i);
                windows.add(window);
                for (int k = i; k <= j; k++) {
                    servedBy.get(k).add(window);
                }
            }
        }
        for (int i = 0; i < distances.length; i++) {
            List<Literal> clause = new ArrayList<>(servedBy.get(i));
            clause.add(open[i].not());
            model.addBoolOr(clause);
        }
    }

    private void addStrikes() {
        int n = marks.length;
        BoolVar[][] round = new BoolVar[mostSteps + 1][n];
        LinearExprBuilder[][] struckInRound = new LinearExprBuilder[mostSteps + 1][n];
        for (int v = 1; v < n - 1; v++) {
            List<Literal> rounds = new ArrayList<>();
            for (int k = 1; k <= mostSteps; k++) {
                round[k][v] = model.newBoolVar("mark" + v + "round" + k);
                struckInRound[k][v] = LinearExpr.newBuilder();
                sumOfSteps.addTerm(round[k][v], k);
                rounds.add(round[k][v]);
            }
            model.addExactlyOne(rounds);
        }
        for (int u = 0; u < n; u++) {
            for (int v = u + 1; v < n; v++) {
                List<Literal> ways = new ArrayList<>();
                strike(u, v, round, struckInRound, ways);
                strike(v, u, round, struckInRound, ways);
                if (!ways.isEmpty()) {
                    model.addLessOrEqual(
                            LinearExpr.sum(ways.toArray(new Literal[0])), open[indexOf(marks[v] - marks[u])]);
                }
            }
        }
        for (int v = 1; v < n - 1; v++) {
            for (int k = 1; k <= mostSteps; k++) {
                model.addEquality(struckInRound[k][v], round[k][v]);
            }
        }
    }

    private void strike(int from, int to, BoolVar[][] round, LinearExprBuilder[][] struckInRound, List<Literal> ways) {
        if (isEnd(to)) {
            return;
        }
        for (int k = isEnd(from) ? 1 : 2; k <= (isEnd(from) ? 1 : mostSteps); k++) {
            BoolVar way = model.newBoolVar("way");
            ways.add(way);
            struckInRound[k][to].addTerm(way, 1);
            if (!isEnd(from)) {
                model.addImplication(way, round[k - 1][from]);
            }
        }
    }

    private boolean isEnd(int mark) {
        return mark == 0 || mark == marks.length - 1;
    }

    /** The distinct distances, rising; those within floating noise of one another are taken as one. */
    private double[] distinctDistances() {
        double[] all = new double[marks.length * (marks.length - 1) / 2];
        int at = 0;
        for (int u = 0; u < marks.length; u++) {
            for (int v = u + 1; v < marks.length; v++) {
                all[at++] = marks[v] - marks[u];
            }
        }
        Arrays.sort(all);
        int kept = 0;
        for (double distance : all) {
            if (kept == 0 || distance - all[kept - 1] > NOISE_MM) {
                all[kept++] = distance;
            }
        }
        return Arrays.copyOf(all, kept);
    }

    private int indexOf(double distance) {
        int at = Arrays.binarySearch(distances, distance - NOISE_MM);
        return at >= 0 ? at : -at - 1;
    }
}
