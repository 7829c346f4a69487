package turnalike.turning;

/** The parts of the work, in their order. Common practice, no source. */
public enum Phase {
    /** How a piece held by one end comes into its hold. */
    HOLDING("holding"),

    /** The shoulders of stretches that stay square. */
    SHOULDERS("shoulders of the square"),

    /** Roughing the blank down to round. */
    ROUND("square to round"),

    /** The end that every place is measured from. */
    DATUM("datum"),

    /** Marking the members' places. */
    LAYOUT("layout"),

    /** A piece held by one end that comes to a point: nothing bears that while it is turned. */
    AWAY("tailstock away"),

    /** Cuts to a caliper's opening, which give each member its diameter. */
    SIZING("sizing cuts"),

    /** A piece held by one end: everything from the other end back, sized as it goes. */
    FROM_TIP("from the tip back, sized as it goes"),

    /** Details cut while the piece is still stiff. */
    DETAILS("heavy details"),

    /** Stretches that bend easily, cut once the heavy details stand. */
    SLENDER("slender stretches"),

    /** Bringing what enters a hole to its size. */
    TENONS("tenons"),

    /** Parts so thin for their distance from what bears the piece that they are cut last and lightly. */
    THIN("thinnest last, with a light hand"),

    /** Sanding to the finished surface. */
    SANDING("sanding"),

    /** A piece held by one end: the other end, once nothing bears it. */
    TIP("tip"),

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
        return this == ROUND || this == SIZING || cutsMembers();
    }

    /** {@return whether its cuts bring single members to their shape} */
    public boolean cutsMembers() {
        return switch (this) {
            case FROM_TIP, DETAILS, SLENDER, TENONS, THIN -> true;
            case HOLDING, SHOULDERS, ROUND, DATUM, LAYOUT, AWAY, SIZING, SANDING, TIP, PARTING -> false;
        };
    }
}
