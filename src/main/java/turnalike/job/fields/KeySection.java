package turnalike.job.fields;

/** The parts of the form of what is outside the run, in their order on the page. */
public enum KeySection {
    ORDER("Order"),
    STOCK("Stock and wood"),
    TOLERANCES("Tolerances"),
    ALLOWANCES("Allowances"),
    SETTINGS("Your choice of settings"),
    TURNING("Turning"),
    ALIKE("How alike"),
    FRAME("Frame"),
    BARE_WHEEL("The bare wheel"),
    /** Not asked for. */
    NONE("");

    private final String title;

    KeySection(String title) {
        this.title = title;
    }

    /** As the form prints it. */
    public String title() {
        return title;
    }
}
