package turnalike.job.nudge;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import turnalike.job.edit.NudgeEdit.Shift;

/**
 * Moves of boundaries that belong together.
 *
 * @param shifts the moves
 * @param cost to the eye, as long as nothing else moves with them: the sum of each alone
 * @param offMm how far each mark of the piece moves with them, in order; near enough for any curve that is stretched with them
 */
record MovedLines(List<Shift> shifts, double cost, List<Double> offMm) {
    MovedLines {
        shifts = List.copyOf(shifts);
        offMm = List.copyOf(offMm);
    }

    MovedLines and(MovedLines other) {
        return new MovedLines(
                Stream.concat(shifts.stream(), other.shifts.stream()).toList(),
                cost + other.cost,
                IntStream.range(0, offMm.size())
                        .mapToObj(i -> offMm.get(i) + other.offMm.get(i))
                        .toList());
    }

    /** Whether one of them moves that boundary already. */
    boolean moves(int number) {
        return shifts.stream().anyMatch(each -> each.number() == number);
    }
}
