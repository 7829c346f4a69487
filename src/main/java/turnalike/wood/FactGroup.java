package turnalike.wood;

import java.util.Optional;

/** The facts of a species that were found together and so share their sources. */
public enum FactGroup {
    GRAVITY("sg", "specific gravity"),
    STRENGTH("strength", "strength"),
    SHRINKAGE("shrink", "shrinkage"),
    COEFFICIENTS("coef", "coefficients of dimensional change");

    private final String tag;
    private final String text;

    FactGroup(String tag, String text) {
        this.tag = tag;
        this.text = text;
    }

    /** The group's name as a person reads it. */
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
