package turnalike.turning;

/**
 * What holds the two ends.
 *
 * @param start the datum end
 * @param end the far end; one of the two is fixed or both are pinned, else the piece would fall and {@link IllegalArgumentException} is
 *     thrown
 */
public record Supports(Support start, Support end) {
    /** A centre at both ends. */
    public static final Supports BETWEEN_CENTRES = new Supports(Support.PINNED, Support.PINNED);

    /** A chuck or a screw at the datum end, nothing at the other. */
    public static final Supports CHUCK = new Supports(Support.FIXED, Support.FREE);

    /** A chuck or a screw at the datum end, the tailstock's centre at the other. */
    public static final Supports CHUCK_AND_TAILSTOCK = new Supports(Support.FIXED, Support.PINNED);

    public Supports {
        boolean fixed = start == Support.FIXED || end == Support.FIXED;
        boolean free = start == Support.FREE || end == Support.FREE;
        if (!fixed && free) {
            throw new IllegalArgumentException(
                    "one end must be fixed or both on centres, were %s and %s".formatted(start, end));
        }
    }

    /** {@return the same seen from the other end} */
    public Supports turned() {
        return new Supports(/* start= */ end, /* end= */ start);
    }

    /** {@return whether something bears either end, so that the tailstock can press} */
    public boolean bearsThrust() {
        return start != Support.FREE && end != Support.FREE;
    }

    /** {@return both in words, the start first} */
    public String text() {
        return start == end ? "both ends " + start.text() : "start %s, end %s".formatted(start.text(), end.text());
    }
}
