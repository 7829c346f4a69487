package turnalike.job.nudge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/** What a change costs the eye, by the job's own weights of likeness, see {@link Nudge#cost}. */
final class EyeCost {
    private static final double SLACK_MM = 1e-9;

    private EyeCost() {}

    /**
     * The cost of going from one job to the other; empty when marks or diameters have come or gone, or one of them lies further off than
     * its tolerance.
     */
    static Optional<Double> between(Job before, Job after) {
        List<Length> marks = marks(before);
        List<Length> diameters = diameters(before);
        Optional<Double> places = off(marks, marks(after), before.tolerances().mark());
        Optional<Double> sizes =
                off(diameters, diameters(after), before.tolerances().diameter());
        return places.flatMap(off -> sizes.map(
                thick -> before.likeness().length() * off + before.likeness().diameter() * thick));
    }

    private static List<Length> marks(Job job) {
        return job.pattern().marks().stream().map(Mark::place).toList();
    }

    private static List<Length> diameters(Job job) {
        List<Length> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            if (!placed.member().details().byEye()) {
                placed.diameters().stream().map(Member.Diameter::size).forEach(out::add);
            }
        }
        return out;
    }

    /** The sum of the differences, in tolerances. */
    private static Optional<Double> off(List<Length> before, List<Length> after, Length tolerance) {
        if (before.size() != after.size()) {
            return Optional.empty();
        }
        double sum = 0;
        for (int i = 0; i < before.size(); i++) {
            double offMm = after.get(i).minus(before.get(i)).abs().mm();
            if (offMm > tolerance.mm() + SLACK_MM) {
                return Optional.empty();
            }
            sum += offMm > SLACK_MM ? offMm / tolerance.mm() : 0;
        }
        return Optional.of(sum);
    }
}
