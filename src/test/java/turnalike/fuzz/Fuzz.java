package turnalike.fuzz;

import java.util.List;
import turnalike.units.Problem;

/** What every harness asks. */
final class Fuzz {
    private Fuzz() {}

    static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }

    /** Problems are lines that a person reads. */
    static void readable(List<Problem> problems) {
        for (Problem each : problems) {
            String line = each.line();
            require(!each.what().isBlank() && !each.mend().isBlank(), "a problem that says nothing");
            require(line.indexOf('\n') < 0 && line.indexOf('\r') < 0, "a problem on two lines");
        }
    }
}
