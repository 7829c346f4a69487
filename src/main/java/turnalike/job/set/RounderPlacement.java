package turnalike.job.set;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.match.Candidate;
import turnalike.match.Seat;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.units.Working;

/** A placement whose set, order or seats roundness had a say in. */
final class RounderPlacement {
    private RounderPlacement() {}

    /** What {@code roundness} placed, each piece in its seat bored as told; unchanged when that is what it had. */
    static WheelPlacement of(WheelProblem problem, WheelPlacement best, Roundness roundness) {
        TradeOff.Point placed = roundness.placed();
        List<Seat> seats = new ArrayList<>();
        Set<Candidate> taken = new HashSet<>();
        for (Seat seat : best.seats()) {
            int place = seat.place() - 1;
            Candidate piece =
                    roundness.rim().spokes().get(placed.order().get(place)).piece();
            taken.add(piece);
            seats.add(new Seat(
                    seat.place(),
                    seat.angle(),
                    piece,
                    roundness
                            .rim()
                            .seatDepths()
                            .get(place)
                            .plus(placed.deepenings().get(place))));
        }
        if (seats.equals(best.seats())) {
            return best;
        }
        boolean chose = roundness.choseOrder();
        // Two orders alike to within rounding are both without unbalance.
        boolean none = !chose && best.unbalance().gMm() == 0;
        return new WheelPlacement(
                seats,
                problem.pieces().stream()
                        .filter(piece -> !taken.contains(piece))
                        .toList(),
                none ? Moment.NONE : placed.unbalance(),
                Wheel.noiseFloorGMm(
                        problem.scale(), seats.stream().map(Seat::reach).toList()),
                best.bestProven() && !chose,
                WheelPlacement.spread(seats),
                best.warnings(),
                chose
                        ? best.workings().stream()
                                .map(working -> chosenRound(working, roundness.isBored()))
                                .toList()
                        : best.workings());
    }

    private static Working chosenRound(Working working, boolean bored) {
        String sureness = bored
                ? "not the smallest without boring: as well balanced as the scale can tell, and rounder, once the seats are bored"
                : "not the smallest: below the scale's noise the roundest set and order was placed";
        return working.figure().equals("unbalance")
                ? new Working(working.figure(), working.how(), working.source(), sureness)
                : working;
    }
}
