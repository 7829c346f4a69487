package turnalike.settings;

import turnalike.units.Length;

/**
 * A diameter that is sized with calipers.
 *
 * @param member index of the member it belongs to
 * @param finished its finished size; positive
 */
public record SizedDiameter(int member, Length finished) {
    public SizedDiameter {
        if (!finished.isPositive()) {
            throw new IllegalArgumentException(
                    "finished diameter of member %d must be positive, was %s mm".formatted(member, finished.mm()));
        }
    }
}
