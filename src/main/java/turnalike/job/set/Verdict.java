package turnalike.job.set;

import java.util.List;

/**
 * How good a set is, in words: what is left, whether that is proven, and what it means.
 *
 * @param measure what it is judged by, such as {@code Balance}
 * @param sentences each without a capital and without its point; the first goes on from the measure
 */
public record Verdict(String measure, List<String> sentences) {
    static final String MAY_BE_LESS = "the best found; less may be possible";

    public Verdict {
        sentences = List.copyOf(sentences);
    }
}
