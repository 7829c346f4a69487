package turnalike.cli.kit;

import java.util.List;
import turnalike.units.Problem;

/** Carries what is wrong in the user's input to the one place that tells it. Only this edge throws it; the layers below return problems. */
public final class UserError extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public UserError(List<Problem> problems) {
        super(problems.get(0).line());
        this.problems = List.copyOf(problems);
    }

    public static UserError of(String where, String what, String mend) {
        return new UserError(List.of(new Problem(where, what, mend)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
