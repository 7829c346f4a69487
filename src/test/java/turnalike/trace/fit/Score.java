package turnalike.trace.fit;

import java.util.List;
import turnalike.pattern.Member;
import turnalike.trace.TracedMember;
import turnalike.trace.TracedRun;

/** How many members came back: of their kind, each end within so far. */
public record Score(int right, int all, boolean wholeRun) {
    public static final double END_MM = 1.5;

    public static Score of(List<Member> truth, TracedRun found) {
        int right = 0;
        double at = 0;
        for (Member member : truth) {
            right += isTold(found, member, at) ? 1 : 0;
            at += member.length().mm();
        }
        boolean whole = truth.stream()
                .map(each -> each.kind().word())
                .toList()
                .equals(found.run().stream().map(each -> each.kind().word()).toList());
        return new Score(right, truth.size(), whole);
    }

    /** Whether a member that begins so many millimetres from the start is among those found. */
    public static boolean isTold(TracedRun found, Member member, double from) {
        return found.members().stream()
                .anyMatch(each ->
                        isSame(each, member, from, from + member.length().mm()));
    }

    private static boolean isSame(TracedMember each, Member member, double from, double to) {
        return each.member().kind() == member.kind()
                && Math.abs(each.from().mm() - from) <= END_MM
                && Math.abs(each.to().mm() - to) <= END_MM;
    }
}
