package turnalike.job.set;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.match.Seat;
import turnalike.match.Spoke;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.pieces.Piece;
import turnalike.units.Length;

/**
 * What the lengths measured say of the rim.
 *
 * @param rim the placed set with its lengths, spoke k in place k; empty when the lengths cannot be used
 * @param notes why not
 */
record RimReading(Optional<TradeOff.Rim> rim, List<String> notes) {
    /** A circle fits safely through points this near to one; anything farther is a length read wrong. */
    private static final double FAR_FROM_ROUND = 0.2;

    static RimReading of(OnWheel frame, Seating seating, List<Piece> pieces, WheelPlacement placement) {
        Map<String, Piece> byLabel = pieces.stream().collect(Collectors.toMap(Piece::label, Function.identity()));
        List<Spoke> spokes = new ArrayList<>();
        List<String> unmeasured = new ArrayList<>();
        for (Seat seat : placement.seats()) {
            String label = seat.piece().label();
            Optional.ofNullable(byLabel.get(label))
                    .flatMap(Piece::length)
                    .ifPresentOrElse(
                            length -> spokes.add(new Spoke(seat.piece(), seating.spoke(length))),
                            () -> unmeasured.add(label));
        }
        int places = placement.seats().size();
        if (!expected(frame, pieces) || (spokes.isEmpty() && frame.seatDepths().isEmpty())) {
            return new RimReading(Optional.empty(), List.of());
        }
        if (!unmeasured.isEmpty()) {
            return none(
                    "the rim's roundness is not known: no length measured on piece " + String.join(", ", unmeasured));
        }
        List<Length> depths =
                frame.seatDepths().isEmpty() ? Collections.nCopies(places, Length.ZERO) : frame.seatDepths();
        TradeOff.Rim rim = new TradeOff.Rim(frame.wheel(), spokes, depths, frame.givenMoments());
        return odd(rim).map(RimReading::none).orElseGet(() -> new RimReading(Optional.of(rim), List.of()));
    }

    /** Whether anything was measured that roundness could be judged by, whichever pieces are placed. */
    static boolean expected(OnWheel frame, List<Piece> pieces) {
        boolean measured = !frame.seatDepths().isEmpty()
                || pieces.stream().anyMatch(piece -> piece.length().isPresent());
        return frame.wheel().places() >= 3 && measured;
    }

    private static RimReading none(String note) {
        return new RimReading(Optional.empty(), List.of(note));
    }

    /** What keeps the rim from being near any circle in whatever order, if anything. */
    private static Optional<String> odd(TradeOff.Rim rim) {
        double[] lengthsMm =
                rim.spokes().stream().mapToDouble(s -> s.length().mm()).toArray();
        double[] sorted = lengthsMm.clone();
        Arrays.sort(sorted);
        double middleMm = sorted[sorted.length / 2];
        for (int i = 0; i < lengthsMm.length; i++) {
            String label = rim.spokes().get(i).piece().label();
            if (lengthsMm[i] <= 0) {
                return Optional.of(
                        "the rim's roundness is not judged: piece %s is no longer than its tenons; measure it again"
                                .formatted(label));
            }
            if (!(Math.abs(lengthsMm[i] - middleMm) <= FAR_FROM_ROUND * middleMm)) {
                return Optional.of(
                        "the rim's roundness is not judged: piece %s is far from as long as the others; measure it again"
                                .formatted(label));
            }
        }
        for (int place = 0; place < rim.seatDepths().size(); place++) {
            if (rim.seatDepths().get(place).mm() > FAR_FROM_ROUND * middleMm) {
                return Optional.of(
                        "the rim's roundness is not judged: the seat of place %d is deeper than any slip; check it"
                                .formatted(place + 1));
            }
        }
        return Optional.empty();
    }
}
