package turnalike.job.pieces;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import turnalike.pieces.Slip;

/** Figures that read like a slip, as {@code "questions"} of every answer that used them. They stand as given until somebody answers. */
public final class QuestionsJson {
    private QuestionsJson() {}

    /**
     * Adds them to an answer, as a list that is empty when there is nothing to ask.
     *
     * @param root the answer's object, changed in place
     * @param questions in the order they are to stand
     */
    public static void put(ObjectNode root, List<Slip> questions) {
        ArrayNode array = root.putArray("questions");
        for (Slip slip : questions) {
            array.addObject()
                    .put("where", slip.where())
                    .put("kind", slip.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                    .put("question", slip.question());
        }
    }
}
