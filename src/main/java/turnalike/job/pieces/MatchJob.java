package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.set.SetMatch;
import turnalike.job.set.SetTerms;
import turnalike.pieces.Piece;
import turnalike.units.Problem;

/** A job's set, chosen from its pieces and placed in its frame. */
public final class MatchJob {
    private MatchJob() {}

    /**
     * Everything that keeps these pieces from being placed: that there is no frame; else balance points beyond the piece's end, and what
     * the frame itself asks.
     *
     * @param job whose frame is to be filled
     * @param pieces those there are to choose from
     * @return a problem each, in order; empty when they can be placed
     */
    public static List<Problem> problems(Job job, List<Piece> pieces) {
        if (job.frame().isEmpty()) {
            return List.of(
                    new Problem(
                            "frame",
                            "the job has no frame to place the set in",
                            "add \"frame\": {\"kind\": \"wheel\" (or \"row\"; or \"legs\" for groups that shall only look alike), …}"));
        }
        List<Problem> out = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean beyond = piece.balance()
                    .map(balance -> balance.compareTo(job.pattern().length()) > 0)
                    .orElse(false);
            if (beyond) {
                out.add(new Problem(
                        "piece " + piece.label(),
                        "its balance point lies beyond its far end",
                        "measure it from the start end"));
            }
        }
        out.addAll(job.frame().get().problems(terms(job, true), pieces));
        return out;
    }

    /**
     * Chooses and places.
     *
     * @param job whose frame is to be filled
     * @param pieces those there are to choose from; labels differ
     * @param strict whether to go on below what the scale can tell, where that has a meaning
     * @param effort what the search may spend; spent early, it gives the best it has
     * @return the set in its places, which says whether it is proven to be the best
     * @throws IllegalArgumentException when {@link #problems} is not empty
     */
    public static SetMatch of(Job job, List<Piece> pieces, boolean strict, Effort effort) {
        return of(job, pieces, strict, effort, false);
    }

    /**
     * {@return the set as it stands by hand, told quickly while a person tries one place after another: without what the left-over pieces are
     * good for}
     *
     * @param job whose set stands by hand
     * @param pieces those there are
     * @throws IllegalArgumentException when {@link #problems} is not empty
     */
    public static SetMatch glance(Job job, List<Piece> pieces) {
        return of(job, pieces, false, Effort.usual(), true);
    }

    private static SetMatch of(Job job, List<Piece> pieces, boolean strict, Effort effort, boolean glance) {
        List<Problem> problems = problems(job, pieces);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.get(0).line());
        }
        return job.frame().orElseThrow().fill(terms(job, glance), pieces, strict, effort);
    }

    private static SetTerms terms(Job job, boolean glance) {
        return new SetTerms(
                job.pattern(),
                job.wood().density(),
                job.tolerances().massPct(),
                job.tolerances().weighing(),
                job.tolerances().forLikeness(),
                job.likeness(),
                job.tolerances().seat(),
                job.tolerances().holeAngle(),
                job.units(),
                ColumnTargets.shape(job),
                ColumnTargets.lengths(job),
                job.byHand(),
                glance);
    }
}
