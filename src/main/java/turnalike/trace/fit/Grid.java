package turnalike.trace.fit;

import turnalike.units.Length;

/**
 * What places and sizes are rounded to. Places are rounded, not lengths, so that the members still add up to the piece.
 *
 * @param stepMm above zero
 */
record Grid(double stepMm) {
    double place(double mm) {
        return size(mm);
    }

    /** A size rounded to the grid; written so that a hundredth of a millimetre prints as one. */
    double size(double mm) {
        double steps = Math.rint(mm / stepMm);
        return Math.rint(steps * stepMm * 1e9) / 1e9;
    }

    /** From one place to the next, both rounded; a step at least. */
    Length length(double fromMm, double toMm) {
        return Length.ofMm(Math.max(stepMm, Math.rint((place(toMm) - place(fromMm)) * 1e9) / 1e9));
    }
}
