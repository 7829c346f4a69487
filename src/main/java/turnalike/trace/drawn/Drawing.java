package turnalike.trace.drawn;

import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/**
 * A drawing's lines.
 *
 * @param strokes in its own units
 * @param mmPerUnit how large its unit is
 * @param from where that came from, in words
 * @param isTold whether the drawing says so itself
 * @param axisY the place of the axis across, in its own units, when the drawing says where that is
 * @param notes what of it could not be read, each a sentence
 * @param problem why it could not be read, if so
 */
record Drawing(
        List<Stroke> strokes,
        double mmPerUnit,
        String from,
        boolean isTold,
        Optional<Double> axisY,
        List<String> notes,
        Optional<Problem> problem) {
    Drawing {
        strokes = List.copyOf(strokes);
        notes = List.copyOf(notes);
    }

    static Drawing none(String where, String what, String mend) {
        return new Drawing(
                List.of(), 1, "", false, Optional.empty(), List.of(), Optional.of(new Problem(where, what, mend)));
    }
}
