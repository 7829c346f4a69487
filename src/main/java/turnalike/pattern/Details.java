package turnalike.pattern;

import java.util.Optional;

/**
 * What every member may carry besides its sizes.
 *
 * @param name the turner's own name for it
 * @param byEye not measured when turning: no caliper is set for its diameters, and no place inside it gets a mark
 */
public record Details(Optional<String> name, boolean byEye) {
    /** No name, measured. */
    public static final Details NONE = new Details(Optional.empty(), false);

    /**
     * {@return details of a measured member with a name}
     *
     * @param name the turner's own name for it
     */
    public static Details named(String name) {
        return new Details(Optional.of(name), false);
    }
}
