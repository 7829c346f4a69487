package turnalike.cli.store;

import java.io.BufferedWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.UserError;
import turnalike.job.Job;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.workbook.WorkbookFile;

@Command(
        name = "give",
        description = {
            "Prints a whole kept job with its pieces and its history as one JSON object, to carry away; 'keep' takes it back unchanged.",
            "Of a damaged store it gives what can still be read."
        },
        footer = {"", "Example: turnalike give 7k3m-2x9q-ht4d --store shop.db > wheel.kept.json"},
        mixinStandardHelpOptions = true)
public final class GiveCommand implements Runnable {
    private static final int CHUNK = 1 << 16;

    @Mixin
    private KeptJobOptions from = new KeptJobOptions();

    @Option(
            names = "--pieces",
            description = "Print only the pieces, as the CSV file that match, control and mend take.")
    private boolean pieces;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "With --pieces: write them into this file, a workbook if its name ends in .xlsx, else CSV.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--job-file", description = "Print only the job file, as it stands.")
    private boolean jobText;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Taken so that a script may give it to every command. */
    @Option(names = "--json", description = "Changes nothing: it is JSON in any case.")
    void json(boolean asked) {}

    @Override
    public void run() {
        if (pieces && jobText) {
            throw UserError.of("--pieces, --job-file", "are two files", "ask for one at a time");
        }
        if (out.isPresent() && !pieces) {
            throw UserError.of("--out", "is for --pieces", "add --pieces, or send what is printed into a file with >");
        }
        JobId id = from.id();
        Stores.with(() -> from.place().openToRead(), store -> {
            PrintWriter console = spec.commandLine().getOut();
            if (out.isPresent()) {
                written(store.find(id).orElseThrow(() -> Stores.unknown(id)), out.get());
            } else if (pieces || jobText) {
                console.print(part(store.find(id).orElseThrow(() -> Stores.unknown(id))));
            } else if (!store.give(id, new BufferedWriter(console, CHUNK))) {
                throw Stores.unknown(id);
            }
            console.flush();
            if (!store.notes().isEmpty()) {
                throw new UserError(store.notes());
            }
            return id;
        });
    }

    private static void written(KeptJob kept, Path file) {
        String name = String.valueOf(file.getFileName());
        boolean workbook = name.toLowerCase(Locale.ROOT).endsWith(".xlsx");
        Path folder = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
        byte[] bytes = workbook
                ? WorkbookFile.of("Pieces", tableToRead(kept), PiecesFile::isFigure)
                : table(kept).getBytes(StandardCharsets.UTF_8);
        new OutputFolder(folder).write(name, bytes);
    }

    private String part(KeptJob kept) {
        return jobText ? kept.text().text() : table(kept);
    }

    private static String table(KeptJob kept) {
        return PiecesFile.format(pieces(kept), kept.text().job().units());
    }

    /** A workbook is for people, who read masses as the job's scale shows them; programs find grams in CSV. */
    private static String tableToRead(KeptJob kept) {
        Job job = kept.text().job();
        return PiecesFile.format(pieces(kept), job.units(), job.tolerances().weighing());
    }

    private static List<Piece> pieces(KeptJob kept) {
        return kept.pieces().stream().map(KeptPiece::piece).toList();
    }
}
