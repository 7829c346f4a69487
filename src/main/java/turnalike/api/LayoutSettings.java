package turnalike.api;

import java.util.List;
import turnalike.units.Length;

/**
 * What dividers and calipers are set to.
 *
 * @param dividers the openings that reach every mark that the stick does not give, the smallest first
 * @param calipers the openings that size every diameter
 * @param stick indices of the marks that come from the marking stick
 * @param worst the greatest error of any mark if every step errs by the job's mark tolerance
 * @param fewestAtLeast no sound choice has fewer divider openings than this
 * @param fewestProven whether no sound choice takes fewer marks from the stick, and none with as few has fewer divider openings
 */
public record LayoutSettings(
        List<ToolOpening> dividers,
        List<ToolOpening> calipers,
        List<Integer> stick,
        Length worst,
        int fewestAtLeast,
        boolean fewestProven) {
    public LayoutSettings {
        dividers = List.copyOf(dividers);
        calipers = List.copyOf(calipers);
        stick = List.copyOf(stick);
    }
}
