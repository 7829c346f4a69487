package turnalike.web.kit;

/** How wide a field of a table must be for what stands in it: a figure whose end is cut off reads as another figure. */
public final class FieldWidth {
    /** As many letters as the usual field holds. */
    private static final int USUAL = 5;

    private static final int LONG = 8;

    private FieldWidth() {}

    /**
     * {@return the classes of the field's element}
     *
     * @param look its class otherwise; empty for none
     * @param value what stands in it
     */
    public static String look(String look, String value) {
        String width = value.length() <= USUAL ? "" : value.length() <= LONG ? "long" : "longer";
        return (look + " " + width).strip();
    }
}
