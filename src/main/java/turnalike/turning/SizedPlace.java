package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Calipers;
import turnalike.units.Length;

/**
 * One diameter in its place, with the caliper opening it is sized by.
 *
 * @param member index of its member
 * @param place from the datum end
 * @param setting the opening
 */
record SizedPlace(int member, Length place, CaliperSetting setting) {
    /** Every diameter that some opening sizes, in order of place. */
    static List<SizedPlace> of(TurningProblem work) {
        List<SizedPlace> out = new ArrayList<>();
        for (PlacedMember placed : work.pattern().placed()) {
            int index = placed.number() - 1;
            for (Member.Diameter diameter : placed.diameters()) {
                Optional.of(diameter.size())
                        .filter(Calipers::canSize)
                        .flatMap(size -> nearest(work, index, size))
                        .ifPresent(setting ->
                                out.add(new SizedPlace(index, placed.start().plus(diameter.place()), setting)));
            }
        }
        return out;
    }

    /** Of the openings that serve the member, the one meant for this diameter. */
    private static Optional<CaliperSetting> nearest(TurningProblem work, int member, Length finished) {
        return work.calipers().stream()
                .filter(each -> each.members().contains(member))
                .min(Comparator.comparing(
                        each -> each.finished().minus(finished).abs()));
    }
}
