package turnalike.job.nudge;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.Job;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.outline.Section;
import turnalike.pattern.MemberKey;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What may move, and how far: whole steps of a sixty-fourth of an inch or half a millimetre, up to the tolerance; where the tolerance is
 * smaller than a step, by the whole of it. What another part is made to fit stays: a tenon's diameter and shoulder, and a square with its
 * shoulder lines.
 */
final class Moves {
    /** More steps than this the eye is not asked to forgive at once, whatever the tolerance. */
    private static final int MOST_STEPS = 4;

    private static final double SLACK_MM = 1e-9;

    private final Job job;

    Moves(Job job) {
        this.job = job;
    }

    /** The sizes of one move, the least first, none where nothing may differ. */
    static List<Length> sizes(Length tolerance, UnitSystem units) {
        Length step = units == UnitSystem.INCH ? Length.ofInches(1 / 64.0) : Length.ofMm(0.5);
        List<Length> out = new ArrayList<>();
        for (int i = 1; i <= MOST_STEPS && step.times(i).mm() <= tolerance.mm() + SLACK_MM; i++) {
            out.add(step.times(i));
        }
        return out.isEmpty() && tolerance.isPositive() ? List.of(tolerance) : out;
    }

    /** Each boundary between two members that may move, by each size either way; the least moves first. */
    List<Shift> boundaries() {
        List<PlacedMember> run = job.pattern().placed();
        List<Shift> out = new ArrayList<>();
        for (Length by : sizes(job.tolerances().mark(), job.units())) {
            for (int i = 0; i + 1 < run.size(); i++) {
                if (isFree(run.get(i)) && isFree(run.get(i + 1))) {
                    out.add(new Shift(i + 1, MemberKey.LENGTH, by));
                    out.add(new Shift(i + 1, MemberKey.LENGTH, by.times(-1)));
                }
            }
        }
        return out;
    }

    static boolean isFree(PlacedMember placed) {
        return placed.member().section() == Section.ROUND
                && placed.member().enters().isEmpty();
    }
}
