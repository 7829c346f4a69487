package turnalike.job;

import java.util.Optional;
import turnalike.settings.DividerProblem;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.WeighingScale;

/**
 * How near is near enough.
 *
 * @param mark how far one pencil line may be off, each time it is stepped
 * @param markLimit the greatest worst-case error a mark may collect, what the openings miss included; empty for the rule of at most three
 *     steps, see {@link DividerProblem#MOST_STEPS}
 * @param diameter how far a finished diameter may be off
 * @param massPct the set's heaviest less its lightest, as a percentage of its mean
 * @param scale the smallest step the scale shows
 * @param masses the unit that the scale shows, in which masses are told and typed
 * @param seat how far a seat's depth may be off from what is told of it
 * @param holeAngle how far the direction of a seat's hole may be off, round the axle
 */
public record Tolerances(
        Length mark,
        Optional<Length> markLimit,
        Length diameter,
        double massPct,
        Mass scale,
        MassUnit masses,
        Length seat,
        Angle holeAngle) {
    /** What a job that says nothing gets. The mark's 0.25 mm and the scale's 0.1 g are the file format's; the rest common practice. */
    public static final Tolerances USUAL = new Tolerances(
            Length.ofMm(0.25),
            Optional.empty(),
            Length.ofMm(0.4),
            2,
            Mass.ofGrams(0.1),
            MassUnit.GRAM,
            Length.ofMm(0.25),
            Angle.ofDegrees(0.25));

    /** A mass tolerance of nothing would make any difference of mass endless; this is as near as likeness goes. */
    private static final double LEAST_MASS_PCT = 1e-6;

    /** {@return how masses are told: to the step that the scale shows, in its unit} */
    public WeighingScale weighing() {
        return new WeighingScale(scale, masses);
    }

    /**
     * {@return the same with masses told in another unit: that of a table of pieces}
     *
     * @param unit the table's
     */
    public Tolerances toldIn(MassUnit unit) {
        return new Tolerances(mark, markLimit, diameter, massPct, scale, unit, seat, holeAngle);
    }

    /** {@return the tolerances in which likeness counts} Where {@link #massPct} is 0, 0.000001 % stands in its place. */
    public turnalike.pieces.LikenessTolerances forLikeness() {
        return new turnalike.pieces.LikenessTolerances(mark, diameter, Math.max(massPct, LEAST_MASS_PCT));
    }
}
