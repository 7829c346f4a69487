package turnalike.pieces.blanks;

import java.util.Optional;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.wood.Moisture;

/**
 * A blank as it was weighed at its milled size.
 *
 * @param label what is written on it
 * @param mass of the blank
 * @param length of the blank, where it is not the job's
 * @param size of the blank, side or diameter, where it is not the job's
 * @param moisture of the blank, where measured
 * @param finished what the finished piece weighs, once it is turned
 * @param lost whether it came to nothing, turned or not
 */
public record WeighedBlank(
        String label,
        Mass mass,
        Optional<Length> length,
        Optional<Length> size,
        Optional<Moisture> moisture,
        Optional<Mass> finished,
        boolean lost) {}
