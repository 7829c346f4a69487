package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.DELETE;
import static turnalike.web.api.Operation.Verb.PATCH;
import static turnalike.web.api.Operation.Verb.POST;
import static turnalike.web.api.Operation.Verb.PUT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.job.answer.PlainJson;
import turnalike.job.edit.JobEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobCard;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.job.keys.JobSchema;
import turnalike.web.api.Operation.Reply;
import turnalike.web.kit.Refusal;

/** Jobs listed, read, made, changed and deleted. */
final class JobOperations {
    private static final String JOB = "/jobs/{job}";

    /** The job file's own schema has members of many kinds, which generated clients make poor types of: it stands by itself. */
    private static final Map<String, ?> JOB_FILE = Map.of(
            "type",
            "object",
            "required",
            List.of("format", "version", "pattern"),
            "description",
            "a job file; what it may hold is told by `readSchema`");

    private static final Reply CHANGED =
            Reply.json("The job's id and its version from now on.", "job", "version", "changed");

    private JobOperations() {}

    static List<Operation> list() {
        String example = ExampleJob.text().text();
        return List.of(
                Operation.get(
                        "/jobs",
                        "listJobs",
                        "Lists the kept jobs, the one changed last first.",
                        Reply.json("The jobs.", "jobs"),
                        JobOperations::jobs),
                Operation.of(
                                POST,
                                "/jobs",
                                "makeJob",
                                "Keeps a new job. The body is its job file.",
                                Reply.json("The new job's id and version.", "job", "version")
                                        .made(),
                                JobOperations::make)
                        .sending(JOB_FILE, new PlainJson.Raw(example.strip())),
                Operation.get(
                        "/schema",
                        "readSchema",
                        "Reads the JSON Schema of a job file, as `schema` prints it.",
                        Reply.json("The schema.", "$id", "properties"),
                        call -> Answer.json(JobSchema.print())),
                Operation.get(
                        JOB,
                        "readJob",
                        "Reads a job: its job file to the letter, and its version.",
                        Reply.json("The job.", "job", "version", "title", "file"),
                        JobOperations::read),
                Operation.of(
                                PUT,
                                JOB,
                                "replaceJob",
                                "Puts another job file in place of the job's.",
                                CHANGED,
                                JobOperations::replace)
                        .atVersion()
                        .sending(JOB_FILE, new PlainJson.Raw(example.strip())),
                Operation.of(
                                PATCH,
                                JOB,
                                "changeFields",
                                "Changes fields of the job file by their paths; an empty text takes a field out.",
                                CHANGED,
                                JobOperations::fields)
                        .atVersion()
                        .sending(fieldsSchema(), Map.of("fields", Map.of("count", "6", "wood.moisture_pct", "9"))),
                Operation.get(
                        JOB + "/history",
                        "readHistory",
                        "Tells everything that was done to the job, as `history --json`.",
                        Reply.json("The steps, the first one first.", "job", "steps"),
                        call -> Answer.json(KeptSummary.history(
                                call.job().id(), call.store().done(call.id())))),
                Operation.of(
                                POST,
                                JOB + "/undo",
                                "undo",
                                "Takes the last edit back.",
                                CHANGED,
                                call -> step(call, true))
                        .atVersion(),
                Operation.of(
                                POST,
                                JOB + "/redo",
                                "redo",
                                "Brings the edit undone last again.",
                                CHANGED,
                                call -> step(call, false))
                        .atVersion());
    }

    /** Last of all, so that a client that tries each operation in order still has the job. */
    static List<Operation> last() {
        return List.of(
                Operation.of(
                                DELETE,
                                JOB,
                                "deleteJob",
                                "Puts the job into the bin; nothing of it is lost.",
                                Reply.json("That it is in the bin.", "job", "binned"),
                                JobOperations::bin)
                        .atVersion(),
                Operation.of(
                        POST,
                        JOB + "/restore",
                        "restoreJob",
                        "Takes the job out of the bin again.",
                        Reply.json("That it is back.", "job", "restored"),
                        JobOperations::restore));
    }

    private static Map<String, ?> fieldsSchema() {
        Map<String, Object> value = Map.of("type", "string", "description", "a text; a number is taken too");
        return Map.of(
                "type",
                "object",
                "required",
                List.of("fields"),
                "properties",
                Map.of("fields", Map.of("type", "object", "additionalProperties", value)));
    }

    private static Answer jobs(Call call) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (JobCard card : call.store().list()) {
            Map<String, Object> job = new LinkedHashMap<>();
            job.put("job", card.id().text());
            job.put("title", card.title());
            job.put("version", card.times().steps());
            job.put("made", card.times().made().toString());
            job.put("changed", card.times().changed().toString());
            job.put("pieces", card.pieces());
            out.add(job);
        }
        return Answer.json(Map.of("jobs", out));
    }

    private static JobText text(Call call) {
        JobText.Read read = JobText.read(call.text());
        return read.text().orElseThrow(() -> new Refusal(422, read.problems()));
    }

    private static Answer make(Call call) {
        JobId id = call.store().keep(text(call));
        return Answer.json(head(call.store().find(id).orElseThrow()));
    }

    private static Map<String, Object> head(KeptJob kept) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("job", kept.id().text());
        out.put("version", kept.times().steps());
        out.put("title", kept.text().job().title());
        return out;
    }

    private static Answer read(Call call) {
        KeptJob kept = call.job();
        Map<String, Object> out = head(kept);
        out.put("made", kept.times().made().toString());
        out.put("changed", kept.times().changed().toString());
        out.put("pieces", kept.pieces().size());
        out.put("next_undo", kept.undo());
        out.put("next_redo", kept.redo());
        out.put(
                "file",
                new PlainJson.Raw(kept.text().text().replace("\ufeff", "").strip()));
        return Answer.json(out);
    }

    private static Answer replace(Call call) {
        JobText text = text(call);
        return changed(
                call,
                () -> call.edit(kept -> {
                    if (kept.text().equals(text)) {
                        throw new Unchanged();
                    }
                    return Edit.of("change the whole job file", Change.of(text));
                }));
    }

    private static Answer fields(Call call) {
        Map<String, String> values = call.texts(call.object(), "fields");
        if (values.isEmpty()) {
            throw Refusal.of(400, "fields", "names no field", "send {\"fields\": {\"wood.moisture_pct\": 9}}");
        }
        JobEdit edit = JobEdit.fields(values);
        return changed(
                call,
                () -> call.edit(kept -> {
                    JobText.Read read = edit.on(kept.text());
                    JobText text = read.text().orElseThrow(() -> new Refusal(422, read.problems()));
                    if (edit.isNothing(kept.text(), text)) {
                        throw new Unchanged();
                    }
                    return Edit.of(edit.what(kept.text()), Change.of(text));
                }));
    }

    private static Answer step(Call call, boolean back) {
        Optional<Step> step = back
                ? call.store().undo(call.job().id(), call::isFresh)
                : call.store().redo(call.job().id(), call::isFresh);
        Step done = step.orElseThrow(() -> Refusal.of(
                409, "job", back ? "there is nothing to undo" : "there is nothing to redo", "look at its history"));
        return changed(call, () -> done);
    }

    /** What is asked for stands already: no step is made of it. */
    private static final class Unchanged extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static Answer changed(Call call, Supplier<Step> edit) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("job", call.id().text());
        try {
            Step step = edit.get();
            out.put("version", step.number());
            out.put("changed", true);
            out.put("what", step.what());
        } catch (Unchanged nothingToDo) {
            out.put("version", call.job().times().steps());
            out.put("changed", false);
        }
        return Answer.json(out);
    }

    private static Answer bin(Call call) {
        call.isFresh(call.job());
        if (!call.store().bin(call.id())) {
            throw Refusal.of(409, "job", "is in the bin already", "restore it there");
        }
        return Answer.json(Map.of("job", call.id().text(), "binned", true));
    }

    private static Answer restore(Call call) {
        if (!call.store().restore(call.id())) {
            throw Refusal.of(409, "job", "is not in the bin", "look at the list of jobs");
        }
        return Answer.json(Map.of("job", call.id().text(), "restored", true));
    }
}
