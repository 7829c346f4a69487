package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.settings.GivenMarks;
import turnalike.units.Length;

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

    /**
     * {@return that the stick lays out the whole of a short piece, a sentence said before any divider is; empty where the piece is longer, or no
     * divider is wanted}
     *
     * @param plan whose marks they are
     */
    public static Optional<String> stickAlone(Plan plan) {
        Job job = plan.job();
        Length length = job.pattern().length();
        return !plan.settings().dividers().isForTheStickAlone(length)
                ? Optional.empty()
                : Optional.of(
                        ("At %s the marking stick alone lays it all out: hold it along the piece and strike every mark, each off by %s"
                                        + " at worst. Dividers are for who prefers them.")
                                .formatted(
                                        length.format(job.units()),
                                        job.tolerances().mark().formatFineUp(job.units())));
    }

    private static String marks(List<Integer> marks) {
        return (marks.size() == 1 ? "mark " : "marks ")
                + marks.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
