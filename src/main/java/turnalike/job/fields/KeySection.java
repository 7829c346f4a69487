package turnalike.job.fields;

/** The parts of the form of what is outside the run, in their order on the page. */
public enum KeySection {
    /** What is wanted: title, pattern, how many pieces. */
    ORDER("Order"),
    /** What it is turned from: the blank and its wood. */
    STOCK("Stock and wood"),
    /** How near is near enough. */
    TOLERANCES("Tolerances"),
    /** What is left on for the next step of the work. */
    ALLOWANCES("Allowances"),
    /** Openings the turner has set or will not use, and marks taken from the stick. */
    SETTINGS("Your choice of settings"),
    /** The lathe, the hand that turns, and the wood's stiffness. */
    TURNING("Turning"),
    /** Where a caliper is laid, and what each kind of measure counts to the eye. */
    ALIKE("How alike"),
    /** What the set goes into. */
    FRAME("Frame"),
    /** Where the pieces will live. */
    HOME("Where it will live"),
    /** What a wheel pulls before any spoke is in it. */
    BARE_WHEEL("The bare wheel"),
    /** Not asked for. */
    NONE("");

    private final String title;

    KeySection(String title) {
        this.title = title;
    }

    /** {@return the section's heading as the form prints it; empty for {@link #NONE}} */
    public String title() {
        return title;
    }
}
