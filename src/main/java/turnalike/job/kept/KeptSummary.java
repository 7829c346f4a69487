package turnalike.job.kept;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.units.Problem;

/** The JSON objects that {@code keep}, {@code log} and {@code check} print. */
public final class KeptSummary {
    private KeptSummary() {}

    /** A job just kept: its id, and everything as it is stored. */
    public static String kept(GivenJob stored, List<Problem> notes) {
        KeptJob kept = stored.kept();
        ObjectNode tree = KeptJson.object()
                .put("job", stored.id().text())
                .put("title", kept.text().job().title())
                .put("pieces", kept.pieces().size());
        tree.set("stored", GivenTree.of(stored));
        notes(tree.putArray("notes"), notes);
        return KeptJson.page(tree);
    }

    /** A piece just logged, as it now stands with everything known of it. */
    public static String logged(JobId id, Step step, KeptPiece piece, List<Problem> notes) {
        ObjectNode tree = KeptJson.object()
                .put("kept", true)
                .put("job", id.text())
                .put("step", step.number())
                .put("at", step.at().toString())
                .put("piece", piece.label());
        tree.set("measures", PieceDocument.tree(piece));
        notes(tree.putArray("notes"), notes);
        return KeptJson.page(tree);
    }

    /** What a check found. */
    public static String checked(StoreReport report) {
        ObjectNode tree = KeptJson.object()
                .put("sound", report.sound())
                .put("jobs", report.jobs())
                .put("pieces", report.pieces());
        notes(tree.putArray("faults"), report.faults());
        return KeptJson.page(tree);
    }

    private static void notes(ArrayNode array, List<Problem> problems) {
        problems.forEach(each -> array.addObject()
                .put("where", each.where())
                .put("what", each.what())
                .put("mend", each.mend()));
    }
}
