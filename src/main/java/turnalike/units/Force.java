package turnalike.units;

import java.util.Locale;

/**
 * A force.
 *
 * @param newtons finite and above zero, else {@link IllegalArgumentException}
 */
public record Force(double newtons) implements Comparable<Force> {
    /** What a pound weighs, in newtons: 0.45359237 kg (international pound, 1959; from memory) under 9.80665 m/s². */
    private static final double PER_POUND_FORCE = 0.45359237 * 9.80665;

    public Force {
        if (!(newtons > 0) || !Double.isFinite(newtons)) {
            throw new IllegalArgumentException("force must be above zero and finite, was %s N".formatted(newtons));
        }
    }

    /**
     * {@return the force of that many newtons}
     *
     * @param newtons finite and above zero, else {@link IllegalArgumentException}
     */
    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    /**
     * {@return as it is told where inches are, {@code 4.5 lbf (20 N)}, and where millimetres are, {@code 20 N}} Below ten of either a decimal is
     * told.
     *
     * @param units of the job
     */
    public String format(UnitSystem units) {
        String plain = figure(newtons) + " N";
        return units == UnitSystem.INCH ? "%s lbf (%s)".formatted(figure(newtons / PER_POUND_FORCE), plain) : plain;
    }

    /**
     * {@return the same to two figures, for what is no surer than a wood's stiffness, from 1000 N on in thousands of them: {@code 110 lbf (470 N)},
     * {@code 11000 lbf (47 kN)}}
     *
     * @param units of the job
     */
    public String formatRoughly(UnitSystem units) {
        String plain = newtons < 995
                ? PlainNumber.toFigures(newtons, 2) + " N"
                : PlainNumber.toFigures(newtons / 1000, 2) + " kN";
        return units == UnitSystem.INCH
                ? "%s lbf (%s)".formatted(PlainNumber.toFigures(newtons / PER_POUND_FORCE, 2), plain)
                : plain;
    }

    /** Whole where it is whole or large: 20, 1.5, 251. */
    private static String figure(double value) {
        String text = String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
