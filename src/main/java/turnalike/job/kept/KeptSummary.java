package turnalike.job.kept;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;
import turnalike.job.pieces.QuestionsJson;
import turnalike.pieces.Slip;
import turnalike.units.Problem;

/** The JSON objects that {@code keep}, {@code log}, {@code check} and {@code move} print. */
public final class KeptSummary {
    private KeptSummary() {}

    /** Writes the whole job with its history, as {@link GivenJob#format} has it. */
    public interface Giving {
        /**
         * Gives it.
         *
         * @param out stays open
         */
        void to(Writer out);
    }

    /**
     * A job just kept: its id, and everything as it is stored. Like the others here one JSON object over several lines, ended by a line end,
     * but written step by step: a history of any length takes no more room than one step.
     *
     * @param out stays open; what it throws is thrown on as {@link UncheckedIOException}
     * @param kept the job as it stands
     * @param stored gives it with its history
     * @param notes what went wrong beside the point, in order; asked after all else
     */
    public static void kept(Writer out, KeptJob kept, Giving stored, Supplier<List<Problem>> notes) {
        ObjectNode head = KeptJson.object()
                .put("job", kept.id().text())
                .put("title", kept.text().job().title())
                .put("pieces", kept.pieces().size());
        ObjectNode tail = KeptJson.object();
        try {
            String begun = KeptJson.page(head);
            out.write(begun.substring(0, begun.lastIndexOf("\n}")) + ",\n  \"stored\" : ");
            stored.to(new WithinObject(out));
            notes(tail.putArray("notes"), notes.get());
            out.write("," + KeptJson.page(tail).substring(1));
            out.flush();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * A piece just logged, as it now stands with everything known of it.
     *
     * @param id the job's
     * @param step that logged it
     * @param piece as it now stands
     * @param questions which of its figures read like slips
     * @param notes what went wrong beside the point, in order
     * @return one JSON object over several lines, ended by a line end; masses in g, lengths in mm
     */
    public static String logged(JobId id, Step step, KeptPiece piece, List<Slip> questions, List<Problem> notes) {
        ObjectNode tree = KeptJson.object()
                .put("kept", true)
                .put("job", id.text())
                .put("step", step.number())
                .put("at", step.at().toString())
                .put("piece", piece.label());
        tree.set("measures", PieceDocument.tree(piece));
        QuestionsJson.put(tree, questions);
        notes(tree.putArray("notes"), notes);
        return KeptJson.page(tree);
    }

    /**
     * A whole table just logged.
     *
     * @param id the job's
     * @param step that logged it
     * @param pieces the labels, in the table's order
     * @param questions what in the table reads like a slip
     * @param notes what went wrong beside the point, in order
     * @return one JSON object
     */
    public static String logged(JobId id, Step step, List<String> pieces, List<Slip> questions, List<Problem> notes) {
        return KeptJson.page(logged(id, step.number(), step.at(), pieces, questions, notes));
    }

    /**
     * A table that was logged before and came again.
     *
     * @param id the job's
     * @param step that logged it then
     * @param pieces the labels, in the table's order
     * @param notes what went wrong beside the point, in order
     * @return one JSON object, with {@code "kept_before"}
     */
    public static String loggedBefore(JobId id, StepSummary step, List<String> pieces, List<Problem> notes) {
        return KeptJson.page(
                logged(id, step.number(), step.at(), pieces, List.of(), notes).put("kept_before", true));
    }

    private static ObjectNode logged(
            JobId id, int step, Instant at, List<String> pieces, List<Slip> questions, List<Problem> notes) {
        ObjectNode tree = KeptJson.object()
                .put("kept", true)
                .put("job", id.text())
                .put("step", step)
                .put("at", at.toString());
        ArrayNode labels = tree.putArray("pieces");
        pieces.forEach(labels::add);
        QuestionsJson.put(tree, questions);
        notes(tree.putArray("notes"), notes);
        return tree;
    }

    /**
     * The pieces of a job as they stand.
     *
     * @param kept the job
     * @return one JSON object; masses in g, lengths in mm
     */
    public static String pieces(KeptJob kept) {
        ObjectNode tree = KeptJson.object()
                .put("job", kept.id().text())
                .put("version", kept.times().steps());
        ArrayNode pieces = tree.putArray("pieces");
        for (KeptPiece piece : kept.pieces()) {
            ObjectNode each = pieces.addObject().put("piece", piece.label());
            each.setAll(PieceDocument.tree(piece));
        }
        return KeptJson.page(tree);
    }

    /**
     * An edit just undone or brought back.
     *
     * @param id the job's
     * @param step the undo or redo
     * @param now the job after it, which knows what could be undone or redone next
     * @return one JSON object
     */
    public static String stepped(JobId id, Step step, KeptJob now) {
        ObjectNode tree = KeptJson.object()
                .put("job", id.text())
                .put("did", step.did().word())
                .put("what", step.what())
                .put("step", step.number())
                .put("at", step.at().toString());
        now.undo().ifPresent(what -> tree.put("next_undo", what));
        now.redo().ifPresent(what -> tree.put("next_redo", what));
        return KeptJson.page(tree);
    }

    /**
     * Everything ever done to a job, the first step first, without what it changed.
     *
     * @param id the job's
     * @param history its steps, in order
     * @return one JSON object
     */
    public static String history(JobId id, List<StepSummary> history) {
        ObjectNode tree = KeptJson.object().put("job", id.text());
        ArrayNode steps = tree.putArray("steps");
        for (StepSummary step : history) {
            ObjectNode each = steps.addObject()
                    .put("step", step.number())
                    .put("at", step.at().toString())
                    .put("did", step.did().word())
                    .put("what", step.what());
            step.of().ifPresent(of -> each.put("of_step", of));
            step.who().ifPresent(who -> each.put("who", who));
        }
        return KeptJson.page(tree);
    }

    /**
     * What a check of a whole store found.
     *
     * @param report the check's
     * @return one JSON object
     */
    public static String checked(StoreReport report) {
        ObjectNode tree = KeptJson.object()
                .put("sound", report.sound())
                .put("jobs", report.jobs())
                .put("pieces", report.pieces());
        notes(tree.putArray("faults"), report.faults());
        return KeptJson.page(tree);
    }

    /**
     * A store that was carried to another place.
     *
     * @param jobs how many
     * @param rows of all tables
     * @param digest over all rows
     * @return one JSON object
     */
    public static String moved(int jobs, long rows, String digest) {
        return KeptJson.page(KeptJson.object()
                .put("moved", true)
                .put("jobs", jobs)
                .put("rows", rows)
                .put("digest", digest));
    }

    private static void notes(ArrayNode array, List<Problem> problems) {
        problems.forEach(each -> array.addObject()
                .put("where", each.where())
                .put("what", each.what())
                .put("mend", each.mend()));
    }
}
