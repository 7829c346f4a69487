package turnalike.cli.plan;

import turnalike.job.set.FrameFit;
import turnalike.job.set.WheelFit;
import turnalike.units.UnitSystem;

/** How the pattern stands in its frame, as text. */
final class FrameSummary implements FrameFit.Cases<String> {
    private final UnitSystem units;

    private FrameSummary(UnitSystem units) {
        this.units = units;
    }

    static String text(FrameFit fit, UnitSystem units) {
        return fit.match(new FrameSummary(units));
    }

    @Override
    public String wheel(WheelFit fit) {
        StringBuilder out = new StringBuilder("\n");
        fit.facts(units).forEach(line -> out.append(line).append('\n'));
        return out.toString();
    }
}
