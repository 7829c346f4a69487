package turnalike.turning;

/** The parts of the work, in their order. Common practice, no source. */
public enum Phase {
    /** The shoulders of stretches that stay square. */
    SHOULDERS("shoulders of the square"),

    /** Roughing the blank down to round. */
    ROUND("square to round"),

    /** The end that every place is measured from. */
    DATUM("datum"),

    /** Marking the members' places. */
    LAYOUT("layout"),

    /** Cuts to a caliper's opening, which give each member its diameter. */
    SIZING("sizing cuts"),

    /** Details cut while the piece is still stiff. */
    DETAILS("heavy details"),

    /** Stretches that bend easily, cut once the heavy details stand. */
    SLENDER("slender stretches"),

    /** Bringing what enters a hole to its size. */
    TENONS("tenons"),

    /** Sanding to the finished surface. */
    SANDING("sanding"),

    /** Cutting the piece off. */
    PARTING("parting off");

    private final String text;

    Phase(String text) {
        this.text = text;
    }

    /** {@return the phase in words, as the order of cuts heads it} */
    public String text() {
        return text;
    }

    /** Whether wood comes off in an amount that matters to stiffness. */
    boolean shapes() {
        return this == ROUND || this == SIZING || this == DETAILS || this == SLENDER || this == TENONS;
    }
}
