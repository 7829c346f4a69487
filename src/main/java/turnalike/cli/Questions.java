package turnalike.cli;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.Job;
import turnalike.job.Wanted;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.MassUnit;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;

/** Figures that read like a slip of the pen: asked about, never changed. */
final class Questions {
    private static final int MOST_ON_A_SCREEN = 8;

    private Questions() {}

    static List<Slip> of(Job job, PiecesFile.Read read) {
        List<Slip> out = new ArrayList<>(read.slips());
        out.addAll(Wanted.slips(job, read.massUnit()).askAll(read.pieces()));
        return out;
    }

    /** The questions about one piece just entered beside the other pieces of its job. */
    static List<Slip> of(KeptJob kept, Piece entered) {
        List<Piece> before = kept.pieces().stream()
                .map(KeptPiece::piece)
                .filter(each -> !each.label().equals(entered.label()))
                .toList();
        return Wanted.slips(kept.text().job(), MassUnit.GRAM).ask(entered, before);
    }

    /** The questions for a person; empty when there is nothing to ask. */
    static String text(List<Slip> slips) {
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
