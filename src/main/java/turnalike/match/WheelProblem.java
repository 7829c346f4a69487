package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;

/**
 * What is to be placed on a wheel.
 *
 * @param pieces all there are to choose from
 * @param wheel its places and its hub
 * @param tolerancePct a set passes when (heaviest − lightest) / mean is at most this many hundredths; not negative, else
 *     {@link IllegalArgumentException}
 * @param scale the step of the scale the pieces were weighed on; not negative, else {@link IllegalArgumentException}
 * @param given what the hub, the rim and its joint add by themselves
 * @param strict whether to go on below what the scale can tell
 * @param seatDepths how much deeper than meant each place's seat lies in the hub, in the order of the places, negative where it is shallow:
 *     by so much its piece stands nearer to the axle; empty when none does, else one for each place
 */
public record WheelProblem(
        List<Candidate> pieces,
        Wheel wheel,
        double tolerancePct,
        Mass scale,
        List<Moment> given,
        boolean strict,
        List<Length> seatDepths) {
    public WheelProblem {
        pieces = List.copyOf(pieces);
        given = List.copyOf(given);
        seatDepths = List.copyOf(seatDepths);
        if (!seatDepths.isEmpty() && seatDepths.size() != wheel.places()) {
            throw new IllegalArgumentException(
                    "%d seat depths for %d places".formatted(seatDepths.size(), wheel.places()));
        }
        if (!(tolerancePct >= 0) || !(scale.grams() >= 0)) {
            throw new IllegalArgumentException("tolerance and scale must not be negative, were %s %% and %s g"
                    .formatted(tolerancePct, scale.grams()));
        }
    }

    /**
     * Seats all as deep as meant.
     *
     * @param pieces all there are to choose from
     * @param wheel its places and its hub
     * @param tolerancePct (heaviest − lightest) / mean of a set that passes, in hundredths
     * @param scale the step of the scale
     * @param given what the hub, the rim and its joint add by themselves
     * @param strict whether to go on below what the scale can tell
     */
    public WheelProblem(
            List<Candidate> pieces, Wheel wheel, double tolerancePct, Mass scale, List<Moment> given, boolean strict) {
        this(pieces, wheel, tolerancePct, scale, given, strict, List.of());
    }

    /**
     * {@return whether those pieces pass as a set: (heaviest − lightest) / mean no more than the tolerance, a hair of rounding let pass}
     *
     * @param set one or more of the pieces
     */
    public boolean passes(List<Candidate> set) {
        double[] grams =
                set.stream().mapToDouble(piece -> piece.mass().grams()).sorted().toArray();
        double share = tolerancePct / 100;
        return (grams[grams.length - 1] - grams[0]) * grams.length
                <= (share * (1 + 1e-12) + 1e-12) * Arrays.stream(grams).sum();
    }

    /**
     * {@return the same wheel with only those of its pieces to choose from, in the order listed}
     *
     * @param some as many as it has places, or more
     */
    public WheelProblem of(Collection<Candidate> some) {
        List<Candidate> kept = pieces.stream().filter(some::contains).toList();
        return new WheelProblem(kept, wheel, tolerancePct, scale, given, strict, seatDepths);
    }

    /** How much deeper than meant that place's seat lies; places are counted from 0. */
    Length seatDepth(int place) {
        return seatDepths.isEmpty() ? Length.ZERO : seatDepths.get(place);
    }

    /**
     * {@return everything that keeps it from being placed, in order; empty when it can be} Too few pieces; then, piece by piece, a label
     * listed twice, a mass that is not positive, or a balance point beyond the axle.
     */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        if (pieces.size() < wheel.places()) {
            problems.add(new Problem(
                    "pieces",
                    (pieces.size() == 1 ? "a single piece for %2$d places" : "%d pieces for %d places")
                            .formatted(pieces.size(), wheel.places()),
                    "log %d more or give the wheel fewer places".formatted(wheel.places() - pieces.size())));
        }
        Set<String> labels = new HashSet<>();
        for (Candidate piece : pieces) {
            if (!labels.add(piece.label())) {
                problems.add(new Problem("piece " + piece.label(), "is listed twice", "give each piece its own label"));
            }
            if (piece.mass().grams() <= 0) {
                problems.add(new Problem(
                        "piece " + piece.label(),
                        "mass is %s g".formatted(piece.mass().grams()),
                        "weigh it again"));
            }
            if (piece.reach().minus(deepest()).mm() < 0) {
                problems.add(new Problem(
                        "piece " + piece.label(),
                        "balance point lies %s mm beyond the axle"
                                .formatted(deepest().minus(piece.reach()).mm()),
                        "check the hub radius and the balance"));
            }
        }
        return problems;
    }

    private Length deepest() {
        return seatDepths.stream().max(Length::compareTo).orElse(Length.ZERO);
    }
}
