package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.gauge.SettingBars;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Openings as bars of true length, as many as the page holds and the rest on the next. */
record FlowingBars(String heading, List<SettingBars.Bar> bars, UnitSystem units, Length width, boolean continued)
        implements Flowing {
    @Override
    public Optional<Laid> lay(double roomMm, boolean freshPage) {
        int fit = bars.size();
        while (fit > 1 && height(fit) > roomMm) {
            fit--;
        }
        if (height(fit) > roomMm && !freshPage) {
            return Optional.empty();
        }
        List<Shape> out = new ArrayList<>(head().shapes());
        out.add(Group.at(0, head().heightMm(), drawing(fit).shapes()));
        Optional<Flowing> rest = fit < bars.size()
                ? Optional.of(new FlowingBars(heading, bars.subList(fit, bars.size()), units, width, true))
                : Optional.empty();
        return Optional.of(new Laid(out, height(fit), rest));
    }

    private PartHeading head() {
        return PartHeading.of(continued ? heading + ", continued" : heading, width.mm());
    }

    private Svg drawing(int count) {
        return SettingBars.svg(heading, bars.subList(0, count), units, width);
    }

    private double height(int count) {
        return head().heightMm() + drawing(count).height().mm() + 2;
    }
}
