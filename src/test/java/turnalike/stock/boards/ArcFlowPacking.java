package turnalike.stock.boards;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;

/**
 * Bins of one size as a flow along a bin from its start to its end (Valério de Carvalho 1999; from memory), put to OR-Tools with SCIP: the best
 * reference there is among what OR-Tools brings. The longest pieces lie first, so that no filling is told twice. Shares no code with the search.
 */
final class ArcFlowPacking {
    private static final double INFINITY = Double.POSITIVE_INFINITY;

    private ArcFlowPacking() {}

    static CpSatPacking.Found solve(Question question, double seconds) {
        Loader.loadNativeLibraries();
        long start = System.nanoTime();
        int capacity = (int) question.stretches().get(0).capacity();
        MPSolver solver = MPSolver.createSolver("SCIP");
        MPVariable bins = solver.makeIntVar(0, question.blanks(), "bins");
        List<MPConstraint> places = new ArrayList<>();
        for (int place = 0; place <= capacity; place++) {
            places.add(solver.makeConstraint(0, 0));
        }
        MPConstraint first = places.get(0);
        MPConstraint last = places.get(capacity);
        first.setCoefficient(bins, 1);
        last.setCoefficient(bins, -1);
        boolean[] reached = new boolean[capacity + 1];
        reached[0] = true;
        for (int kind = 0; kind < question.kinds(); kind++) {
            int weight = (int) question.weights()[kind];
            MPConstraint wanted = solver.makeConstraint(question.demand()[kind], INFINITY);
            boolean[] from = reached.clone();
            for (int place = 0; place + weight <= capacity; place++) {
                int copies = 0;
                for (int at = place; copies < question.demand()[kind] && at >= 0 && !from[at]; at -= weight) {
                    copies++;
                }
                if (reached[place] && (from[place] || copies < question.demand()[kind])) {
                    MPVariable arc = solver.makeIntVar(0, question.demand()[kind], "arc");
                    places.get(place).setCoefficient(arc, -1);
                    places.get(place + weight).setCoefficient(arc, 1);
                    wanted.setCoefficient(arc, 1);
                    reached[place + weight] = true;
                }
            }
        }
        for (int place = 1; place < capacity; place++) {
            if (reached[place]) {
                MPVariable rest = solver.makeIntVar(0, question.blanks(), "rest");
                places.get(place).setCoefficient(rest, -1);
                last.setCoefficient(rest, 1);
            }
        }
        MPObjective objective = solver.objective();
        objective.setCoefficient(bins, 1);
        objective.setMinimization();
        solver.setTimeLimit((long) (1000 * seconds));
        MPSolver.ResultStatus status = solver.solve();
        double took = (System.nanoTime() - start) / 1e9;
        boolean any = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        return new CpSatPacking.Found(
                any ? Math.round(objective.value()) : -1,
                any ? Math.round(Math.ceil(objective.bestBound() - 1e-6)) : 0,
                status == MPSolver.ResultStatus.OPTIMAL,
                took);
    }
}
