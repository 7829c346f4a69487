package turnalike.job.kept;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** A given job as JSON. What stands in {@code job}, {@code pieces} and {@code photos} follows from {@code history}, which is what counts. */
final class GivenTree {
    static final String FORMAT = "turnalike-kept-job";
    static final int VERSION = 1;
    static final String HISTORY = "history";

    private GivenTree() {}

    static ObjectNode of(GivenJob given) {
        ObjectNode tree = standing(given.kept());
        ArrayNode history = tree.putArray(HISTORY);
        given.history().forEach(step -> history.add(step(StepText.of(step))));
        return tree;
    }

    /** All but the history. */
    static ObjectNode standing(KeptJob kept) {
        ObjectNode tree = KeptJson.object()
                .put("format", FORMAT)
                .put("version", VERSION)
                .put("id", kept.id().text());
        tree.set("job", KeptJson.object(kept.text().text()));
        ArrayNode pieces = tree.putArray("pieces");
        for (KeptPiece piece : kept.pieces()) {
            pieces.addObject().put("piece", piece.label()).setAll(PieceDocument.tree(piece));
        }
        ArrayNode photos = tree.putArray("photos");
        for (PhotoResult photo : kept.photos()) {
            photos.addObject().put("photo", photo.name()).set("result", KeptPhoto.told(photo));
        }
        return tree;
    }

    /** An undo or redo names the step it is about; what changed by it follows. */
    static ObjectNode step(StepText step) {
        ObjectNode tree = KeptJson.object().put("at", step.at());
        step.who().ifPresent(who -> tree.put("who", who));
        if (step.of().isPresent()) {
            return tree.put(step.did().word(), step.of().getAsInt());
        }
        ArrayNode changes = tree.put("what", step.what()).putArray("changes");
        for (StepText.ChangeText change : step.changes()) {
            Subject subject = change.subject();
            Optional<String> document = change.document();
            if (subject.equals(Subject.JOB)) {
                changes.addObject().put("job", document.orElse(""));
            } else {
                changes.addObject()
                        .put(subject.kind().word(), subject.name())
                        .set("now", document.map(KeptJson::object).orElse(null));
            }
        }
        return tree;
    }
}
