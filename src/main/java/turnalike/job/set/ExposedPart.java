package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/** What of a piece stands between its shoulders; an end without a tenon is its own shoulder. */
final class ExposedPart {
    private ExposedPart() {}

    /** The outline between the shoulders, in its place; the whole of a run that is nothing but tenons. */
    static Outline of(Pattern pattern) {
        List<Outline> parts = new ArrayList<>();
        int last = pattern.placed().size();
        for (PlacedMember placed : pattern.placed()) {
            boolean atEnd = placed.number() == 1 || placed.number() == last;
            if (!atEnd || !placed.member().lengthInHole().isPositive()) {
                parts.add(placed.outline());
            }
        }
        if (parts.isEmpty()) {
            pattern.placed().forEach(placed -> parts.add(placed.outline()));
        }
        return Outline.join(parts);
    }

    /** The thickest of the members at a place, a square with half its diagonal: two stand where they meet. */
    static PlacedMember thickest(Pattern pattern, Length at) {
        return pattern.placed().stream()
                .filter(placed -> at.mm() >= placed.start().mm() - 1e-9
                        && at.mm() <= placed.end().mm() + 1e-9)
                .max(Comparator.comparingDouble(placed -> reach(placed, at)))
                .orElseThrow();
    }

    private static double reach(PlacedMember placed, Length at) {
        return placed.outline().radiusAt(at).mm()
                * placed.outline().sectionAt(at).reachFactor();
    }
}
