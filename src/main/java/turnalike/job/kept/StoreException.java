package turnalike.job.kept;

import turnalike.units.Problem;

/**
 * The store cannot do what was asked, for a reason that lies with the file or the disk and not with this program: damaged, full, in use,
 * not a store. Nothing was changed. Thrown because it can come from any call; told at the edge like any other problem.
 */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    public StoreException(Problem problem) {
        super(problem.line());
        this.problem = problem;
    }

    public StoreException(Problem problem, Throwable cause) {
        super(problem.line(), cause);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}
