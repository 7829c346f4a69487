package turnalike.turning;

/** The parts of the work, in their order. Common practice, no source. */
public enum Phase {
    SHOULDERS("shoulders of the square"),
    ROUND("square to round"),
    DATUM("datum"),
    LAYOUT("layout"),
    SIZING("sizing cuts"),
    DETAILS("heavy details"),
    SLENDER("slender stretches"),
    TENONS("tenons"),
    SANDING("sanding"),
    PARTING("parting off");

    private final String text;

    Phase(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }

    /** Whether wood comes off in an amount that matters to stiffness. */
    boolean shapes() {
        return this == ROUND || this == SIZING || this == DETAILS || this == SLENDER || this == TENONS;
    }
}
