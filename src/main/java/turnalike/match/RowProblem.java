package turnalike.match;

import java.util.List;
import turnalike.units.Mass;
import turnalike.units.Problem;

/**
 * What is to be put in a row.
 *
 * @param masses of all pieces there are to choose from, positive
 * @param unlikeness of any two of them
 * @param places how many stand in the row, at least 1
 * @param tolerancePct a set passes when (heaviest − lightest) / mean is at most this many hundredths
 */
public record RowProblem(List<Mass> masses, Unlikeness unlikeness, int places, double tolerancePct) {
    /** The differences of that many are gone through in some seconds, which grow with the square; see {@link Differences} for the room they take. */
    static final int MOST_PIECES = 10_000;

    static final int MOST_PLACES = 400;

    public RowProblem {
        masses = List.copyOf(masses);
        if (places < 1) {
            throw new IllegalArgumentException("a row needs at least 1 place, was %d".formatted(places));
        }
        if (!(tolerancePct >= 0)) {
            throw new IllegalArgumentException("tolerance must not be negative, was %s %%".formatted(tolerancePct));
        }
    }

    /**
     * {@return what keeps it from being filled: a row longer than 400, more than 10,000 pieces, or fewer than places; empty when nothing
     * does}
     */
    public List<Problem> problems() {
        if (places > MOST_PLACES) {
            return List.of(new Problem(
                    "places",
                    "a row of %d is longer than %d".formatted(places, MOST_PLACES),
                    "fill it in stretches of %d or fewer".formatted(MOST_PLACES)));
        }
        if (masses.size() > MOST_PIECES) {
            return List.of(new Problem(
                    "pieces",
                    "%d pieces are more than the %d a row is chosen from".formatted(masses.size(), MOST_PIECES),
                    "take %d out, those farthest from the others in mass first"
                            .formatted(masses.size() - MOST_PIECES)));
        }
        if (masses.size() >= places) {
            return List.of();
        }
        return List.of(new Problem(
                "pieces",
                (masses.size() == 1 ? "a single piece for %2$d places" : "%d pieces for %d places")
                        .formatted(masses.size(), places),
                "log %d more or make the row shorter".formatted(places - masses.size())));
    }
}
