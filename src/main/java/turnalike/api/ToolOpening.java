package turnalike.api;

import java.util.List;
import turnalike.units.Length;

/**
 * One opening that a tool is set to once for the whole set.
 *
 * @param opening between the divider's points, or the caliper's jaws
 * @param serves indices from 0, rising: of the marks that dividers strike with it, or of the members that calipers size with it
 */
public record ToolOpening(Length opening, List<Integer> serves) {
    public ToolOpening {
        serves = List.copyOf(serves);
    }
}
