package turnalike.web.wood;

import java.util.List;
import turnalike.drawing.chart.JointDrawing;
import turnalike.job.YearOfJoints;
import turnalike.job.YearWords;
import turnalike.units.UnitSystem;

/**
 * The joints through the year, as the page shows them.
 *
 * @param joints each drawn and in words
 * @param untold why nothing is said of others
 */
public record YearView(List<Drawn> joints, List<String> untold) {
    /** One joint. */
    public record Drawn(String name, String picture, List<String> lines) {
        public Drawn {
            lines = List.copyOf(lines);
        }
    }

    public YearView {
        joints = List.copyOf(joints);
        untold = List.copyOf(untold);
    }

    static YearView of(YearOfJoints year, UnitSystem units) {
        return new YearView(
                year.stands().stream()
                        .map(stand -> new Drawn(
                                "%s in the %s".formatted(stand.tenon().caption(), stand.hole()),
                                new JointDrawing(stand, units).svg().inline(),
                                YearWords.joint(stand, year.snug(), units)))
                        .toList(),
                year.untold().stream()
                        .map(each -> each.where() + ": " + each.what())
                        .toList());
    }

    public String caution() {
        return YearWords.CAUTION;
    }
}
