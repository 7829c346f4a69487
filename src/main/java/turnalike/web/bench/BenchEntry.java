package turnalike.web.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.edit.PieceEntry;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.MassUnit;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.Slip;
import turnalike.units.Parsed;
import turnalike.units.Problem;

/**
 * One piece's figures as the bench sent them.
 *
 * @param serial the entry's own number, by which a second sending is known
 * @param label what is written on the piece
 * @param figures as typed, by the column's name
 * @param minutes at the lathe, as the page counted them
 */
record BenchEntry(String serial, String label, Map<String, String> figures, Optional<String> minutes) {
    private static final double LONGEST_MINUTES = 10_000;

    BenchEntry {
        figures = Map.copyOf(new LinkedHashMap<>(figures));
    }

    /** The columns a bench is asked for: the weight, the length and the job's check places. */
    static List<Column> columns(Job job) {
        List<Column> out = new ArrayList<>(List.of(Column.MASS, Column.LENGTH));
        for (int i = 0; i < job.checks().size(); i++) {
            out.add(Column.diameter(i + 1));
        }
        return out;
    }

    /** Whether a step of a job's history kept the entry with that number. */
    static boolean isOf(String what, String serial) {
        return what.endsWith(mark(serial));
    }

    /** How the words of a step that keeps it end. */
    String mark() {
        return mark(serial);
    }

    private static String mark(String serial) {
        return " (bench entry " + serial + ")";
    }

    /** What the entry does to the job, or everything wrong with it. */
    Read read(KeptJob kept) {
        List<Problem> problems = new ArrayList<>();
        Parsed<String> plain = Piece.label(label);
        if (plain instanceof Parsed.Refused<String> refused) {
            problems.add(new Problem("piece", refused.what(), refused.mend()));
        }
        KeyedFigure keyed = new KeyedFigure(kept.text().job().units(), MassUnit.GRAM);
        Measures taken = Measures.NONE;
        for (Column column : columns(kept.text().job())) {
            String typed = figures.getOrDefault(column.format(), "");
            Measures before = taken;
            taken = keyed.enter(before, column, typed).fold(after -> after, (what, mend) -> {
                problems.add(new Problem(ColumnTargets.name(kept.text().job(), column), what, mend));
                return before;
            });
        }
        if (problems.isEmpty() && taken.figures().isEmpty()) {
            problems.add(new Problem("piece " + label, "nothing is entered", "weigh or measure it"));
        }
        return problems.isEmpty() ? read(kept, plain.get(), taken) : new Read(Optional.empty(), problems);
    }

    private Read read(KeptJob kept, String plain, Measures taken) {
        KeptPiece now = kept.piece(plain).with(taken);
        KeptPiece timed = time().map(now::with).orElse(now);
        Edit edit = Edit.of("log piece " + timed.label() + mark(serial), Change.of(timed));
        return new Read(Optional.of(new Kept(edit, kept, timed.piece())), List.of());
    }

    /** A clock that cannot be right is passed over: the figures matter more. */
    private Optional<Duration> time() {
        return minutes.filter(text -> text.matches("\\d{1,5}(\\.\\d{1,6})?"))
                .map(Double::parseDouble)
                .filter(value -> value > 0 && value <= LONGEST_MINUTES)
                .map(value -> Duration.ofMillis(Math.round(value * 60_000)))
                .filter(time -> !time.isZero());
    }

    /**
     * What came of reading an entry.
     *
     * @param kept what to keep; empty when there are problems
     * @param problems everything wrong, in order
     */
    record Read(Optional<Kept> kept, List<Problem> problems) {
        Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * An entry that is kept.
     *
     * @param edit that keeps it
     * @param before the job without it
     * @param piece as it then is
     */
    record Kept(Edit edit, KeptJob before, Piece piece) {
        /** Figures that read like slips; compared with all pieces before it, so not asked for while others wait for their turn. */
        List<Slip> questions() {
            return PieceEntry.ask(before, piece);
        }
    }
}
