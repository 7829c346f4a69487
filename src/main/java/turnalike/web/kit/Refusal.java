package turnalike.web.kit;

import java.util.List;
import turnalike.units.Problem;

/** A request that cannot be answered as asked, for a reason the person can mend; told as a page with that status. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient List<Problem> problems;

    public Refusal(int status, List<Problem> problems) {
        super(problems.get(0).line());
        this.status = status;
        this.problems = List.copyOf(problems);
    }

    public static Refusal of(int status, String where, String what, String mend) {
        return new Refusal(status, List.of(new Problem(where, what, mend)));
    }

    /** There is nothing at that address. */
    public static Refusal notFound(String what) {
        return of(404, what, "is not here", "go back to the list of jobs");
    }

    public int status() {
        return status;
    }

    public List<Problem> problems() {
        return problems;
    }
}
