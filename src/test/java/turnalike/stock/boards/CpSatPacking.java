package turnalike.stock.boards;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/**
 * Boards that are ripped in one way each, put to OR-Tools CP-SAT: a Boolean for each board, a whole number for each kind of blank in each of its
 * stretches; boards alike are opened in order, the fuller before. Shares no code with the search.
 */
final class CpSatPacking {
    record Found(long cost, long bound, boolean proven, double seconds) {}

    private CpSatPacking() {}

    /** A cost of -1 where it found that nothing holds all. */
    static Found solve(Question question, double seconds, int workers) {
        return solve(question, seconds, workers, Integer.MAX_VALUE);
    }

    /** @param mostBoards no more of each type than an answer at hand takes */
    static Found solve(Question question, double seconds, int workers, int mostBoards) {
        Loader.loadNativeLibraries();
        CpModel model = new CpModel();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        List<LinearExprBuilder> cut = new ArrayList<>();
        for (int kind = 0; kind < question.kinds(); kind++) {
            cut.add(LinearExpr.newBuilder());
        }
        for (Question.Type type : question.types()) {
            BoolVar before = null;
            LinearExprBuilder fuller = null;
            for (int copy = 0; copy < Math.min(type.count(), mostBoards); copy++) {
                BoolVar open = model.newBoolVar("open");
                cost.addTerm(open, type.cost());
                if (before != null) {
                    model.addImplication(open, before);
                }
                before = open;
                LinearExprBuilder load = LinearExpr.newBuilder();
                int[] rip = type.rips().get(0);
                for (int stretch = 0; stretch < rip.length; stretch++) {
                    for (int strip = 0; strip < rip[stretch]; strip++) {
                        fill(question, model, question.stretches().get(stretch), open, cut, load);
                    }
                }
                if (fuller != null) {
                    model.addGreaterOrEqual(fuller, load);
                }
                fuller = load;
            }
        }
        for (int kind = 0; kind < question.kinds(); kind++) {
            model.addEquality(cut.get(kind), question.demand()[kind]);
        }
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(workers);
        long start = System.nanoTime();
        CpSolverStatus status = solver.solve(model);
        double took = (System.nanoTime() - start) / 1e9;
        boolean none = status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.UNKNOWN;
        return new Found(
                none ? -1 : Math.round(solver.objectiveValue()),
                none ? 0 : (long) Math.ceil(solver.bestObjectiveBound() - 1e-6),
                status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE,
                took);
    }

    private static void fill(
            Question question,
            CpModel model,
            Question.Stretch stretch,
            BoolVar open,
            List<LinearExprBuilder> cut,
            LinearExprBuilder load) {
        LinearExprBuilder weight = LinearExpr.newBuilder();
        for (int kind = 0; kind < question.kinds(); kind++) {
            long most = Math.min(question.demand()[kind], stretch.capacity() / question.weights()[kind]);
            if (most > 0) {
                IntVar copies = model.newIntVar(0, most, "copies");
                weight.addTerm(copies, question.weights()[kind]);
                load.addTerm(copies, question.weights()[kind]);
                cut.get(kind).add(copies);
            }
        }
        weight.addTerm(open, -stretch.capacity());
        model.addLessOrEqual(weight, 0);
    }
}
