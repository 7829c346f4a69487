package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.match.TradeOff;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How round the rim comes out, and what roundness costs in balance and in boring.
 *
 * @param rim all spokes that were measured, in the order listed
 * @param placed what was placed, its figures those after its seats are bored as it tells
 * @param curve balance against roundness without boring, from best balanced to roundest; what was placed is on it unless its seats are
 *     bored, or strictness kept an order that another equals in balance and beats in roundness
 * @param bored ways of boring seats deeper, least bored first, each with the order that goes with it
 * @param balanced the best balanced order's run-out
 * @param choseOrder whether roundness, not balance, chose the order placed
 * @param seat how far a seat's depth may be off from what is told of it, either way
 * @param tips whether what is judged are the spokes' tips, as of a helm, and no rim
 * @param units in which lengths are told
 */
public record Roundness(
        TradeOff.Rim rim,
        TradeOff.Point placed,
        List<TradeOff.Point> curve,
        List<TradeOff.Point> bored,
        Length balanced,
        boolean choseOrder,
        Length seat,
        boolean tips,
        UnitSystem units) {
    /** Run-outs nearer than this are alike: no caliper knows better, and adding up lengths is surer. */
    static final double ALIKE_MM = 1e-6;

    /** Nobody bores for less, nor can: a sheet of paper under the bit's stop (common practice, no source). */
    static final double WORTH_BORING_MM = 0.1;

    public Roundness {
        curve = List.copyOf(curve);
        bored = List.copyOf(bored);
    }

    static double aboutAxleMm(TradeOff.Point point) {
        return runOutMm(point) + 2 * point.rim().offset().mm();
    }

    /**
     * {@return what a gauge held to the rim reads at most while the wheel turns on its axle, seats as deep as told: the run-out and, twice,
     * how far the rim's centre is off the axle} {@link #seat} either way may add twice itself.
     *
     * @param way one of the ways of boring, of the curve, or what was placed
     */
    public Length aboutAxle(TradeOff.Point way) {
        return Length.ofMm(aboutAxleMm(way));
    }

    static double runOutMm(TradeOff.Point point) {
        return point.rim().runOut().mm();
    }

    /**
     * {@return the pieces' labels in the order of the places}
     *
     * @param point one of the orders, such as one of the curve
     */
    public List<String> labels(TradeOff.Point point) {
        return point.order().stream()
                .map(spoke -> rim.spokes().get(spoke).piece().label())
                .toList();
    }

    /** {@return how much deeper each seat is bored for what was placed, in the order of the places; every figure counts it as done} */
    public List<Length> deepenings() {
        return placed.deepenings();
    }

    /** {@return whether any seat is bored deeper for what was placed} */
    public boolean isBored() {
        return placed.bored().isPositive();
    }

    /**
     * {@return which seats are bored and by how much more than they are, {@code 4 by 0.94 mm, 6 by 0.42 mm}; empty where none is worth a bit} Those
     * that would be bored by less than can be set are counted, and told by how much the farthest of their spokes then stands out.
     *
     * @param way one of the ways of boring, or what was placed
     */
    public String seats(TradeOff.Point way) {
        List<String> seats = new ArrayList<>();
        int left = 0;
        double mostLeftMm = 0;
        for (int place = 0; place < way.deepenings().size(); place++) {
            Length by = way.deepenings().get(place);
            if (by.mm() >= WORTH_BORING_MM) {
                seats.add("%d by %s".formatted(place + 1, by.formatFine(units)));
            } else if (by.mm() > ALIKE_MM) {
                left++;
                mostLeftMm = Math.max(mostLeftMm, by.mm());
            }
        }
        String listed = String.join(", ", seats);
        return left == 0 || seats.isEmpty()
                ? listed
                : "%s; %d by less than %s left out, which adds %s at most to what a gauge reads"
                        .formatted(
                                listed,
                                left,
                                Length.ofMm(WORTH_BORING_MM).formatFine(units),
                                Length.ofMm(mostLeftMm).formatFineUp(units));
    }

    /**
     * {@return how many seats that are}
     *
     * @param way one of the ways of boring
     */
    public int deepened(TradeOff.Point way) {
        return (int) way.deepenings().stream()
                .filter(by -> by.mm() >= WORTH_BORING_MM)
                .count();
    }

    /** {@return what is judged, in words: the rim, or the spokes' tips} */
    public String theRim() {
        return tips ? "the tips" : "the rim";
    }

    String note() {
        if (isBored()) {
            return String.format(
                    Locale.ROOT,
                    "%s would run out by more than you want, so these seats are to be bored deeper: %s; boring brings it to %s;"
                            + " all that is told of the set holds once that is done",
                    theRim(),
                    seats(placed),
                    placed.rim().runOut().formatMeasuredFinestBoth(units));
        }
        return String.format(
                Locale.ROOT,
                "the scale cannot tell these sets and orders apart in balance, so the roundest was placed, with a run-out of"
                        + " %s instead of %s; a search below the scale's noise too places the best balanced",
                placed.rim().runOut().formatMeasuredFinestBoth(units),
                balanced.formatMeasuredFinestBoth(units));
    }

    /** What to say where the rim runs out by more than will do, and no boring was advised since it would cost balance. */
    Optional<String> unmet(Optional<Length> will) {
        return will.filter(wished -> runOutMm(placed) > wished.mm() + ALIKE_MM)
                .map(wished -> String.format(
                        Locale.ROOT,
                        "%s by more than the %s you want: no way of boring was found with as good a balance, so none is"
                                + " advised; what boring would cost is told beside it",
                        tips ? "the tips run out" : "the rim runs out",
                        wished.formatFineBoth(units)));
    }

    List<Working> workings() {
        boolean every =
                rim.wheel().places() <= 7 && rim.spokes().size() == rim.wheel().places(); // as TradeOff promises
        return List.of(
                new Working(
                        "run-out",
                        "largest less smallest distance from the centre of the least-squares circle through the spokes' outer ends;"
                                + " each at hub radius − seat depth, bored as told, + measured length − tenons",
                        "the circle: W. Gander, G. H. Golub and R. Strebel, BIT 34 (1994) 558–578; roundness after ISO 12181-1"
                                + " (from memory)",
                        "as sure as the lengths measured; tenons count as long as the pattern has them, and the far end is"
                                + " the rim tenon's shoulder where there is one"),
                new Working(
                        "balance against roundness",
                        "the sets and orders of which none is beaten in both unbalance and run-out, no seat bored",
                        Working.DERIVED,
                        every ? "every order was looked at" : "the best found; better orders may exist"));
    }
}
