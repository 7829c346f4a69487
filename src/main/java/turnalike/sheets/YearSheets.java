package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.chart.JointDrawing;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Svg;
import turnalike.job.Plan;
import turnalike.job.YearOfJoints;
import turnalike.job.YearWords;
import turnalike.units.UnitSystem;

/** The joints through the year, on paper. */
final class YearSheets {
    private YearSheets() {}

    /** Whether the job says where its pieces will live and something can be told of a joint there. */
    static boolean hasJoints(Plan plan) {
        return plan.year().filter(year -> !year.stands().isEmpty()).isPresent();
    }

    /** Each joint, drawn and in words. */
    static Sheet joints(Plan plan, Paper paper) {
        UnitSystem units = plan.job().units();
        YearOfJoints year = plan.year().orElseThrow();
        PageFlow flow = new PageFlow("joints", plan.job().title(), paper, paper.portrait());
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head(plan.job().title(), "joints through the year"));
        for (YearOfJoints.Stand stand : year.stands()) {
            Svg svg = new JointDrawing(stand, units).svg();
            double right = (flow.widthMm() - svg.width().mm()) / 2;
            parts.add(flow.sentences(
                    "%s in the %s".formatted(stand.tenon().caption(), stand.hole()),
                    YearWords.joint(stand, year.snug(), units)));
            parts.add(Flowing.whole(
                    List.of(Group.at(right, 0, svg.shapes())), svg.height().mm() + 4));
        }
        parts.add(flow.cautions(List.of(YearWords.CAUTION)));
        return flow.sheet(parts);
    }
}
