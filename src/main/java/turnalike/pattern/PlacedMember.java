package turnalike.pattern;

import turnalike.outline.Outline;
import turnalike.units.Length;

/**
 * A member in its place in the run.
 *
 * @param number from 1, as the turner counts from the datum end
 * @param member the member
 * @param start from the datum end
 * @param outline its shape, in place
 */
public record PlacedMember(int number, Member member, Length start, Outline outline) {
    public Length end() {
        return outline.end();
    }

    /** {@code member 3 (upper bead)}: how every message names it. */
    public String where() {
        return where(number, member.title());
    }

    public static String where(int number, String title) {
        return "member %d (%s)".formatted(number, title);
    }
}
