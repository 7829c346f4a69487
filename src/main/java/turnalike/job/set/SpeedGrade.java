package turnalike.job.set;

import java.util.List;
import turnalike.frame.BalanceGrade;
import turnalike.match.WheelPlacement;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.Working;

/**
 * The wheel's unbalance at its speed beside machine builders' balance grades; information, never an aim.
 *
 * @param revPerMin the speed in turns a minute; positive
 * @param mass of the set, with hub and rim where both are told
 * @param whole whether hub and rim are in it
 * @param reached the grade it just meets
 * @param permitted what the grades allow that a shop-made wheel may be held against
 */
public record SpeedGrade(double revPerMin, Mass mass, boolean whole, BalanceGrade reached, List<Permitted> permitted) {
    /** Farm machinery and road wheels: the coarse grades, which a shop-made wheel may be held against. */
    private static final List<Double> GRADES_MM_PER_S = List.of(16.0, 40.0);

    /** A grade cannot be none at all; an unbalance below a thousandth of a g·mm is beyond any scale. */
    private static final double LEAST_G_MM = 1e-3;

    /**
     * What one grade allows.
     *
     * @param grade by its number in mm/s
     * @param gMm the permissible unbalance of this set at this speed, in g·mm
     */
    public record Permitted(BalanceGrade grade, double gMm) {}

    public SpeedGrade {
        permitted = List.copyOf(permitted);
    }

    static SpeedGrade of(WheelPlacement placement, double revPerMin, WholeWheel built) {
        double grams = placement.seats().stream()
                .mapToDouble(seat -> seat.piece().mass().grams())
                .sum();
        double rest = built.complete() ? built.mass().grams() - built.spokes().grams() : 0;
        Mass mass = Mass.ofGrams(grams + rest);
        BalanceGrade reached =
                BalanceGrade.met(Math.max(LEAST_G_MM, placement.unbalance().gMm()), mass, revPerMin);
        return new SpeedGrade(revPerMin, mass, built.complete(), reached, permitted(mass, revPerMin));
    }

    /** What the coarse grades allow a wheel of that mass at that speed. */
    static List<Permitted> permitted(Mass mass, double revPerMin) {
        return GRADES_MM_PER_S.stream()
                .map(BalanceGrade::new)
                .map(grade -> new Permitted(grade, grade.permissibleGMm(mass, revPerMin)))
                .toList();
    }

    /**
     * {@return a speed as it was told, without needless decimals}
     *
     * @param revPerMin in turns a minute
     */
    public static String speed(double revPerMin) {
        return PlainNumber.exact(revPerMin);
    }

    static String caution() {
        return "the balance grade is for information: grades are made for machines, and at the speed of a hand"
                + " their allowance is so large that it says little; a wheel far from balanced may still meet one";
    }

    Working working() {
        return new Working(
                "balance grade",
                "U = G·m / ω, ω the speed in radians per second",
                "ISO 21940-11:2016 (formerly ISO 1940-1), formula as seen in a tooling catalogue's page on balancing",
                whole
                        ? "m is the mass of the set with its hub and rim as told"
                        : "m is the set's mass alone; with hub and rim counted each grade would allow more");
    }
}
