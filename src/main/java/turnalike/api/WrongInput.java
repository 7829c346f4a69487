package turnalike.api;

import java.util.List;
import turnalike.units.Problem;

/** What was given cannot be read, or cannot be what it says: every problem in it, in order. */
public final class WrongInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    WrongInput(List<Problem> problems) {
        super(problems.get(0).line());
        this.problems = List.copyOf(problems);
    }

    /** {@return every problem, each with its place and how to mend it; at least one} The message is the first one's line. */
    public List<Problem> problems() {
        return problems;
    }
}
