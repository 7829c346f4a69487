package turnalike.store;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import turnalike.job.kept.Change;
import turnalike.job.kept.FromPhoto;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.Column;
import turnalike.units.Length;

/** The weights, measures and times that stand, one a row, each with the step since which it is so. */
final class MeasureTable {
    private final Database db;

    MeasureTable(Database db) {
        this.db = db;
    }

    /** One figure: grams, millimetres or seconds, as its name says. */
    private record Figure(String name, double value, Optional<FromPhoto> photo) {
        static Map<String, Figure> of(KeptPiece kept) {
            Map<String, Figure> out = new HashMap<>();
            kept.piece().measures().figures().forEach((column, value) -> {
                String name = name(column);
                out.put(
                        name,
                        new Figure(
                                name,
                                value,
                                Optional.ofNullable(kept.fromPhoto().get(column))));
            });
            kept.turning()
                    .ifPresent(time ->
                            out.put("turning_s", new Figure("turning_s", time.toMillis() / 1000.0, Optional.empty())));
            return out;
        }

        private static String name(Column column) {
            return column.isMass() ? column.format() : column.format() + "_mm";
        }
    }

    /** Brings the rows of one piece up to what it is after that step; a figure that stays the same keeps its step. */
    void stand(JobId id, int step, Change.OfPiece change) {
        Map<String, Figure> now = change.piece().map(Figure::of).orElse(Map.of());
        Map<String, Figure> before =
                kept("job = ? AND piece = ?", id.text(), change.label()).getOrDefault(change.label(), Map.of());
        Set<String> gone = new HashSet<>(before.keySet());
        gone.removeAll(now.keySet());
        gone.forEach(name ->
                db.run("DELETE FROM figure WHERE job = ? AND piece = ? AND name = ?", id.text(), change.label(), name));
        now.forEach((name, figure) -> {
            if (!figure.equals(before.get(name))) {
                put(id, change.label(), step, figure);
            }
        });
    }

    private void put(JobId id, String piece, int step, Figure figure) {
        db.run(
                "INSERT INTO figure (job, piece, name, value, source, photo, accuracy_mm, step)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (job, piece, name) DO UPDATE SET value = excluded.value,"
                        + " source = excluded.source, photo = excluded.photo, accuracy_mm = excluded.accuracy_mm, step = excluded.step",
                id.text(),
                piece,
                figure.name(),
                figure.value(),
                figure.photo().isPresent() ? "photo" : "hand",
                figure.photo().map(FromPhoto::photo).orElse(null),
                figure.photo().flatMap(FromPhoto::accuracy).map(Length::mm).orElse(null),
                step);
    }

    /** Whether the rows of the job say what its pieces say. */
    boolean agree(JobId id, List<KeptPiece> pieces) {
        Map<String, Map<String, Figure>> wanted = new HashMap<>();
        pieces.forEach(piece -> {
            Map<String, Figure> figures = Figure.of(piece);
            if (!figures.isEmpty()) {
                wanted.put(piece.label(), figures);
            }
        });
        return wanted.equals(kept("job = ?", id.text()));
    }

    /** By piece and name; one piece is asked for by itself, since a table has thousands. */
    private Map<String, Map<String, Figure>> kept(String which, Object... values) {
        Map<String, Map<String, Figure>> out = new HashMap<>();
        db.list(
                "SELECT piece, name, value, photo, accuracy_mm FROM figure WHERE " + which,
                row -> {
                    double accuracy = row.getDouble(5);
                    Optional<Length> known = row.wasNull() ? Optional.empty() : Optional.of(Length.ofMm(accuracy));
                    Optional<FromPhoto> photo =
                            Optional.ofNullable(row.getString(4)).map(name -> new FromPhoto(name, known));
                    Figure figure = new Figure(row.getString(2), row.getDouble(3), photo);
                    return out.computeIfAbsent(row.getString(1), label -> new HashMap<>())
                            .put(figure.name(), figure);
                },
                values);
        return out;
    }
}
