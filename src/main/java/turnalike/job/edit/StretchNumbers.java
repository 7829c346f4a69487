package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.IntUnaryOperator;

/** The members by which a row's lengths differ, named by number: they keep naming the same member when the run changes. */
final class StretchNumbers {
    private StretchNumbers() {}

    /**
     * Numbers them anew.
     *
     * @param tree the job
     * @param now a member's index from 0 after the change, by the one before
     */
    static void change(JobTree tree, IntUnaryOperator now) {
        if (tree.root().path("frame").path("lengths") instanceof ArrayNode lengths) {
            lengths.forEach(each -> {
                if (each instanceof ObjectNode length && length.path("stretch").canConvertToInt()) {
                    length.put("stretch", now.applyAsInt(length.get("stretch").intValue()));
                }
            });
        }
    }

    /** Whether one of them names that member, by its index from 0. */
    static boolean name(JobTree tree, int member) {
        boolean named = false;
        for (var each : tree.root().path("frame").path("lengths")) {
            named |= each.path("stretch").canConvertToInt()
                    && each.path("stretch").intValue() == member;
        }
        return named;
    }
}
