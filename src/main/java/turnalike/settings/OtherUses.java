package turnalike.settings;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;

/**
 * What else one divider opening is good for: a setting that serves twice need not be set twice.
 *
 * @param widths indices of the members whose length it is, so that a bead's width that is also a cove's is known for both
 * @param calipers indices of the caliper settings that stand at the same opening
 */
public record OtherUses(List<Integer> widths, List<Integer> calipers) {
    public OtherUses {
        widths = List.copyOf(widths);
        calipers = List.copyOf(calipers);
    }

    /**
     * {@return the uses of an opening among members' lengths and caliper openings, each within the tolerance, inclusive}
     *
     * @param opening of the dividers
     * @param widths the members' lengths
     * @param calipers the caliper openings of the same piece
     * @param tolerance the divider match tolerance, not negative
     */
    public static OtherUses of(Length opening, List<Length> widths, List<CaliperSetting> calipers, Length tolerance) {
        return new OtherUses(
                near(opening, widths, tolerance),
                near(opening, calipers.stream().map(CaliperSetting::opening).toList(), tolerance));
    }

    private static List<Integer> near(Length opening, List<Length> lengths, Length tolerance) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            if (lengths.get(i).minus(opening).abs().mm() <= tolerance.mm() + Spans.SLACK_MM) {
                out.add(i);
            }
        }
        return out;
    }
}
