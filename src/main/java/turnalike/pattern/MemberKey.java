package turnalike.pattern;

import java.util.Optional;
import java.util.function.Function;
import turnalike.units.Length;

/**
 * A key by which a kind of member is given.
 *
 * @param name as in a job file
 * @param type what its value is
 * @param label as a form says it
 * @param hint what counts when the field is left empty, as a form says it; empty when it must be filled
 * @param note what the table of keys adds to the name; empty for nothing
 * @param isNeeded whether it must be there
 * @param otherwise what counts when it is not there, from the stock's size; empty when nothing does
 */
public record MemberKey(
        String name,
        Type type,
        String label,
        String hint,
        String note,
        boolean isNeeded,
        Function<Length, Optional<Length>> otherwise) {
    /** The key of a member's length. */
    public static final String LENGTH = "length";

    /** The key of the turner's own name for a member; every kind may have it. */
    public static final String NAME = "name";

    /** The key that says a member is not measured; every kind may have it. */
    public static final String BY_EYE = "by_eye";

    /** What the value of a key is. */
    public enum Type {
        /** A length. */
        LENGTH,
        /** A list of pairs of lengths: a place from the member's start, and the diameter there. */
        POINTS
    }

    static MemberKey needed(String name, Type type, String label) {
        return new MemberKey(name, type, label, "", "", true, stock -> Optional.empty());
    }

    static MemberKey optional(String name, String label, String hint, Function<Length, Optional<Length>> otherwise) {
        return new MemberKey(name, Type.LENGTH, label, hint, "", false, otherwise);
    }

    MemberKey noted(String words) {
        return new MemberKey(name, type, label, hint, words, isNeeded, otherwise);
    }
}
