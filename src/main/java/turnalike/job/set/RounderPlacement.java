package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import turnalike.frame.Moment;
import turnalike.match.Seat;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Working;

/** A placement whose order roundness had a say in. */
final class RounderPlacement {
    private RounderPlacement() {}

    /** The same set in the order that {@code roundness} placed; unchanged when that is the order it had. */
    static WheelPlacement of(WheelPlacement best, Roundness roundness) {
        TradeOff.Point placed = roundness.placed();
        List<Seat> seats = new ArrayList<>();
        for (Seat seat : best.seats()) {
            int spoke = placed.order().get(seat.place() - 1);
            seats.add(
                    new Seat(seat.place(), seat.angle(), best.seats().get(spoke).piece()));
        }
        if (seats.equals(best.seats())) {
            return best;
        }
        boolean chose = roundness.choseOrder();
        // Two orders alike to within rounding are both without unbalance.
        boolean none = !chose && best.unbalance().gMm() == 0;
        return new WheelPlacement(
                seats,
                best.spares(),
                none ? Moment.NONE : placed.unbalance(),
                best.noiseFloorGMm(),
                best.bestProven() && !chose,
                best.massSpread(),
                best.warnings(),
                chose
                        ? best.workings().stream()
                                .map(RounderPlacement::chosenRound)
                                .toList()
                        : best.workings());
    }

    private static Working chosenRound(Working working) {
        return working.figure().equals("unbalance")
                ? new Working(
                        working.figure(),
                        working.how(),
                        working.source(),
                        "not the smallest: below the scale's noise the roundest order was placed")
                : working;
    }
}
