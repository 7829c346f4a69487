package turnalike.cli.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.cli.kit.UserError;
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
import turnalike.pieces.Slip;
import turnalike.units.MassUnit;

/**
 * Figures from an instrument that types and presses Enter, a line for each piece in turn. Each is on disk before the next is read; a line
 * that cannot be read is told and changes nothing.
 */
final class LogKeyed {
    private final JobStore store;
    private final JobId id;
    private final PrintWriter console;
    private final boolean json;
    private final List<String> logged = new ArrayList<>();
    private final List<Slip> questions = new ArrayList<>();

    LogKeyed(JobStore store, JobId id, PrintWriter console, boolean json) {
        this.store = store;
        this.id = id;
        this.console = console;
        this.json = json;
    }

    void log(String columnName, String first) {
        Column column = Column.find(columnName)
                .orElseThrow(() -> UserError.of(
                        "--keyed",
                        "names no measure, was '%s'".formatted(columnName),
                        "use mass_g, mass_oz, length, balance, d1, d2, … or m1, m2, …"));
        KeptJob kept = store.find(id).orElseThrow(() -> Stores.unknown(id));
        MassUnit unit = MassUnit.ofColumn(columnName);
        KeyedFigure keyed = new KeyedFigure(kept.text().job().units(), unit);
        Optional<Step> last = Optional.empty();
        int next = number(first);
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (Optional<String> line = read(lines); line.isPresent(); line = read(lines)) {
                String text = line.get().strip();
                if (text.isEmpty()) {
                    next++;
                } else if (text.startsWith("=")) {
                    next = jump(text, next);
                } else if (text.equalsIgnoreCase("undo")) {
                    next = last.isPresent() && undo() ? next - 1 : next;
                    last = Optional.empty();
                } else {
                    Optional<Step> step = keep(keyed, column, next, text);
                    last = step.isPresent() ? step : last;
                    next += step.isPresent() ? 1 : 0;
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        end(last);
    }

    private static Optional<String> read(BufferedReader lines) throws IOException {
        return Optional.ofNullable(lines.readLine());
    }

    private static int number(String text) {
        if (!text.strip().matches("\\d{1,6}")) {
            throw UserError.of("--piece", "is no number, was '%s'".formatted(text), "begin --keyed at a number");
        }
        return Integer.parseInt(text.strip());
    }

    private int jump(String text, int now) {
        String digits = text.substring(1).strip();
        if (digits.matches("\\d{1,6}")) {
            return Integer.parseInt(digits);
        }
        say("not a number: %s; still at piece %d".formatted(text, now));
        return now;
    }

    private boolean undo() {
        Optional<Step> undone = store.undo(id);
        undone.ifPresent(step -> say("taken back: " + step.what()));
        if (undone.isPresent()) {
            logged.remove(logged.size() - 1);
        }
        return undone.isPresent();
    }

    private Optional<Step> keep(KeyedFigure keyed, Column column, int number, String text) {
        String piece = String.valueOf(number);
        Optional<Measures> taken = keyed.enter(Measures.NONE, column, text).fold(Optional::of, (what, mend) -> {
            say("not kept, still at piece %s: %s; %s".formatted(piece, what, mend));
            return Optional.empty();
        });
        Optional<StepAnd<List<Slip>>> done = taken.flatMap(measures -> store.editAnd(id, kept -> {
            KeptPiece now = kept.piece(piece).with(measures);
            Edit edit = Edit.of("log piece " + piece, Change.of(now));
            return new EditAnd<>(edit, PieceEntry.ask(kept, now.piece()));
        }));
        done.ifPresent(each -> {
            logged.add(piece);
            questions.addAll(each.found());
            double figure = taken.orElseThrow().figure(column).orElseThrow();
            say("kept piece %s: %s".formatted(piece, keyed.say(column, figure)));
            each.found().forEach(slip -> say("  ? %s (undo takes it back)".formatted(slip.question())));
        });
        return done.map(StepAnd::step);
    }

    private void say(String line) {
        if (!json) {
            console.println(line);
            console.flush();
        }
    }

    private void end(Optional<Step> last) {
        if (json && last.isPresent()) {
            console.print(KeptSummary.logged(id, last.get(), logged, questions, store.notes()));
        } else if (json) {
            throw UserError.of("standard input", "held no figure that could be kept", "give a figure a line");
        } else {
            Stores.note(console, store.notes());
        }
        console.flush();
    }
}
