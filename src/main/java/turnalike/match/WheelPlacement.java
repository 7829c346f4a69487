package turnalike.match;

import java.util.List;
import turnalike.frame.Moment;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * A set placed on a wheel.
 *
 * @param seats one for each place, in order
 * @param spares the pieces left over, in the order given
 * @param unbalance what is left over, toward the heavy spot; none when it is below rounding
 * @param noiseFloorGMm the unbalance that the scale alone can feign, see {@link turnalike.frame.Wheel#noiseFloorGMm}
 * @param bestProven whether no other choice or order has a smaller unbalance
 * @param massSpread heaviest − lightest of the set
 * @param warnings in the user's words
 * @param workings how the figures were found
 * @param expected what the unbalance is likely to be
 */
public record WheelPlacement(
        List<Seat> seats,
        List<Candidate> spares,
        Moment unbalance,
        double noiseFloorGMm,
        boolean bestProven,
        Mass massSpread,
        List<String> warnings,
        List<Working> workings,
        Expected expected) {
    /** Less than this share of what the scale can feign is not told in figures. */
    private static final double LEAST_TOLD = 0.01;

    public WheelPlacement {
        seats = List.copyOf(seats);
        spares = List.copyOf(spares);
        warnings = List.copyOf(warnings);
        workings = List.copyOf(workings);
    }

    /**
     * Nothing but the scale scatters.
     *
     * @param seats one for each place, in order
     * @param spares the pieces left over
     * @param unbalance what is left over, toward the heavy spot
     * @param noiseFloorGMm the unbalance that the scale alone can feign
     * @param bestProven whether no other choice or order has a smaller unbalance
     * @param massSpread heaviest − lightest of the set
     * @param warnings in the user's words
     * @param workings how the figures were found
     */
    public WheelPlacement(
            List<Seat> seats,
            List<Candidate> spares,
            Moment unbalance,
            double noiseFloorGMm,
            boolean bestProven,
            Mass massSpread,
            List<String> warnings,
            List<Working> workings) {
        this(
                seats,
                spares,
                unbalance,
                noiseFloorGMm,
                bestProven,
                massSpread,
                warnings,
                workings,
                Expected.ofScale(unbalance, noiseFloorGMm));
    }

    /**
     * {@return the same with what its unbalance is likely to be}
     *
     * @param likely in place of what it had
     */
    public WheelPlacement with(Expected likely) {
        return new WheelPlacement(
                seats, spares, unbalance, noiseFloorGMm, bestProven, massSpread, warnings, workings, likely);
    }

    /**
     * {@return the same with other pieces left over}
     *
     * @param left in place of what it had, in the order given
     */
    public WheelPlacement withSpares(List<Candidate> left) {
        return new WheelPlacement(
                seats, left, unbalance, noiseFloorGMm, bestProven, massSpread, warnings, workings, expected);
    }

    /** {@return the same, not said to be the best there is} */
    public WheelPlacement unproven() {
        return new WheelPlacement(
                seats, spares, unbalance, noiseFloorGMm, false, massSpread, warnings, workings, expected);
    }

    /**
     * {@return whether the wheel is balanced to within what the scale can see: what is left over, with all that is not weighed, is no more
     * than the scale alone can feign}
     */
    public boolean isWithinScale() {
        return Math.hypot(unbalance.gMm(), expected.unseenGMm()) <= noiseFloorGMm;
    }

    /**
     * {@return what is left over as it is told to people: {@code 138 g·mm}; far below what the scale can feign, that it is under a hundredth
     * of that, {@code under 2 g·mm}: digits of chance are no balance}
     */
    public String left() {
        return told(unbalance);
    }

    /**
     * {@return another set's or order's unbalance, told as {@link #left} is}
     *
     * @param other what it leaves over
     */
    public String told(Moment other) {
        return told(other, noiseFloorGMm);
    }

    /**
     * {@return any unbalance, told so}
     *
     * @param moment what is left over
     * @param noiseFloorGMm the unbalance that the scale alone can feign, not negative
     */
    public static String told(Moment moment, double noiseFloorGMm) {
        return moment.format(noiseFloorGMm * LEAST_TOLD);
    }

    /** {@return whether what is left over stands out from all that scatters, so that there is a heavy side to speak of} */
    public boolean isHeavyOnOneSide() {
        return unbalance.gMm() > expected.noiseGMm();
    }

    /**
     * {@return heaviest − lightest of the pieces there}
     *
     * @param seats one or more
     */
    public static Mass spread(List<Seat> seats) {
        Mass heaviest = seats.get(0).piece().mass();
        Mass lightest = heaviest;
        for (Seat seat : seats) {
            Mass mass = seat.piece().mass();
            heaviest = mass.compareTo(heaviest) > 0 ? mass : heaviest;
            lightest = mass.compareTo(lightest) < 0 ? mass : lightest;
        }
        return heaviest.minus(lightest);
    }
}
