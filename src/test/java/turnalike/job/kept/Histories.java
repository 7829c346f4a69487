package turnalike.job.kept;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;

/** Invented jobs and edits for tests; what a seed draws is always the same. */
public final class Histories {
    private Histories() {}

    /** A job's text; the note makes it another one, and it is spaced as no printer would space it. */
    public static JobText job(String title, double diameterMm) {
        String text = "{\"format\":  \"turnalike-job\", \"version\": 1,\n\t\"title\": \"%s\", \"units\": \"mm\",\r\n"
                        .formatted(title)
                + " \"pattern\": {\"name\": \"Leg — Übung\", \"stock\": {\"section\": \"round\", \"size\": 40.50, \"length\": 4E+2},\n"
                + "  \"members\": [{\"kind\": \"cylinder\", \"length\": 300, \"diameter\": %s}]},\n"
                        .formatted(diameterMm)
                + " \"wood\": {\"density_kg_m3\": 700}, \"count\": 4}\n\n";
        JobText.Read read = JobText.read(text);
        return read.text().orElseThrow(() -> new AssertionError(read.problems()));
    }

    /** A piece with everything a piece can have, or nearly nothing. */
    public static KeptPiece piece(String label, Random random) {
        Measures measures = Measures.NONE;
        if (random.nextInt(4) > 0) {
            measures = measures.with(Mass.ofGrams(figure(random)));
        }
        if (random.nextBoolean()) {
            measures = measures.with(Column.LENGTH, Length.ofMm(figure(random)));
        }
        if (random.nextBoolean()) {
            measures = measures.with(Column.diameter(1 + random.nextInt(3)), Length.ofMm(figure(random)));
        }
        Map<String, String> extra = random.nextInt(3) == 0 ? Map.of("note", "a \"knot\",\n and sap — ½") : Map.of();
        KeptPiece kept = KeptPiece.of(new Piece(label, measures, extra));
        if (random.nextInt(3) == 0) {
            Measures read = Measures.NONE.with(Column.mark(1 + random.nextInt(9)), Length.ofMm(figure(random)));
            Optional<Length> accuracy = random.nextBoolean() ? Optional.of(Length.ofMm(0.3)) : Optional.empty();
            kept = kept.with(read, new FromPhoto("bench 1.jpg", accuracy));
        }
        return random.nextInt(3) == 0 ? kept.with(Duration.ofMillis(1 + random.nextInt(10_000_000))) : kept;
    }

    /** Figures of every number of digits, from thousandths to ten thousands. */
    private static double figure(Random random) {
        double any = Math.exp(random.nextDouble() * 16 - 7);
        return random.nextBoolean() ? any : Math.max(0.1, Math.round(any * 10) / 10.0);
    }

    public static Edit edit(Random random, KeptJob now) {
        String label = String.valueOf(1 + random.nextInt(5));
        String other = label + "b";
        return switch (random.nextInt(6)) {
            case 0 -> Edit.of("another diameter", Change.of(job("Leg", 20 + random.nextInt(100) / 10.0)));
            case 1 ->
                now.find(label).isPresent()
                        ? Edit.of("take out piece " + label, Change.without(new Subject(Subject.Kind.PIECE, label)))
                        : Edit.of("log piece " + label, Change.of(piece(label, random)));
            case 2 -> Edit.of("log two pieces", Change.of(piece(label, random)), Change.of(piece(other, random)));
            case 3 ->
                Edit.of(
                        "photo",
                        Change.of(PhotoResult.of("a.jpg", "{\"outline\": [1.50, %d]}".formatted(random.nextInt(9)))));
            default -> Edit.of("log piece " + label, Change.of(piece(label, random)));
        };
    }

    /** A history of that many steps: edits, undos and redos as they come. */
    public static List<Step> draw(Random random, int steps) {
        Replay replay = new Replay();
        JobId id = JobId.parse("0000-0000-0000").get();
        Instant at = Instant.parse("2026-03-01T08:00:00Z");
        replay.edit(at, Edit.of("keep the job", Change.of(job("Leg", 22.5))));
        while (replay.history().size() < steps) {
            at = at.plusMillis(1 + random.nextInt(100_000));
            int what = random.nextInt(4);
            if (what == 0) {
                replay.undo(at);
            } else if (what == 1) {
                replay.redo(at);
            } else {
                replay.edit(at, edit(random, replay.kept(id)));
            }
        }
        return replay.history();
    }

    /** What a piece says, sorted so that two can be compared by eye when a test fails. */
    public static Map<String, KeptPiece> byLabel(KeptJob job) {
        Map<String, KeptPiece> out = new TreeMap<>();
        job.pieces().forEach(each -> out.put(each.label(), each));
        return out;
    }
}
