package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.settings.Wrench;
import turnalike.settings.Wrenches;
import turnalike.units.Length;
import turnalike.units.Working;

/**
 * How one tenon is sized to its hole.
 *
 * @param member index of the tenon in the run, from 0
 * @param hole the diameter it has to fit
 * @param holeGiven whether the job names the hole; otherwise it is taken as the tenon's own size
 * @param wrenches open-end wrenches of the hole's nominal size, the nearest first; may be none
 */
public record TenonFit(int member, Length hole, boolean holeGiven, List<Wrench> wrenches) {
    /** Said wherever a wrench is named. */
    public static final String CAUTION =
            "try the fit in a hole bored in scrap of the same wood, with the same bit, before turning the set";

    static final Working WORKING = new Working(
            "wrenches for tenons",
            "an open-end wrench of the hole's nominal size (within 0.1 mm) that just drops over the tenon gives a snug fit",
            Working.COMMON_PRACTICE
                    + "; inch openings from Machinery's Handbook (ASME B18.2.2, appendix); metric sizes from memory, their true openings not"
                    + " found",
            "an inch wrench opens 0.04 to 0.64 mm over its size, the larger the more, and bits and wood vary as much: "
                    + CAUTION);

    public TenonFit {
        wrenches = List.copyOf(wrenches);
    }

    /** Every tenon that is measured, in order of the run. */
    static List<TenonFit> list(Pattern pattern) {
        List<TenonFit> out = new ArrayList<>();
        List<Member> members = pattern.members();
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            int index = i;
            member.enters()
                    .filter(hole -> !member.details().byEye())
                    .ifPresent(hole -> out.add(
                            new TenonFit(index, hole.diameter(), hole.told(), Wrenches.forHole(hole.diameter()))));
        }
        return out;
    }
}
