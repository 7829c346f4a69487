package turnalike.pattern;

/** What a cut is made with, by the trade's plain names. What each is for is common practice, no source. */
public enum Tool {
    /** Brings a square blank to round, on work whose grain runs along the lathe only; none that is thin. */
    ROUGHING_GOUGE("roughing gouge"),
    /** Hollows coves and follows other curves; brings thin blanks to round. */
    SPINDLE_GOUGE("spindle gouge"),
    /** Planes what is straight and rolls what is round, its bevel rubbing. */
    SKEW("skew chisel"),
    /** Cuts straight in, to the calipers: grooves, fillets, tenons and sizing cuts. */
    PARTING_TOOL("parting tool"),
    /** Scribe a line at one setting from another. */
    DIVIDERS("dividers"),
    /** Carries every mark at full size to the turning piece. */
    STICK("marking stick and pencil"),
    /** Sands what is turned for its shape; tenons and squares are left alone. */
    ABRASIVE("abrasive"),
    /** The chuck, screw or jam chuck itself, as the piece comes into it. */
    HOLD("hold"),
    /** Takes the spare length off a square end on the bench. */
    SAW("saw");

    private final String text;

    Tool(String text) {
        this.text = text;
    }

    /** {@return its name as it stands in a sentence: {@code skew chisel}} */
    public String text() {
        return text;
    }
}
