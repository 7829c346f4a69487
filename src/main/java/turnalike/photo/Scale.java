package turnalike.photo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.units.Length;

/**
 * The view of a piece with its size.
 *
 * @param fit what found the view
 * @param view the view
 * @param focal what was thought of the focal length before it
 * @param lens how the picture bends
 * @param lengthMm the piece's overall length
 * @param uncertainty of it and of every other length, as a share
 * @param from where it came from, in words
 * @param warnings what to know of it
 */
record Scale(
        ViewFit fit,
        ViewFit.View view,
        FocalGuess focal,
        Lens lens,
        double lengthMm,
        double uncertainty,
        String from,
        List<String> warnings) {
    /** A given length and the sheet's may differ by so much before somebody is told. */
    private static final double TOLD = 0.005;

    /** From here on one of both is wrong. */
    private static final double WRONG = 0.03;

    Scale {
        warnings = List.copyOf(warnings);
    }

    /** With the length that was given, if one was: the sheet and it check each other. */
    Scale checkedBy(Optional<Length> span) throws Unsure {
        if (span.isEmpty()) {
            return this;
        }
        double given = span.orElseThrow().mm();
        double off = lengthMm / given - 1;
        String both = String.format(
                Locale.ROOT, "by the sheet it is %.1f mm long, by what was given %.1f mm", lengthMm, given);
        if (Math.abs(off) > WRONG) {
            throw new Unsure(
                    PhotoTrace.Reason.SHEET,
                    both + ": one of both is wrong",
                    "measure the sheet's bar and give it with --bar, lay the piece on the sheet or say how high its axis is with --height, and"
                            + " measure its length again");
        }
        List<String> told = Math.abs(off) > Math.max(TOLD, 3 * uncertainty)
                ? join(warnings, both + ": measure the sheet's bar, and give it with --bar")
                : warnings;
        return new Scale(
                fit,
                view,
                focal,
                lens,
                given,
                0,
                String.format(
                        Locale.ROOT,
                        "the overall length that was given; the sheet has it %.1f %% %s",
                        100 * Math.abs(off),
                        off < 0 ? "less" : "more"),
                told);
    }

    /** With one thing more to know. */
    Scale warned(Optional<String> warning) {
        return warning.isEmpty()
                ? this
                : new Scale(fit, view, focal, lens, lengthMm, uncertainty, from, join(warnings, warning.orElseThrow()));
    }

    private static List<String> join(List<String> some, String more) {
        return Stream.concat(some.stream(), Stream.of(more)).toList();
    }
}
