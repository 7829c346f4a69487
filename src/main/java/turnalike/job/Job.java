package turnalike.job;

import java.util.List;
import java.util.Optional;
import turnalike.job.set.ByHand;
import turnalike.job.set.Frame;
import turnalike.pattern.Pattern;
import turnalike.pieces.LikenessWeights;
import turnalike.turning.Lathe;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.wood.Wood;
import turnalike.year.Home;

/**
 * One order: what is turned, from what, how many and for which frame.
 *
 * @param title the turner's own
 * @param units in which its lengths are read and printed
 * @param pattern what every piece copies
 * @param wood what it is turned from
 * @param count good pieces wanted, one or more
 * @param lossRate share of blanks that come to nothing, 0 to 0.9
 * @param tolerances how near is near enough
 * @param cutting what is left on while the work goes on
 * @param wishes the turner's own choices for laying out; with the pattern and the tolerances they leave a sound plan
 * @param likeness how much each kind of measure counts to the eye
 * @param checks where a caliper is laid on every piece, in the order of the columns {@code d1}, {@code d2}, …
 * @param lathe what the turner's lathe and hand bring
 * @param home where the pieces will live, if told
 * @param shop the boards, blanks and times in hand, and what is charged
 * @param frame what the set goes into, if the job says
 * @param byHand which piece stands where by the turner's own choice
 */
public record Job(
        String title,
        UnitSystem units,
        Pattern pattern,
        Wood wood,
        int count,
        double lossRate,
        Tolerances tolerances,
        Cutting cutting,
        LayoutWishes wishes,
        LikenessWeights likeness,
        List<CheckPlace> checks,
        Lathe lathe,
        Optional<Home> home,
        Shop shop,
        Optional<Frame> frame,
        ByHand byHand) {
    public Job {
        checks = List.copyOf(checks);
    }

    /**
     * {@return the same order, its set settled otherwise by hand}
     *
     * @param hand which piece stands where
     */
    public Job with(ByHand hand) {
        return new Job(
                title,
                units,
                pattern,
                wood,
                count,
                lossRate,
                tolerances,
                cutting,
                wishes,
                likeness,
                checks,
                lathe,
                home,
                shop,
                frame,
                hand);
    }

    /**
     * {@return the same order with its masses told in the unit that a table of its pieces has: ounces where either says so}
     *
     * @param table the table's unit
     */
    public Job toldIn(MassUnit table) {
        return new Job(
                title,
                units,
                pattern,
                wood,
                count,
                lossRate,
                table == MassUnit.GRAM ? tolerances : tolerances.toldIn(table),
                cutting,
                wishes,
                likeness,
                checks,
                lathe,
                home,
                shop,
                frame,
                byHand);
    }

    /**
     * {@return the same order under another title}
     *
     * @param other the turner's own
     */
    public Job titled(String other) {
        return new Job(
                other,
                units,
                pattern,
                wood,
                count,
                lossRate,
                tolerances,
                cutting,
                wishes,
                likeness,
                checks,
                lathe,
                home,
                shop,
                frame,
                byHand);
    }

    /** {@return the largest round that the blank cleans up to} */
    public Length largestRound() {
        return lathe.rules().largestRound(pattern.stock().size());
    }

    /**
     * What came of reading a job file: the job, or every problem in it. Both or neither is an {@link IllegalArgumentException}.
     *
     * @param job what the file says; empty when anything in it is wrong
     * @param problems everything wrong, in the order of reading; none beside a job
     */
    public record Read(Optional<Job> job, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
            if (job.isEmpty() == problems.isEmpty()) {
                throw new IllegalArgumentException("a reading has a job or problems, never both or neither");
            }
        }
    }
}
