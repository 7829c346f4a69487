package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.DELETE;
import static turnalike.web.api.Operation.Verb.POST;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.edit.EntrySerial;
import turnalike.job.edit.PieceEntry;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.EditAnd;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepAnd;
import turnalike.job.kept.StepSummary;
import turnalike.job.kept.Subject;
import turnalike.job.kept.TakenOut;
import turnalike.language.Speech;
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
                                        + " job's units unless they carry their own. What reads like a slip is kept and asked about; with `ask`"
                                        + " it is not kept, and answered with 409 and the questions as problems. Sent again with the same `entry`, it is not logged again, and `kept_before` says so.",
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
                        .choosing("spoiled", "whether it was spoiled; `no` if left out", "no", "yes"),
                Operation.of(
                                DELETE,
                                "/jobs/{job}/entries/{entry}",
                                "takeBackEntry",
                                "Takes back what was logged with an `entry`, as long as nothing else was done to the job since.",
                                Reply.json("The step.", "job", "version", "what"),
                                PieceOperations::takeBack)
                        .inPath("entry", "the number it was logged with", "0123456789abcdef01234567"));
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
        Map<String, Object> entry = Map.of(
                "type",
                "string",
                "pattern",
                "^[0-9a-f]{16,32}$",
                "description",
                "a number that the sender drew for this entry alone, so that it may be sent again until an answer comes");
        Map<String, Object> ask = Map.of(
                "type",
                "boolean",
                "description",
                "whether nothing is kept while something reads like a slip; sent again without it, it is");
        return Map.of(
                "type",
                "object",
                "required",
                List.of("pieces"),
                "properties",
                Map.of("pieces", pieces, "entry", entry, "ask", ask));
    }

    private static Answer log(Call call) {
        Map<String, Object> sent = call.object();
        if (!(sent.get("pieces") instanceof List<?> rows) || rows.isEmpty() || rows.size() > MOST) {
            throw Refusal.of(
                    400, "pieces", "is no list of 1 to %d".formatted(MOST), "send a list, as the description shows");
        }
        Optional<EntrySerial> entry =
                Optional.ofNullable(sent.get("entry")).map(typed -> serial(String.valueOf(typed), 422));
        try {
            if ("true".equals(sent.get("ask"))) {
                refuseSlips(edit(call, call.job(), entry, rows).found());
            }
            StepAnd<Entered> done = call.store()
                    .editAnd(call.id(), kept -> edit(call, kept, entry, rows))
                    .orElseThrow(() -> Call.unknown(call.id()));
            return Answer.json(KeptSummary.logged(
                    call.id(),
                    done.step(),
                    done.found().labels(),
                    done.found().questions(),
                    call.store().notes()));
        } catch (KeptBefore sentAgain) {
            return Answer.json(KeptSummary.loggedBefore(
                    call.id(),
                    step(call, sentAgain.entry),
                    labels(rows),
                    call.store().notes()));
        }
    }

    /** Asked before the edit's turn: nobody else waits while all pieces are compared. */
    private static void refuseSlips(Entered entered) {
        List<Problem> questions = entered.questions().stream()
                .map(slip ->
                        new Problem(slip.where(), slip.question(), "send it again without `ask` to keep it as it is"))
                .toList();
        if (!questions.isEmpty()) {
            throw new Refusal(409, questions);
        }
    }

    /** An entry is in the history: its first sending arrived, only its answer did not. */
    private static final class KeptBefore extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient EntrySerial entry;

        KeptBefore(EntrySerial entry) {
            super("kept before" + entry.mark());
            this.entry = entry;
        }
    }

    private static EntrySerial serial(String typed, int otherwise) {
        return EntrySerial.find(typed)
                .orElseThrow(() -> Refusal.of(
                        otherwise,
                        "entry",
                        "is no number of an entry",
                        "give 16 to 32 hexadecimal digits, a to f in small letters"));
    }

    private static StepSummary step(Call call, EntrySerial entry) {
        return call.store().done(call.id()).stream()
                .filter(step -> entry.isOf(step.what()))
                .findFirst()
                .orElseThrow(() -> Call.unknown(call.id()));
    }

    private static List<String> labels(List<?> rows) {
        return rows.stream()
                .map(each -> each instanceof Map<?, ?> row ? Optional.ofNullable(row.get("piece")) : Optional.empty())
                .map(label -> label.map(String::valueOf).orElse("").strip())
                .toList();
    }

    /** The job before it, and the pieces as they then are. */
    private record Entered(KeptJob before, List<KeptPiece> pieces) {
        List<String> labels() {
            return pieces.stream().map(KeptPiece::label).toList();
        }

        /** What reads like a slip; compared with all pieces before it, so not asked for while others wait for their turn. */
        List<Slip> questions() {
            return pieces.stream()
                    .flatMap(piece -> PieceEntry.ask(before, piece.piece()).stream())
                    .map(slip -> new Slip(slip.where(), slip.kind(), Speech.of(slip.question()), slip.instead()))
                    .toList();
        }
    }

    // Looked for within the edit's turn: two sendings of one entry that cross must not both find it missing.
    private static EditAnd<Entered> edit(Call call, KeptJob kept, Optional<EntrySerial> entry, List<?> rows) {
        entry.filter(each -> call.store().hasStepEnding(kept.id(), each.mark())).ifPresent(each -> {
            throw new KeptBefore(each);
        });
        List<Problem> problems = new ArrayList<>();
        Map<String, KeptPiece> pieces = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String at = "piece %d".formatted(i + 1);
            // Of one piece alone nobody needs to be told which.
            String where = rows.size() == 1 ? "" : at + ": ";
            if (!(rows.get(i) instanceof Map<?, ?> row)) {
                problems.add(new Problem(at, "is no object", "write it in braces, as the description shows"));
                continue;
            }
            Map<String, Object> fields = new LinkedHashMap<>();
            row.forEach((name, value) -> fields.put(String.valueOf(name), value));
            PieceEntry.Read read = PieceEntry.read(
                    kept, String.valueOf(fields.getOrDefault("piece", "")), call.texts(fields, "figures"));
            read.problems().forEach(each -> problems.add(new Problem(where + each.where(), each.what(), each.mend())));
            Optional<Duration> turning = minutes(where, fields, problems);
            read.piece().ifPresent(piece -> {
                if (pieces.containsKey(piece.label())) {
                    problems.add(new Problem(at, "is there twice", "give each piece once"));
                }
                pieces.put(piece.label(), turning.map(piece::with).orElse(piece));
            });
        }
        Call.refuse(problems);
        List<KeptPiece> entered = List.copyOf(pieces.values());
        String what = entered.size() == 1
                ? "log piece " + entered.get(0).label()
                : "log " + Article.count(entered.size(), "piece");
        Edit edit = new Edit(
                what + entry.map(EntrySerial::mark).orElse(""),
                entered.stream().map(Change::of).toList());
        return new EditAnd<>(edit, new Entered(kept, entered));
    }

    private static Optional<Duration> minutes(String where, Map<String, Object> fields, List<Problem> problems) {
        String typed = String.valueOf(fields.getOrDefault("minutes", ""));
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        double minutes = typed.matches("\\d{1,5}(\\.\\d{1,9})?") ? Double.parseDouble(typed) : 0;
        if (!(minutes >= 0.01 && minutes <= 10_000)) {
            problems.add(new Problem(where + "minutes", "was " + typed, "give a number from 0.01 to 10000"));
            return Optional.empty();
        }
        return Optional.of(Duration.ofMillis(Math.round(minutes * MS_PER_MINUTE)));
    }

    private static Answer takeBack(Call call) {
        JobId id = call.job().id();
        EntrySerial entry = serial(call.ctx().pathParam("entry"), 404);
        Step step = call.store()
                .undo(id, kept -> isLast(call.store().done(kept.id()), entry))
                .orElseThrow(() -> Refusal.of(
                        409,
                        "entry",
                        "is not what was done last",
                        "take it back on the page, where all that was done stands"));
        return Answer.json(Map.of("job", id.text(), "version", step.number(), "what", step.what()));
    }

    private static boolean isLast(List<StepSummary> done, EntrySerial entry) {
        StepSummary last = done.get(done.size() - 1); // every job begins with a step
        return last.did() == Step.Did.EDIT && entry.isOf(last.what());
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
