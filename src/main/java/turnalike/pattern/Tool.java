package turnalike.pattern;

/** What a cut is made with, by the trade's plain names. */
public enum Tool {
    ROUGHING_GOUGE("roughing gouge"),
    SPINDLE_GOUGE("spindle gouge"),
    SKEW("skew chisel"),
    PARTING_TOOL("parting tool"),
    DIVIDERS("dividers"),
    STICK("marking stick and pencil"),
    ABRASIVE("abrasive");

    private final String text;

    Tool(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
