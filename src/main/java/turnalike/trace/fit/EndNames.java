package turnalike.trace.fit;

import java.util.List;
import turnalike.pattern.Member;
import turnalike.pattern.Tenon;

/**
 * Which names at a picture's ends hang on what it does not tell: what is no longer than a broken edge may be one, and whether the level behind it is a
 * tenon is told by what stands beside it.
 */
final class EndNames {
    private final List<Part> parts;
    private final List<Member> members;
    private final boolean[] unsure;

    private EndNames(List<Part> parts, List<Member> members, boolean[] unsure) {
        this.parts = parts;
        this.members = members;
        this.unsure = unsure;
    }

    /** Marks them too among those that are unsure already. */
    static void mark(List<Part> parts, List<Member> members, boolean[] unsure) {
        EndNames names = new EndNames(parts, members, unsure);
        names.from(0, 1);
        names.from(parts.size() - 1, -1);
    }

    private void from(int end, int step) {
        int level = end;
        if (isOther(end, step) && parts.get(end).lengthMm() <= Chamfers.LONGEST_MM) {
            unsure[end] = true;
            level = end + step;
        }
        if (isOther(level, step) && parts.get(level).isLevel() && unsure[level + step]) {
            unsure[level] = true;
        }
    }

    /** Whether it is another form than a tenon, and one stands behind it. */
    private boolean isOther(int index, int step) {
        int behind = index + step;
        boolean inside = behind >= 0 && behind < parts.size();
        return inside
                && !parts.get(index).isCurve()
                && !parts.get(index).isSquare()
                && !(members.get(index) instanceof Tenon);
    }
}
