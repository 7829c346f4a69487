package turnalike.units;

import java.util.regex.Pattern;

/**
 * One thing wrong in what the user gave: where it stands, what is wrong, and how to mend it. A person's input is not exceptional, so
 * problems are returned, all of them and in order, never thrown.
 *
 * @param where the place, as the user knows it: {@code member 3 (upper bead): crown}
 * @param what what is wrong, with the figures
 * @param mend what to do about it
 */
public record Problem(String where, String what, String mend) {
    /** As much of a word, or of what stands in quotes, as tells which one is meant; a path is seldom longer. */
    private static final int LONGEST_WORD = 300;

    private static final int LONGEST_QUOTED = 80;

    private static final Pattern BREAK = Pattern.compile("\\p{Cntrl}+");
    private static final Pattern LONG_QUOTED =
            Pattern.compile("(?<![\\p{L}\\p{N}])'([^']{40})[^']{" + (LONGEST_QUOTED - 39) + ",}'(?![\\p{L}\\p{N}])");
    private static final Pattern LONG_WORD = Pattern.compile("(\\S{40})\\S{" + (LONGEST_WORD - 39) + ",}");

    // Whatever the user gave is carried in short and without its line breaks, so that a line stays one to read.
    public Problem {
        where = shortened(where);
        what = shortened(what);
        mend = shortened(mend);
    }

    private static String shortened(String text) {
        String line = BREAK.matcher(text).replaceAll(" ");
        return LONG_WORD.matcher(LONG_QUOTED.matcher(line).replaceAll("'$1…'")).replaceAll("$1…");
    }

    /** {@return the line a person reads, without the program's name before it} */
    public String line() {
        return where + ": " + what + "; " + mend;
    }
}
