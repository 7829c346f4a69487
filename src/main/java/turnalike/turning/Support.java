package turnalike.turning;

/** What holds one end of the piece against being pushed aside. */
public enum Support {
    /** A centre: the end stays in its place and may tilt. */
    PINNED("on a centre"),

    /** A chuck or a screw, reckoned stiff: the end stays in its place and may not tilt. */
    FIXED("held fast"),

    /** Nothing. */
    FREE("free");

    private final String text;

    Support(String text) {
        this.text = text;
    }

    /** {@return it in words: {@code on a centre}} */
    public String text() {
        return text;
    }
}
