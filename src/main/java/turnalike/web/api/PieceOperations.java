package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.DELETE;
import static turnalike.web.api.Operation.Verb.POST;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.edit.PieceEntry;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.EditAnd;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepAnd;
import turnalike.job.kept.Subject;
import turnalike.job.kept.TakenOut;
import turnalike.pieces.Slip;
import turnalike.units.Article;
import turnalike.units.Problem;
import turnalike.web.api.Operation.Reply;
import turnalike.web.kit.Refusal;

/** Finished pieces read, logged and taken out. */
final class PieceOperations {
    private static final String PIECES = "/jobs/{job}/pieces";
    private static final int MOST = 2_000;
    private static final double MS_PER_MINUTE = 60_000;

    private PieceOperations() {}

    static List<Operation> list() {
        List<Map<String, Object>> example = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            example.add(Map.of(
                    "piece", String.valueOf(i), "figures", Map.of("mass_g", "%d.%d".formatted(140 + i / 10, i % 10))));
        }
        return List.of(
                Operation.of(
                                POST,
                                PIECES,
                                "logPieces",
                                "Logs pieces or corrects them, all at one stroke, as `log --from --json`: figures by column, in grams and the"
                                        + " job's units unless they carry their own. What reads like a slip is kept and asked about.",
                                Reply.json("What is kept, and questions.", "job", "step", "pieces", "questions"),
                                PieceOperations::log)
                        .sending(schema(), Map.of("pieces", example)),
                Operation.get(
                        PIECES,
                        "readPieces",
                        "Reads the logged pieces: masses in g, lengths in mm.",
                        Reply.json("The pieces in the order they were first logged.", "job", "version", "pieces"),
                        call -> Answer.json(KeptSummary.pieces(call.job()))),
                Operation.of(
                                DELETE,
                                PIECES + "/{piece}",
                                "takeOutPiece",
                                "Takes a piece out of the log: a slip of the hand, or one that was spoiled and counts as a loss.",
                                Reply.json("The step.", "job", "version", "what"),
                                PieceOperations::takeOut)
                        .inPath("piece", "its label", "8")
                        .choosing("spoiled", "whether it was spoiled; `no` if left out", "no", "yes"));
    }

    private static Map<String, ?> schema() {
        Map<String, Object> figure = Map.of("type", "string", "description", "a text; a number is taken too");
        Map<String, Object> piece = Map.of(
                "type",
                "object",
                "required",
                List.of("piece"),
                "properties",
                Map.of(
                        "piece",
                        Map.of("type", "string"),
                        "figures",
                        Map.of("type", "object", "additionalProperties", figure),
                        "minutes",
                        Map.of("type", "number", "exclusiveMinimum", 0)));
        Map<String, Object> pieces = Map.of("type", "array", "minItems", 1, "maxItems", MOST, "items", piece);
        return Map.of("type", "object", "required", List.of("pieces"), "properties", Map.of("pieces", pieces));
    }

    private static Answer log(Call call) {
        if (!(call.object().get("pieces") instanceof List<?> rows) || rows.isEmpty() || rows.size() > MOST) {
            throw Refusal.of(
                    400, "pieces", "is no list of 1 to %d".formatted(MOST), "send a list, as the description shows");
        }
        StepAnd<Entered> done = call.store()
                .editAnd(call.id(), kept -> edit(call, kept, rows))
                .orElseThrow(() -> Call.unknown(call.id()));
        return Answer.json(KeptSummary.logged(
                call.id(),
                done.step(),
                done.found().labels(),
                done.found().questions(),
                call.store().notes()));
    }

    private record Entered(List<String> labels, List<Slip> questions) {}

    private static EditAnd<Entered> edit(Call call, KeptJob kept, List<?> rows) {
        List<Problem> problems = new ArrayList<>();
        Map<String, KeptPiece> pieces = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String where = "piece %d".formatted(i + 1);
            if (!(rows.get(i) instanceof Map<?, ?> row)) {
                problems.add(new Problem(where, "is no object", "write it in braces, as the description shows"));
                continue;
            }
            Map<String, Object> fields = new LinkedHashMap<>();
            row.forEach((name, value) -> fields.put(String.valueOf(name), value));
            PieceEntry.Read read = PieceEntry.read(
                    kept, String.valueOf(fields.getOrDefault("piece", "")), call.texts(fields, "figures"));
            read.problems()
                    .forEach(each -> problems.add(new Problem(where + ": " + each.where(), each.what(), each.mend())));
            Optional<Duration> turning = minutes(where, fields, problems);
            read.piece().ifPresent(piece -> {
                if (pieces.containsKey(piece.label())) {
                    problems.add(new Problem(where, "is there twice", "give each piece once"));
                }
                pieces.put(piece.label(), turning.map(piece::with).orElse(piece));
            });
        }
        Call.refuse(problems);
        List<String> labels = List.copyOf(pieces.keySet());
        List<Slip> questions = pieces.values().stream()
                .flatMap(piece -> PieceEntry.ask(kept, piece.piece()).stream())
                .toList();
        Edit edit = new Edit(
                pieces.size() == 1 ? "log piece " + labels.get(0) : "log " + Article.count(pieces.size(), "piece"),
                pieces.values().stream().map(Change::of).toList());
        return new EditAnd<>(edit, new Entered(labels, questions));
    }

    private static Optional<Duration> minutes(String where, Map<String, Object> fields, List<Problem> problems) {
        String typed = String.valueOf(fields.getOrDefault("minutes", ""));
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        double minutes = typed.matches("\\d{1,5}(\\.\\d{1,9})?") ? Double.parseDouble(typed) : 0;
        if (!(minutes >= 0.01 && minutes <= 10_000)) {
            problems.add(new Problem(where + ": minutes", "was " + typed, "give a number from 0.01 to 10000"));
            return Optional.empty();
        }
        return Optional.of(Duration.ofMillis(Math.round(minutes * MS_PER_MINUTE)));
    }

    private static Answer takeOut(Call call) {
        String label = call.ctx().pathParam("piece");
        String words = call.query("spoiled").filter("yes"::equals).isPresent() ? TakenOut.SPOILED : TakenOut.WORDS;
        Step step = call.store()
                .edit(call.id(), kept -> {
                    if (kept.find(label).isEmpty()) {
                        throw Refusal.of(
                                404, "piece", "no piece is labelled '%s'".formatted(label), "use a logged label");
                    }
                    return Edit.of(words + label, Change.without(new Subject(Subject.Kind.PIECE, label)));
                })
                .orElseThrow(() -> Call.unknown(call.id()));
        return Answer.json(Map.of("job", call.id().text(), "version", step.number(), "what", step.what()));
    }
}
