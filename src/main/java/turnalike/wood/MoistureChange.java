package turnalike.wood;

/**
 * Wood going from one moisture to another, drying or wetting.
 *
 * @param from before
 * @param to after; the same as before for no change
 */
public record MoistureChange(Moisture from, Moisture to) {
    /**
     * {@return the change between two moistures in percent of the ovendry mass}
     *
     * @param fromPct before
     * @param toPct after
     */
    public static MoistureChange ofPct(double fromPct, double toPct) {
        return new MoistureChange(Moisture.ofPct(fromPct), Moisture.ofPct(toPct));
    }

    /** Whether both ends lie from {@code lowPct} to {@code highPct}, ends included. */
    boolean within(double lowPct, double highPct) {
        return Math.min(from.pct(), to.pct()) >= lowPct && Math.max(from.pct(), to.pct()) <= highPct;
    }
}
