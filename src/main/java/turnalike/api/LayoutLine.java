package turnalike.api;

import turnalike.units.Length;

/**
 * A mark to be struck on the piece.
 *
 * @param place from the start end
 * @param label what stands there, for people: {@code 2 cove | 3 bead}
 */
public record LayoutLine(Length place, String label) {}
