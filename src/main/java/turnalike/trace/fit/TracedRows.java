package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import turnalike.trace.Doubt;
import turnalike.trace.TracedMember;
import turnalike.trace.TracedRun;

/**
 * The members that explain a table of measured points.
 *
 * @param run as they were found
 * @param doubts which of them the rows do not bear out, and why; by their numbers
 * @param strayMm how far the rows stray round the members, one standard deviation of a radius; empty where too few tell
 */
public record TracedRows(TracedRun run, List<Doubt> doubts, OptionalDouble strayMm) {
    public TracedRows {
        doubts = List.copyOf(doubts);
    }

    /** {@return the run with what is doubted marked uncertain} */
    public TracedRun marked() {
        List<TracedMember> out = new ArrayList<>(run.members());
        for (Doubt each : doubts) {
            TracedMember member = out.get(each.member() - 1);
            out.set(
                    each.member() - 1,
                    new TracedMember(
                            member.member(), member.from(), member.miss(), true, member.rivalled(), member.guessed()));
        }
        return new TracedRun(out, run.outline(), run.miss(), run.scatter());
    }
}
