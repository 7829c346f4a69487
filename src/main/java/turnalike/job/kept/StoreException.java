package turnalike.job.kept;

import turnalike.units.Problem;

/**
 * The store cannot do what was asked, for a reason that lies with the file or the disk and not with this program: damaged, full, in use,
 * not a store. Nothing was changed. Thrown because it can come from any call; told at the edge like any other problem.
 */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /**
     * With nothing thrown behind it.
     *
     * @param problem what is wrong with the store, and how to mend it
     */
    public StoreException(Problem problem) {
        super(problem.line());
        this.problem = problem;
    }

    /**
     * Because of what was thrown below.
     *
     * @param problem what is wrong with the store, and how to mend it
     * @param cause for whoever looks into it; the user is told the problem
     */
    public StoreException(Problem problem, Throwable cause) {
        super(problem.line(), cause);
        this.problem = problem;
    }

    /** {@return what is wrong with the store, and how to mend it} */
    public Problem problem() {
        return problem;
    }
}
