package turnalike.job.set;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a person's hand did to a set, as it is told beside it.
 *
 * @param hand what was settled
 * @param leastOfRest whether no other choice or order that keeps what is held does better
 */
public record HandWork(ByHand hand, boolean leastOfRest) {
    /** Nothing was settled. */
    static final HandWork NONE = new HandWork(ByHand.NONE, false);

    /** {@return it in sentences, each without a capital and without its point; none where nothing was settled} */
    public List<String> sentences() {
        if (!hand.isAny()) {
            return List.of();
        }
        String held = hand.held().entrySet().stream()
                .map(each -> "piece %s at place %d".formatted(each.getValue(), each.getKey()))
                .collect(Collectors.joining(", "));
        String keeps = hand.held().isEmpty() ? "" : "; held: " + held;
        return List.of(
                hand.stands()
                        ? "placed by hand, as it stands" + keeps
                        : "the rest was searched around what is held%s".formatted(held.isEmpty() ? "" : ": " + held));
    }

    /** {@return how sure it is, in words: nothing is known of other orders while it stands by hand} */
    String sureness() {
        if (hand.stands()) {
            return "as placed by hand; another order may have less";
        }
        return leastOfRest ? "no other order that keeps what is held has less" : Verdict.MAY_BE_LESS;
    }
}
