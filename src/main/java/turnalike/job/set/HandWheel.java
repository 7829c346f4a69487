package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.match.Candidate;
import turnalike.match.HandPlaces;
import turnalike.match.TradeOff;
import turnalike.match.WheelMatch;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Piece;

/**
 * A wheel of which a person settled some places or all. The rest is chosen by balance; where the lengths are known and balance cannot tell two
 * orders apart, the rounder is taken. Seats are bored as for any other set, every piece kept where it is.
 *
 * @param placement which piece stands where
 * @param roundness of that order alone, if the lengths were measured
 * @param notes what to know of it
 * @param work what the person did
 */
record HandWheel(WheelPlacement placement, Optional<Roundness> roundness, List<String> notes, HandWork work) {
    static HandWheel of(SetTerms terms, OnWheel frame, WheelProblem problem, List<Piece> pieces, Effort effort) {
        HandPlaces hand = terms.hand().among(pieces);
        Seating seating = Seating.of(terms.pattern(), frame.hubEnd());
        WheelMatch.ByHand found = WheelMatch.byHand(problem, hand, order -> 0, effort.share(0.5));
        RimReading reading = RimReading.of(frame, seating, pieces, problem, found.placement());
        if (reading.rim().isPresent() && !hand.stands() && !problem.strict()) {
            HandPlaces from = new HandPlaces(numbers(problem, found.placement()), hand.held(), false);
            found = WheelMatch.byHand(problem, from, runOut(reading.rim().get()), effort);
            reading = RimReading.of(frame, seating, pieces, problem, found.placement());
        }
        WheelPlacement placement = found.placement();
        Optional<Roundness> roundness =
                reading.rim().map(rim -> WeighedRoundness.ofOrder(rim, placement, terms, frame, problem.strict()));
        List<String> notes = new ArrayList<>(reading.notes());
        roundness.filter(Roundness::isBored).ifPresent(each -> notes.add(each.note()));
        return new HandWheel(
                roundness
                        .map(each -> RounderPlacement.of(problem, placement, each))
                        .orElse(placement),
                roundness,
                notes,
                new HandWork(
                        terms.hand(),
                        found.leastOfRest()
                                && roundness.filter(Roundness::isBored).isEmpty()));
    }

    private static List<Integer> numbers(WheelProblem problem, WheelPlacement placement) {
        return placement.seats().stream()
                .map(seat -> problem.pieces().indexOf(seat.piece()))
                .toList();
    }

    /** How far out of round an order is, in millimetres; beyond all others where a length is not known. */
    private static ToDoubleFunction<List<Candidate>> runOut(TradeOff.Rim rim) {
        Map<Candidate, Integer> numbers = IntStream.range(0, rim.spokes().size())
                .boxed()
                .collect(Collectors.toMap(i -> rim.spokes().get(i).piece(), Function.identity()));
        return order -> order.stream().allMatch(numbers::containsKey)
                ? rim.point(order.stream().mapToInt(numbers::get).toArray())
                        .rim()
                        .runOut()
                        .mm()
                : Double.MAX_VALUE;
    }
}
