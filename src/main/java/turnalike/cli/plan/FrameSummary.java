package turnalike.cli.plan;

import turnalike.job.set.FrameFit;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** How the pattern stands in its frame, as text. */
final class FrameSummary {
    private FrameSummary() {}

    static String text(FrameFit fit, UnitSystem units, MassUnit masses) {
        StringBuilder out = new StringBuilder("\n");
        fit.facts(units, masses).forEach(line -> out.append(line).append('\n'));
        return out.toString();
    }
}
