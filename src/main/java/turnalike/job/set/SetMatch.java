package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.JobFrame;
import turnalike.pieces.Piece;
import turnalike.units.Problem;
import turnalike.units.Working;

/** The set chosen from the pieces and placed in the job's frame. */
public sealed interface SetMatch permits WheelSet, RowSet, LegsSet {
    /** What to know before believing it. */
    List<String> warnings();

    /** How the figures were found. */
    List<Working> workings();

    /** What the left-over pieces are good for; empty when none was left over that was weighed. */
    Optional<NextPieces> nextSet();

    <R> R match(Cases<R> cases);

    /** One answer for each kind of frame. */
    interface Cases<R> {
        R wheel(WheelSet set);

        R row(RowSet set);

        R legs(LegsSet set);
    }

    /** Everything that keeps these pieces from being placed, in order; empty when they can be. */
    static List<Problem> problems(Job job, List<Piece> pieces) {
        if (job.frame().isEmpty()) {
            return List.of(new Problem(
                    "frame", "the job has no frame to place the set in", "add \"frame\": {\"kind\": \"wheel\", …}"));
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
        out.addAll(job.frame().get().match(new JobFrame.Cases<List<Problem>>() {
            @Override
            public List<Problem> onWheel(JobFrame.OnWheel frame) {
                return WheelSet.problems(job, frame, pieces);
            }

            @Override
            public List<Problem> inRow(JobFrame.InRow frame) {
                return RowSet.problems(job, frame, pieces);
            }

            @Override
            public List<Problem> inLegs(JobFrame.InLegs frame) {
                return LegsSet.problems(frame, pieces);
            }
        }));
        return out;
    }

    /**
     * Chooses and places.
     *
     * @throws IllegalArgumentException when {@link #problems} is not empty
     */
    static SetMatch of(Job job, List<Piece> pieces, boolean strict, Effort effort) {
        List<Problem> problems = problems(job, pieces);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.get(0).line());
        }
        return job.frame().orElseThrow().match(new JobFrame.Cases<SetMatch>() {
            @Override
            public SetMatch onWheel(JobFrame.OnWheel frame) {
                return WheelSet.of(job, frame, pieces, strict, effort);
            }

            @Override
            public SetMatch inRow(JobFrame.InRow frame) {
                return RowSet.of(job, frame, pieces, effort);
            }

            @Override
            public SetMatch inLegs(JobFrame.InLegs frame) {
                return LegsSet.of(job, frame, pieces, effort);
            }
        });
    }
}
