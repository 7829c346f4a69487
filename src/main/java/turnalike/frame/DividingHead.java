package turnalike.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import turnalike.units.Article;

/**
 * A dividing head whose ring of holes serves for so many places. Heads with {@link #RINGS} are met with: common practice, no source.
 *
 * @param holes in the ring
 * @param every which of them is used: each so manieth
 */
public record DividingHead(int holes, int every) {
    /** The rings that heads have. Common practice, no source. */
    public static final List<Integer> RINGS = List.of(24, 36, 48, 60, 72, 96);

    /**
     * {@return the rings that divide into so many places without a rest, the smallest first; empty when none does}
     *
     * @param places how many, 1 or more
     */
    public static List<DividingHead> serving(int places) {
        List<DividingHead> out = new ArrayList<>();
        for (int holes : RINGS) {
            if (holes % places == 0) {
                out.add(new DividingHead(holes, holes / places));
            }
        }
        return out;
    }

    /**
     * {@return which rings serve, in words}
     *
     * @param places how many
     */
    public static String text(int places) {
        List<DividingHead> serving = serving(places);
        return serving.isEmpty()
                ? "none of a dividing head's usual rings of %s holes serves: prick by the strip"
                        .formatted(RINGS.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                : "on a dividing head: "
                        + serving.stream().map(DividingHead::pinned).collect(Collectors.joining("; or "));
    }

    /** As it is counted off at the head: {@code 36-hole ring, every 3rd hole}. */
    private String pinned() {
        return "%d-hole ring, every %shole".formatted(holes, every == 1 ? "" : Article.ordinal(every) + " ");
    }
}
