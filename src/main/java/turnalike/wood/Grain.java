package turnalike.wood;

/** A direction across the grain. Along the grain normal wood moves so little (0.1 to 0.2 % in all; VERIFIED, S14) that it is left out. */
public enum Grain {
    /** From the pith to the bark, across the rings: the width of a quartersawn board. */
    RADIAL,
    /** Along the rings: the width of a flatsawn board. Moves about twice as much. */
    TANGENTIAL;

    /**
     * {@code radial} or {@code tangential}.
     *
     * @return the direction in words
     */
    public String text() {
        return this == RADIAL ? "radial" : "tangential";
    }
}
