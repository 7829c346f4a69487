package turnalike.pattern;

import java.util.List;
import turnalike.outline.Outline;
import turnalike.units.Length;

/**
 * A member in its place in the run.
 *
 * @param number from 1, as the turner counts from the datum end
 * @param member the member
 * @param start from the datum end
 * @param outline its shape, in place
 * @param diameters where it is sized, in order, from the member's own start; told of a member that is turned by eye too
 * @param crests the places inside it that are marked, in order, from the member's own start; none when it is turned by eye
 */
public record PlacedMember(
        int number,
        Member member,
        Length start,
        Outline outline,
        List<Member.Diameter> diameters,
        List<Member.Crest> crests) {
    public PlacedMember {
        diameters = List.copyOf(diameters);
        crests = List.copyOf(crests);
    }

    /** {@return where it ends and the next begins, from the datum end} */
    public Length end() {
        return outline.end();
    }

    /**
     * {@return how lists name it: {@code 3 upper bead}; {@code 4: 3 mm quirk} where its title begins with a figure, which must not run into
     * the number}
     */
    public String caption() {
        String title = member.title();
        boolean figure = !title.isEmpty() && Character.isDigit(title.charAt(0));
        return number + (figure ? ": " : " ") + title;
    }

    /** {@return how every message names it: {@code member 3 (upper bead)}} */
    public String where() {
        return where(number, member.title());
    }

    /**
     * {@return how messages name a member that may not exist yet, since it is still being read}
     *
     * @param number from 1, from the datum end
     * @param title its own name, or the word of its kind
     */
    public static String where(int number, String title) {
        return "member %d (%s)".formatted(number, title);
    }
}
