package turnalike.job.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.match.Candidate;
import turnalike.match.Spoke;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Piece;
import turnalike.units.Length;

/**
 * What the lengths measured say of the rim.
 *
 * @param rim all pieces that were measured, in the order listed; empty when the lengths cannot be used
 * @param notes why not
 */
record RimReading(Optional<TradeOff.Rim> rim, List<String> notes) {
    /** A circle fits safely through points this near to one; anything farther is a length read wrong. */
    private static final double FAR_FROM_ROUND = 0.2;

    static RimReading of(
            OnWheel frame, Seating seating, List<Piece> pieces, WheelProblem problem, WheelPlacement best) {
        Map<String, Candidate> candidates =
                problem.pieces().stream().collect(Collectors.toMap(Candidate::label, Function.identity()));
        List<Spoke> measured = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (Piece piece : pieces) {
            Optional<Candidate> candidate = Optional.ofNullable(candidates.get(piece.label()));
            candidate.ifPresent(each -> piece.length().ifPresent(length -> {
                measured.add(new Spoke(each, seating.spoke(length)));
                labels.add(piece.label());
            }));
        }
        List<String> placed =
                best.seats().stream().map(seat -> seat.piece().label()).toList();
        if (!expected(frame, pieces)
                || (placed.stream().noneMatch(labels::contains)
                        && frame.seatDepths().isEmpty())) {
            return new RimReading(Optional.empty(), List.of());
        }
        List<String> unmeasured =
                placed.stream().filter(label -> !labels.contains(label)).toList();
        if (!unmeasured.isEmpty()) {
            return none(
                    "the wheel's roundness is not known: no length measured on piece " + String.join(", ", unmeasured));
        }
        return judged(frame, problem, measured, Set.copyOf(placed));
    }

    /** The wheel with all spokes that can be judged, unless one of those placed cannot be. */
    private static RimReading judged(OnWheel frame, WheelProblem problem, List<Spoke> measured, Set<String> placed) {
        int places = frame.wheel().places();
        List<Length> depths =
                frame.seatDepths().isEmpty() ? Collections.nCopies(places, Length.ZERO) : frame.seatDepths();
        double[] lengthsMm = measured.stream()
                .filter(spoke -> placed.contains(spoke.piece().label()))
                .mapToDouble(spoke -> spoke.length().mm())
                .sorted()
                .toArray();
        double middleMm = lengthsMm[lengthsMm.length / 2];
        List<Spoke> sound = new ArrayList<>();
        for (Spoke spoke : measured) {
            Optional<String> odd = odd(spoke, middleMm);
            if (odd.isEmpty()) {
                sound.add(spoke);
            } else if (placed.contains(spoke.piece().label())) {
                return none(odd.get());
            }
        }
        for (int place = 0; place < places; place++) {
            if (depths.get(place).mm() > FAR_FROM_ROUND * middleMm) {
                return none(
                        "the wheel's roundness is not judged: the seat of place %d is deeper than any slip; check it"
                                .formatted(place + 1));
            }
        }
        TradeOff.Rim rim = new TradeOff.Rim(
                frame.wheel(), sound, depths, problem.given(), problem.tolerancePct(), Optional.empty());
        return new RimReading(Optional.of(rim), List.of());
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

    /** What keeps a rim with that spoke from being near any circle in whatever order, if anything. */
    private static Optional<String> odd(Spoke spoke, double middleMm) {
        String label = spoke.piece().label();
        if (spoke.length().mm() <= 0) {
            return Optional.of(
                    "the wheel's roundness is not judged: piece %s is no longer than its tenons; measure it again"
                            .formatted(label));
        }
        if (!(Math.abs(spoke.length().mm() - middleMm) <= FAR_FROM_ROUND * middleMm)) {
            return Optional.of(
                    "the wheel's roundness is not judged: piece %s is far from as long as the others; measure it again"
                            .formatted(label));
        }
        return Optional.empty();
    }
}
