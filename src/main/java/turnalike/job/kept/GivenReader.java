package turnalike.job.kept;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.units.Problem;

/**
 * Reads a given job. The history is what counts; the rest of the file must be what the history comes to, or somebody changed the one and not
 * the other.
 */
final class GivenReader {
    private static final String MEND =
            "bring it back as give wrote it; to change a job, change its job file and keep that";

    /** Other programs write 1.50 as 1.5 and put keys in another order: neither makes a difference. */
    private static final Comparator<JsonNode> SAME_NUMBERS = (one, other) -> one.isNumber() && other.isNumber()
            ? Double.compare(one.doubleValue(), other.doubleValue())
            : one.equals(other) ? 0 : 1;

    private GivenReader() {}

    /** The first thing wrong, on its way to the answer. */
    private static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Problem problem;

        Wrong(String where, String what) {
            super(what);
            problem = new Problem(where, what.replaceAll("\\p{Cntrl}", "?"), MEND);
        }
    }

    static GivenJob.Read read(String text) {
        try {
            return new GivenJob.Read(Optional.of(job(object(text))), List.of());
        } catch (Wrong wrong) {
            return new GivenJob.Read(Optional.empty(), List.of(wrong.problem));
        }
    }

    private static ObjectNode object(String text) throws Wrong {
        try {
            return KeptJson.object(text);
        } catch (IllegalArgumentException notJson) {
            throw new Wrong("given job", String.valueOf(notJson.getMessage()));
        }
    }

    private static GivenJob job(ObjectNode tree) throws Wrong {
        if (!GivenTree.FORMAT.equals(tree.path("format").asText())
                || tree.path("version").asInt() != GivenTree.VERSION) {
            throw new Wrong("format", "is not %s, version %d".formatted(GivenTree.FORMAT, GivenTree.VERSION));
        }
        String id = text(tree, "id", "given job");
        if (!JobId.parse(id).isValue()) {
            throw new Wrong("id", "is no job's id");
        }
        List<Step> steps = steps(tree.path("history"));
        GivenJob given;
        try {
            given = new GivenJob(JobId.parse(id).get(), steps);
        } catch (IllegalArgumentException broken) {
            throw new Wrong("history", String.valueOf(broken.getMessage()));
        }
        refuseOthers(tree, GivenTree.of(given));
        return given;
    }

    private static void refuseOthers(ObjectNode tree, ObjectNode follows) throws Wrong {
        for (Iterator<String> keys = tree.fieldNames(); keys.hasNext(); ) {
            String key = keys.next();
            if (!follows.has(key)) {
                throw new Wrong("given job", "has an unknown key '%s'".formatted(key));
            }
        }
        for (Iterator<String> keys = follows.fieldNames(); keys.hasNext(); ) {
            String key = keys.next();
            if (!follows.get(key).equals(SAME_NUMBERS, tree.path(key))) {
                throw new Wrong(key, "is not what the history comes to");
            }
        }
    }

    private static List<Step> steps(JsonNode history) throws Wrong {
        if (!history.isArray()) {
            throw new Wrong("history", "is missing or no list");
        }
        Replay replay = new Replay();
        for (JsonNode each : history) {
            String where = "history: step %d".formatted(replay.history().size() + 1);
            try {
                boolean follows = play(replay, each, where);
                if (!follows) {
                    throw new Wrong(where, "there is nothing to undo or redo");
                }
            } catch (IllegalArgumentException broken) {
                throw new Wrong(where, String.valueOf(broken.getMessage()));
            }
        }
        return replay.history();
    }

    private static boolean play(Replay replay, JsonNode step, String where) throws Wrong {
        Instant at = time(text(step, "at", where), where);
        Optional<String> who = step.has("who") ? Optional.of(text(step, "who", where)) : Optional.empty();
        if (step.has("undo")) {
            return isAbout(replay.undo(at, who), step.get("undo"));
        }
        if (step.has("redo")) {
            return isAbout(replay.redo(at, who), step.get("redo"));
        }
        List<Change> changes = new ArrayList<>();
        for (JsonNode each : step.path("changes")) {
            changes.add(change(each, where));
        }
        replay.edit(at, new Edit(text(step, "what", where), changes), who);
        return true;
    }

    private static boolean isAbout(Optional<Step> step, JsonNode number) {
        return step.isPresent() && step.get().of().equals(OptionalInt.of(number.asInt()));
    }

    private static Change change(JsonNode tree, String where) throws Wrong {
        if (tree.has("job")) {
            return Change.read(Subject.JOB, Optional.of(text(tree, "job", where)));
        }
        Subject.Kind kind = tree.has("piece") ? Subject.Kind.PIECE : Subject.Kind.PHOTO;
        Subject subject = new Subject(kind, text(tree, kind.word(), where));
        if (tree.path("now").isNull()) {
            return Change.without(subject);
        }
        if (!tree.path("now").isObject()) {
            throw new Wrong(where, "'now' is missing");
        }
        return Change.read(subject, Optional.of(KeptJson.line(tree.get("now"))));
    }

    private static String text(JsonNode tree, String key, String where) throws Wrong {
        if (!tree.path(key).isTextual()) {
            throw new Wrong(where, "'%s' is missing or no text".formatted(key));
        }
        return tree.get(key).textValue();
    }

    private static Instant time(String text, String where) throws Wrong {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException noTime) {
            throw new Wrong(where, "'at' is no time, was '%s'".formatted(text));
        }
    }
}
