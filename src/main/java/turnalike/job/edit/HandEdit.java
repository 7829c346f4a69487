package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.job.kept.JobText;
import turnalike.job.set.ByHand;

/**
 * What of the set stands where by hand.
 *
 * @param hand what stands from now on
 * @param deed in the user's words, one line, for the history: {@code swap pieces 7 and 12}
 */
public record HandEdit(ByHand hand, String deed) implements JobEdit {
    private static final String KEY = "by_hand";

    @Override
    public String what(JobText before) {
        return deed.replaceAll("\\p{Cntrl}", " ");
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        if (hand.isAny()) {
            tree.root().set(KEY, node());
        } else {
            tree.root().remove(KEY);
        }
        return tree.read();
    }

    private ObjectNode node() {
        ObjectNode out = JobTree.object();
        if (!hand.order().isEmpty()) {
            ArrayNode order = out.putArray("order");
            hand.order().forEach(order::add);
        }
        if (!hand.held().isEmpty()) {
            ArrayNode held = out.putArray("held");
            hand.held()
                    .forEach((place, piece) ->
                            held.addObject().put("place", place).put("piece", piece));
        }
        return out;
    }
}
