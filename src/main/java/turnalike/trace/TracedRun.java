package turnalike.trace;

import java.util.List;
import turnalike.outline.Outline;
import turnalike.pattern.Member;
import turnalike.units.Length;

/**
 * The members that explain an original.
 *
 * @param members in order from the start end; at least one
 * @param outline of these members, without approximation
 * @param miss how far what was seen lies off them, over all
 * @param scatter one standard deviation that radii were taken to be known to, on average
 */
public record TracedRun(List<TracedMember> members, Outline outline, TracedMember.Miss miss, Length scatter) {
    public TracedRun {
        members = List.copyOf(members);
        if (members.isEmpty()) {
            throw new IllegalArgumentException("a run has one member at least");
        }
    }

    /** {@return the members alone} */
    public List<Member> run() {
        return members.stream().map(TracedMember::member).toList();
    }
}
