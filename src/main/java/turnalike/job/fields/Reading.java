package turnalike.job.fields;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** What is known while a job file is read: the units of bare numbers, and every problem found so far, in order. */
public final class Reading {
    private final List<Problem> problems = new ArrayList<>();
    private UnitSystem units = UnitSystem.METRIC;

    /** Nothing read yet, and no problem found. */
    public Reading() {}

    /**
     * Says how bare numbers are read from now on; millimetres until then.
     *
     * @param units as the file names them
     */
    public void units(UnitSystem units) {
        this.units = units;
    }

    /** {@return the units of bare numbers, as far as the file has been read} */
    public UnitSystem units() {
        return units;
    }

    /**
     * Tells a problem.
     *
     * @param where the place as the user knows it: {@code member 3 (hub bead): length}
     * @param what what is wrong there
     * @param mend how to put it right
     */
    public void problem(String where, String what, String mend) {
        problems.add(new Problem(where, what, mend));
    }

    /**
     * Tells a problem that was found elsewhere.
     *
     * @param problem with its place
     */
    public void problem(Problem problem) {
        problems.add(problem);
    }

    /** {@return every problem told so far, in order; a copy} */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** {@return how many problems have been told so far: the same before and after a part was read means that nothing is wrong with it} */
    public int count() {
        return problems.size();
    }
}
