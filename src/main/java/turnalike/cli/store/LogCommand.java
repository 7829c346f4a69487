package turnalike.cli.store;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.job.Job;
import turnalike.job.edit.PieceEntry;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.EditAnd;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepAnd;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.Slip;

@Command(
        name = "log",
        description = {
            "Logs a piece of a kept job: its weight, its measures, or that it is there. It answers once that is on disk for good.",
            "A figure given again takes the place of the one before, which stays in the history."
        },
        footer = {
            "",
            "Example: turnalike log 7k3m-2x9q-ht4d --store shop.db --piece 7 --mass \"8.6 oz\" --measure \"d1=1 1/2\""
        },
        mixinStandardHelpOptions = true)
public final class LogCommand implements Runnable {
    @Mixin
    private KeptJobOptions into = new KeptJobOptions();

    @Option(
            names = "--piece",
            paramLabel = "LABEL",
            description = "What is written on the piece; with --keyed, the number of the first piece (1 if left out).")
    private Optional<String> label = Optional.empty();

    @Option(
            names = "--mass",
            paramLabel = "MASS",
            description = "Its weight, in grams (in ounces where the job's scale shows them) or like \"8.6 oz\".")
    private Optional<String> mass = Optional.empty();

    @Option(
            names = "--measure",
            paramLabel = "NAME=VALUE",
            description = {
                "A length in the job's units or with its own: length, balance (from the start end), d1, d2, … at the check places,"
                        + " m1, m2, … where the marks stand; or what the job's likeness judges by eye: colour=2, grain=wavy. May be given several"
                        + " times."
            })
    private List<String> measures = List.of();

    @Option(names = "--minutes", paramLabel = "N", description = "How long it took at the lathe.")
    private Optional<Double> minutes = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "TABLE",
            description =
                    "Log a whole table at one stroke: a CSV file, a workbook (.xlsx) or cells copied off a spreadsheet; - for"
                            + " what is pasted or piped in.")
    private Optional<String> table = Optional.empty();

    @Option(
            names = "--keyed",
            paramLabel = "COLUMN",
            description = {
                "Take a figure a line from a scale or caliper that types and presses Enter, for one piece after the other: mass_g, mass_oz,"
                        + " length, d1, …",
                "An empty line passes a piece over, =12 goes to piece 12, undo takes the last line back; end with Ctrl-D."
            })
    private Optional<String> keyed = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        JobId id = into.id();
        if (table.isPresent() || keyed.isPresent()) {
            requireAlone();
            PrintWriter console = spec.commandLine().getOut();
            Stores.with(() -> into.place().open(Today.clock()), store -> {
                table.ifPresent(from -> new LogTable(store, id, console, json).log(from));
                keyed.ifPresent(column -> new LogKeyed(store, id, console, json).log(column, label.orElse("1")));
                return id;
            });
            return;
        }
        String piece = label(label.orElseThrow(() -> UserError.of(
                "--piece", "is missing", "name the piece, or give a table with --from or a column with --keyed")));
        Optional<Duration> turning = minutes.map(LogCommand::time);
        Stores.with(() -> into.place().open(Today.clock()), store -> {
            StepAnd<List<Slip>> done =
                    store.editAnd(id, kept -> edit(kept, piece, turning)).orElseThrow(() -> Stores.unknown(id));
            print(store, id, done.step(), done.found());
            return id;
        });
    }

    private void requireAlone() {
        boolean alone =
                mass.isEmpty() && measures.isEmpty() && minutes.isEmpty() && (table.isEmpty() || label.isEmpty());
        if (!alone || (table.isPresent() && keyed.isPresent())) {
            throw UserError.of(
                    "--from, --keyed",
                    "stand by themselves",
                    "give one of --from, --keyed, or --piece with its figures");
        }
    }

    /** With what is to be asked about. */
    private EditAnd<List<Slip>> edit(KeptJob kept, String piece, Optional<Duration> turning) {
        KeptPiece now = kept.piece(piece).with(taken(kept.text().job(), piece));
        Edit edit =
                Edit.of("log piece " + piece, Change.of(turning.map(now::with).orElse(now)));
        return new EditAnd<>(edit, PieceEntry.ask(kept, now.piece()));
    }

    /** What was measured of the piece and what was judged by eye. */
    private Piece taken(Job job, String piece) {
        KeyedFigure keyed = new KeyedFigure(job.units(), job.tolerances().masses());
        Set<String> judged = job.likeness().noted().keySet();
        Measures taken = mass.map(text -> enter(keyed, Measures.NONE, Column.MASS, text, "--mass"))
                .orElse(Measures.NONE);
        Map<String, String> noted = new LinkedHashMap<>();
        for (String each : measures) {
            int sign = each.indexOf('=');
            String name = (sign < 0 ? each : each.substring(0, sign)).strip();
            String where = "--measure " + name;
            Optional<Column> column = Column.find(name).filter(found -> !found.isMass());
            if (sign < 0 || (column.isEmpty() && !judged.contains(name))) {
                throw UserError.of(where, "names no measure", "write it like " + examples(judged));
            }
            boolean twice = column.isPresent() ? taken.figure(column.get()).isPresent() : noted.containsKey(name);
            if (twice) {
                throw UserError.of(where, "is given twice", "give each measure once");
            }
            String text = each.substring(sign + 1);
            if (column.isPresent()) {
                taken = enter(keyed, taken, column.get(), text, where);
            } else {
                noted.put(name, note(text, where));
            }
        }
        return new Piece(piece, taken, noted);
    }

    private static String examples(Set<String> judged) {
        String measured = "length=22, balance=11 1/4, d1=1 1/2 or m2=50 mm";
        return judged.isEmpty()
                ? measured + "; what is judged by eye has a weight of its own under likeness.noted in the job first"
                : measured + ", or judged by eye: "
                        + judged.stream().map(name -> name + "=2").collect(Collectors.joining(", "));
    }

    private static String note(String text, String where) {
        if (text.isBlank()) {
            throw UserError.of(where, "is empty", "give a grade or a word, or leave it out");
        }
        return Piece.note(text).fold(note -> note, (what, mend) -> {
            throw UserError.of(where, what, mend);
        });
    }

    private static Measures enter(KeyedFigure keyed, Measures before, Column column, String text, String where) {
        if (text.isBlank()) {
            throw UserError.of(where, "is empty", "give a figure, or leave it out");
        }
        return keyed.enter(before, column, text).fold(after -> after, (what, mend) -> {
            throw UserError.of(where, what, mend);
        });
    }

    private static String label(String text) {
        return Piece.label(text).fold(label -> label, (what, mend) -> {
            throw UserError.of("--piece", what, mend);
        });
    }

    private static Duration time(double minutes) {
        if (!(minutes >= 0.01 && minutes <= 10_000)) {
            throw UserError.of("--minutes", "was %s".formatted(minutes), "give a number from 0.01 to 10000");
        }
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }

    private void print(JobStore store, JobId id, Step step, List<Slip> questions) {
        PrintWriter console = spec.commandLine().getOut();
        for (Change change : step.changes()) {
            if (change instanceof Change.OfPiece logged && logged.piece().isPresent()) {
                if (json) {
                    console.print(KeptSummary.logged(id, step, logged.piece().get(), questions, store.notes()));
                } else {
                    console.println("Kept: piece %s of job %s.".formatted(logged.label(), id));
                    console.print(QuestionsText.text(questions));
                    Stores.note(console, store.notes());
                }
            }
        }
        console.flush();
    }
}
