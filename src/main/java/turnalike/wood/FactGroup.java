package turnalike.wood;

import java.util.Optional;

/** The facts of a species that were found together and so share their sources. */
public enum FactGroup {
    /** Specific gravity, basic and at 12 %. */
    GRAVITY("sg", "specific gravity"),

    /** Strength and stiffness, green and dry. */
    STRENGTH("strength", "strength"),

    /** Shrinkage from green to ovendry. */
    SHRINKAGE("shrink", "shrinkage"),

    /** Coefficients of dimensional change per percentage point of moisture. */
    COEFFICIENTS("coef", "coefficients of dimensional change");

    private final String tag;
    private final String text;

    FactGroup(String tag, String text) {
        this.tag = tag;
        this.text = text;
    }

    /** {@return the group's name as a person reads it} */
    public String text() {
        return text;
    }

    static Optional<FactGroup> find(String tag) {
        for (FactGroup group : values()) {
            if (group.tag.equals(tag)) {
                return Optional.of(group);
            }
        }
        return Optional.empty();
    }
}
