package turnalike.cli.kit;

import java.util.List;
import turnalike.pieces.Slip;

/** Figures that read like a slip of the pen: asked about, never changed. */
public final class QuestionsText {
    private static final int MOST_ON_A_SCREEN = 8;

    private QuestionsText() {}

    /** The questions for a person; empty when there is nothing to ask. */
    public static String text(List<Slip> slips) {
        if (slips.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("Is this right? (the figures are used as they stand)\n");
        slips.stream().limit(MOST_ON_A_SCREEN).forEach(slip -> out.append("  ")
                .append(slip.where())
                .append(": ")
                .append(slip.question())
                .append('\n'));
        if (slips.size() > MOST_ON_A_SCREEN) {
            out.append("  and %d more: --json lists them\n".formatted(slips.size() - MOST_ON_A_SCREEN));
        }
        return out.toString();
    }
}
