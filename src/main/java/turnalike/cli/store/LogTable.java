package turnalike.cli.store;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.UserError;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.EditAnd;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.StepAnd;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.units.Article;

/** A whole table of pieces logged at one stroke: all of it or, with anything wrong in it, none. One undo takes it back. */
record LogTable(JobStore store, JobId id, PrintWriter console, boolean json) {
    private static final String STANDARD_INPUT = "-";
    private static final int MOST_BYTES = 16 << 20;

    private record Entered(List<Piece> pieces, List<Slip> questions) {}

    void log(String from) {
        Path file = Path.of(from.equals(STANDARD_INPUT) ? "standard input" : from);
        String text = from.equals(STANDARD_INPUT) ? pasted() : InputFiles.table(file);
        StepAnd<Entered> done = store.editAnd(id, kept -> {
                    // Some columns may be logged today and the weights tomorrow.
                    PiecesFile.Read read =
                            PiecesFile.parseWithoutMass(text, kept.text().job().units());
                    if (!read.problems().isEmpty()) {
                        throw InputFiles.in(file, read.problems());
                    }
                    List<Slip> questions = ColumnTargets.questions(kept.text().job(), read);
                    return new EditAnd<>(edit(kept, read.pieces(), file), new Entered(read.pieces(), questions));
                })
                .orElseThrow(() -> Stores.unknown(id));
        List<String> labels = InputFiles.labels(done.found().pieces());
        List<Slip> questions = done.found().questions();
        if (json) {
            console.print(KeptSummary.logged(id, done.step(), labels, questions, store.notes()));
        } else {
            console.println("Kept: %s of job %s.".formatted(Article.count(labels.size(), "piece"), id));
            console.print(QuestionsText.text(questions));
            Stores.note(console, store.notes());
        }
        console.flush();
    }

    private static Edit edit(KeptJob kept, List<Piece> pieces, Path file) {
        if (pieces.isEmpty()) {
            throw UserError.of(String.valueOf(file.getFileName()), "holds no pieces", "give a line for each piece");
        }
        List<Change> changes = kept.with(pieces).stream().map(Change::of).toList();
        return new Edit("log %s from a table".formatted(Article.count(pieces.size(), "piece")), changes);
    }

    private static String pasted() {
        try {
            byte[] bytes = System.in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw UserError.of("standard input", "is larger than 16 MiB", "check that it is the table you mean");
            }
            return InputFiles.table(bytes, Path.of("standard input"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
