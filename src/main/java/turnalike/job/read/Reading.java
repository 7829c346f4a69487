package turnalike.job.read;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** What is known while a job file is read: the units of bare numbers, and every problem found so far, in order. */
final class Reading {
    private final List<Problem> problems = new ArrayList<>();
    private UnitSystem units = UnitSystem.METRIC;

    void units(UnitSystem units) {
        this.units = units;
    }

    UnitSystem units() {
        return units;
    }

    void problem(String where, String what, String mend) {
        problems.add(new Problem(where, what, mend));
    }

    void problem(Problem problem) {
        problems.add(problem);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    int count() {
        return problems.size();
    }
}
