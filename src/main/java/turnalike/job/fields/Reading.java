package turnalike.job.fields;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** What is known while a job file is read: the units of bare numbers, and every problem found so far, in order. */
public final class Reading {
    private final List<Problem> problems = new ArrayList<>();
    private UnitSystem units = UnitSystem.METRIC;

    public void units(UnitSystem units) {
        this.units = units;
    }

    public UnitSystem units() {
        return units;
    }

    public void problem(String where, String what, String mend) {
        problems.add(new Problem(where, what, mend));
    }

    public void problem(Problem problem) {
        problems.add(problem);
    }

    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    public int count() {
        return problems.size();
    }
}
