package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import turnalike.settings.GivenMarks;

/** What stands before any step of the dividers, as sentences for the page and the sheets. */
public final class GivenWords {
    private GivenWords() {}

    /**
     * {@return shoulder lines, marks from the stick by wish, and marks from the stick for want of an opening, a sentence each where there
     * are some}
     *
     * @param plan whose marks the sentences number, from 0
     */
    public static List<String> list(Plan plan) {
        GivenMarks given = plan.settings().dividers().given();
        List<String> out = new ArrayList<>();
        if (!given.shoulders().isEmpty()) {
            out.add(
                    "Shoulder lines, %s: struck with square and knife from the stick before mounting. No leg stands on a square."
                            .formatted(marks(given.shoulders())));
        }
        if (!given.wished().isEmpty()) {
            out.add("From the stick, as you wish: %s.".formatted(marks(given.wished())));
        }
        if (!given.outOfReach().isEmpty()) {
            out.add("From the stick: %s; %s.".formatted(marks(given.outOfReach()), plan.whyOutOfReach()));
        }
        return out;
    }

    private static String marks(List<Integer> marks) {
        return (marks.size() == 1 ? "mark " : "marks ")
                + marks.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
