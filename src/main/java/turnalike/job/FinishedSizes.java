package turnalike.job;

import java.util.Comparator;
import java.util.List;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Calipers;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What the diameters that one caliper opening sizes are when they are done: it serves several that differ within the tolerance. */
public final class FinishedSizes {
    private FinishedSizes() {}

    /**
     * {@return {@code 1 1/8 in}, or from the least to the greatest, {@code 10 to 11 mm}: one figure for a thin tenon and a thicker one would be
     * that of neither}
     *
     * @param plan of the job
     * @param setting one of its calipers
     */
    public static String text(Plan plan, CaliperSetting setting) {
        UnitSystem units = plan.job().units();
        List<Length> rising = plan.job().pattern().placed().stream()
                .filter(placed -> setting.members().contains(placed.number() - 1))
                .flatMap(placed -> placed.diameters().stream()
                        .map(Member.Diameter::size)
                        .filter(Calipers::canSize)
                        .filter(size -> nearest(plan, placed, size).equals(setting)))
                .sorted()
                .toList();
        if (rising.isEmpty()) {
            return setting.finished().format(units);
        }
        String least = rising.get(0).format(units);
        String greatest = rising.get(rising.size() - 1).format(units);
        String bare = least.substring(0, least.length() - units.symbol().length() - 1);
        return least.equals(greatest) ? least : bare + " to " + greatest;
    }

    private static CaliperSetting nearest(Plan plan, PlacedMember placed, Length size) {
        return plan.settings().calipers().stream()
                .filter(each -> each.members().contains(placed.number() - 1))
                .min(Comparator.comparing(each -> each.finished().minus(size).abs()))
                .orElseThrow();
    }
}
