package turnalike.web.kit;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A first walk through one job in five steps, shown on top of every page until it is left; the browser remembers where it stood.
 *
 * @param step which it is, from 1
 * @param job the id of the job that it is walked on
 * @param left whether it was left, to be taken up again
 */
public record Tour(int step, String job, boolean left) {
    /** The cookie that remembers it. */
    public static final String COOKIE = "turnalike-tour";

    private static final Pattern KEPT = Pattern.compile("(on|left)-([1-5])-([0-9a-z-]{1,40})");

    /**
     * What one step says.
     *
     * @param title of it
     * @param words what to do
     * @param tab where it is done, behind the job's address
     */
    public record Step(String title, String words, String tab) {}

    private static final List<Step> STEPS = List.of(
            new Step(
                    "Look and choose",
                    "The spindle lies as on the lathe, head end left. Click the large bead near the left end, or its button below the drawing.",
                    "?member=3"),
            new Step(
                    "Change a size, take it back",
                    "Drag the bead's upper dot, or type 1 3/8 as its crown and press Tab. Weight and settings follow. Then press Undo.",
                    "?member=3#member"),
            new Step(
                    "Type a weight",
                    "Under Pieces are 17 invented weights. Type one more and press Enter; what looks like a slip is asked about.",
                    "/pieces"),
            new Step(
                    "See the set, swap two",
                    "14 of them are put round the wheel so that it has no heavy spot. Hold one, then drag another onto a third:"
                            + " the unbalance follows.",
                    "/match"),
            new Step(
                    "Print what the bench needs",
                    "Under Sheets are the bench card and the marking stick at full size. Print at 100 % and lay a rule on the check bar.",
                    "/sheets"));

    /** {@return how many steps there are} */
    public static int steps() {
        return STEPS.size();
    }

    /** {@return where this browser stands in it; empty where it was never begun} */
    static Optional<Tour> of(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .map(KEPT::matcher)
                .filter(Matcher::matches)
                .map(kept -> new Tour(
                        Integer.parseInt(kept.group(2)),
                        kept.group(3),
                        kept.group(1).equals("left")));
    }

    /** {@return it as the cookie keeps it} */
    public String kept() {
        return (left ? "left-" : "on-") + step + "-" + job;
    }

    /** {@return what this step says} */
    public Step now() {
        return STEPS.get(step - 1);
    }

    /** {@return where this step is done} */
    public String address() {
        return "/jobs/" + job + now().tab();
    }

    /** {@return whether this is the last step} */
    public boolean isLast() {
        return step == STEPS.size();
    }
}
