package turnalike.match;

import java.util.List;
import turnalike.frame.Row;
import turnalike.units.Mass;
import turnalike.units.Problem;

/**
 * What is to be put in a row.
 *
 * @param masses of all pieces there are to choose from, positive
 * @param unlikeness of any two of them
 * @param tolerancePct a set passes when (heaviest − lightest) / mean is at most this many hundredths
 */
public record RowProblem(List<Mass> masses, Unlikeness unlikeness, Row row, double tolerancePct) {
    /** The differences of that many pieces take 32 MB and well under a second; both grow with the square. */
    static final int MOST_PIECES = 2000;

    static final int MOST_PLACES = 400;

    public RowProblem {
        masses = List.copyOf(masses);
        if (!(tolerancePct >= 0)) {
            throw new IllegalArgumentException("tolerance must not be negative, was %s %%".formatted(tolerancePct));
        }
    }

    /** What keeps it from being filled; empty when nothing does. */
    public List<Problem> problems() {
        if (row.places() > MOST_PLACES) {
            return List.of(new Problem(
                    "places",
                    "a row of %d is longer than %d".formatted(row.places(), MOST_PLACES),
                    "fill it in stretches of %d or fewer".formatted(MOST_PLACES)));
        }
        if (masses.size() > MOST_PIECES) {
            return List.of(new Problem(
                    "pieces",
                    "%d pieces are more than the %d a row is chosen from".formatted(masses.size(), MOST_PIECES),
                    "take %d out, those farthest from the others in mass first"
                            .formatted(masses.size() - MOST_PIECES)));
        }
        if (masses.size() >= row.places()) {
            return List.of();
        }
        return List.of(new Problem(
                "pieces",
                "%d pieces for %d places".formatted(masses.size(), row.places()),
                "log %d more or make the row shorter".formatted(row.places() - masses.size())));
    }
}
