package turnalike.job.nudge;

import java.util.List;
import turnalike.job.Job;
import turnalike.job.edit.NudgeEdit;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.job.nudge.Nudge.Saving;
import turnalike.pattern.PlacedMember;

/** A nudge in a sentence: {@code let mark 9 stand 1/64 in further on and 5 divider openings do instead of 6}. */
final class NudgeWords {
    private NudgeWords() {}

    static String of(Job job, NudgeEdit edit, Saving saves, int before, int after) {
        List<String> moves =
                edit.shifts().stream().map(shift -> move(job, shift)).toList();
        return "let %s, and %s %s instead of %d"
                .formatted(String.join("; ", moves), saves.count(after), after == 1 ? "does" : "do", before);
    }

    private static String move(Job job, Shift shift) {
        PlacedMember placed = job.pattern().placed().get(shift.number() - 1);
        String by = shift.by().abs().formatFine(job.units());
        boolean more = shift.by().mm() > 0;
        return shift.isBoundary()
                ? "mark %d (%s) stand %s %s"
                        .formatted(
                                mark(job, placed), label(job, placed), by, more ? "further on" : "nearer the start end")
                : "%s be %s %s%s".formatted(placed.where(), by, more ? "thicker" : "thinner", at(shift.key()));
    }

    /** The only diameter of a member needs no name. */
    private static String at(String key) {
        return switch (key) {
            case "diameter" -> "";
            case "from" -> " at its head end";
            case "to" -> " at its tail end";
            default -> " at its " + key;
        };
    }

    private static int mark(Job job, PlacedMember placed) {
        return job.pattern().markAt(placed.end()).orElseThrow();
    }

    private static String label(Job job, PlacedMember placed) {
        return job.pattern().marks().get(mark(job, placed)).label();
    }
}
