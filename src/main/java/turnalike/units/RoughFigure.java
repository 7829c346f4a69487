package turnalike.units;

/** A figure with no more digits than are sure. */
public final class RoughFigure {
    private static final int FIGURES = 3;

    private RoughFigure() {}

    /**
     * {@return the nearest number of three figures: 17466 becomes 17500, 84.27 becomes 84.3}
     *
     * @param value finite; zero stays
     */
    public static double of(double value) {
        if (value == 0) {
            return 0;
        }
        double step = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - FIGURES + 1);
        // Divided and multiplied by the whole number where it is one, so that 84.3 is the number nearest to what is
        // written so.
        return step >= 1
                ? Math.rint(value / step) * step
                : Math.rint(value * Math.rint(1 / step)) / Math.rint(1 / step);
    }
}
