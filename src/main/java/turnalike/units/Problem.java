package turnalike.units;

/**
 * One thing wrong in what the user gave: where it stands, what is wrong, and how to mend it. A person's input is not exceptional, so
 * problems are returned, all of them and in order, never thrown.
 *
 * @param where the place, as the user knows it: {@code member 3 (upper bead): crown}
 * @param what what is wrong, with the figures
 * @param mend what to do about it
 */
public record Problem(String where, String what, String mend) {
    /** {@return the line a person reads, without the program's name before it} */
    public String line() {
        return where + ": " + what + "; " + mend;
    }
}
