package turnalike.units;

/**
 * A length or a place along the piece, in millimetres. May be negative as a difference; whatever takes a size says so itself.
 * Nothing is rounded here: rounding is printing, see {@link LengthText}.
 *
 * @param mm millimetres; finite, else {@link IllegalArgumentException}
 */
public record Length(double mm) implements Comparable<Length> {
    /** Millimetres in an inch, exact by definition (international inch, 1959; from memory). */
    public static final double MM_PER_INCH = 25.4;

    /** A fraction of an inch stands for what is as near to it as this. */
    private static final double FRACTION_MM = 1e-6;

    /** So much of a step of a rule is rounding. */
    private static final double STEP_SLACK = 1e-6;

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** The longest length a job may hold, 20 m: beyond it a slip of the pen is likelier than a spindle. */
    public static final Length LONGEST = new Length(20_000);

    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("length must be finite, was %s mm".formatted(mm));
        }
        mm += 0.0; // -0.0 becomes 0.0, so equal lengths are equal records
    }

    /**
     * {@return the length of that many millimetres}
     *
     * @param mm finite, else {@link IllegalArgumentException}
     */
    public static Length ofMm(double mm) {
        return new Length(mm);
    }

    /**
     * {@return the length of that many inches, at exactly 25.4 mm each}
     *
     * @param inches finite, else {@link IllegalArgumentException}
     */
    public static Length ofInches(double inches) {
        return new Length(inches * MM_PER_INCH);
    }

    /** {@return the length in inches, unrounded} */
    public double inches() {
        return mm / MM_PER_INCH;
    }

    /**
     * {@return the two lengths end to end}
     *
     * @param other what is added
     */
    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    /**
     * {@return this length less the other; below zero when the other is longer}
     *
     * @param other what is taken away
     */
    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    /**
     * {@return this length that many times over, unrounded}
     *
     * @param factor a plain number of either sign; the product must be finite
     */
    public Length times(double factor) {
        return new Length(mm * factor);
    }

    /** {@return the same length without its sign} */
    public Length abs() {
        return new Length(Math.abs(mm));
    }

    /** {@return whether it is above zero} */
    public boolean isPositive() {
        return mm > 0;
    }

    /**
     * Reads a length in the whole grammar of a job file, see {@link LengthText}.
     *
     * @param text what a person typed
     * @param bareUnits the units of a number that carries none
     * @return the length; or refused, with what is wrong and how a length is written
     */
    public static Parsed<Length> parse(String text, UnitSystem bareUnits) {
        return LengthText.parse(text, bareUnits);
    }

    /**
     * {@return this length as a turner in that system writes it, with its unit, rounded to the nearest 1/64 in or 0.1 mm}
     *
     * @param units the units to print in
     */
    public String format(UnitSystem units) {
        return LengthText.print(this, units).text();
    }

    /**
     * In both systems, the first one's figure in front: {@code 14 3/8 in (365.1 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatBoth(UnitSystem first) {
        return format(first) + " (" + format(first.other()) + ")";
    }

    /**
     * A size of a drawing: fine in the first system, as somebody wrote it, and in the other as a rule shows it, {@code 22.25 mm (7/8 in)}.
     * What is under a millimetre is a difference, and fine in both.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatWrittenBoth(UnitSystem first) {
        return Math.abs(mm) < 1 ? formatFineBoth(first) : formatFine(first) + " (" + format(first.other()) + ")";
    }

    /**
     * In both systems as a rule shows it and never above the length, for room that must not be said too large: {@code 5/8 in (16 mm)}. Less
     * than a step of the rule is told as a caliper tells it.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatDownBoth(UnitSystem first) {
        return toStep(first, false) + " (" + toStep(first.other(), false) + ")";
    }

    /**
     * The same and never below the length, for what must not be said too small: {@code 2 35/64 in (64.7 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatUpBoth(UnitSystem first) {
        return toStep(first, true) + " (" + toStep(first.other(), true) + ")";
    }

    private String toStep(UnitSystem units, boolean up) {
        double step = units == UnitSystem.INCH ? MM_PER_INCH / 64 : 0.1;
        double steps = mm / step;
        // What stands on the step but for rounding is not moved to the next.
        double whole = up ? Math.ceil(steps - STEP_SLACK) : Math.floor(steps + STEP_SLACK);
        return whole == 0 ? formatFine(units) : ofMm(step * whole).format(units);
    }

    /**
     * Where nothing hangs on a hair, such as a rest's place: to the nearest quarter of an inch or five millimetres, {@code about 17 1/4 in}.
     *
     * @param units the units to print in
     * @return the figure with its unit
     */
    public String formatRoughly(UnitSystem units) {
        double step = units == UnitSystem.INCH ? MM_PER_INCH / 4 : 5;
        return "about " + ofMm(step * Math.rint(mm / step)).format(units);
    }

    /**
     * As a caliper tells it, in hundredths of a millimetre or thousandths of an inch: {@code 0.2 mm}, {@code 0.008 in}, {@code 1/64 in}.
     *
     * @param units the units to print in
     * @return the figure with its unit
     */
    public String formatFine(UnitSystem units) {
        return LengthText.printFine(this, units, 2);
    }

    /**
     * {@return a decimal finer still, to tell two lengths apart that differ little}
     *
     * @param units the units to print in
     */
    public String formatFinest(UnitSystem units) {
        return LengthText.printFine(this, units, 3);
    }

    /**
     * Fine in the first system, the other beside: {@code 0.008 in (0.2 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatFineBoth(UnitSystem first) {
        return formatFine(first) + " (" + formatFine(first.other()) + ")";
    }

    /**
     * Fine in both systems and never below the length, for what must not be said too small: {@code 0.75 mm (0.03 in)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatFineUpBoth(UnitSystem first) {
        return formatFineUp(first) + " (" + formatFineUp(first.other()) + ")";
    }

    /**
     * As a caliper tells it, the last digit one up where it would tell less than the length.
     *
     * @param units the units to print in
     * @return the figure with its unit
     */
    public String formatFineUp(UnitSystem units) {
        String told = formatFine(units);
        Length half = units == UnitSystem.METRIC ? ofMm(0.005) : ofInches(0.0005);
        boolean less = parse(told, units).get().mm() < mm - FRACTION_MM;
        return less ? plus(half).formatFine(units) : told;
    }

    /**
     * What was measured, or reckoned of what was measured: fine, and never told as nothing, which no caliper can say: {@code under 0.001 in}.
     *
     * @param units the units to print in
     * @return the figure with its unit
     */
    public String formatMeasured(UnitSystem units) {
        return LengthText.printMeasured(this, units, 2);
    }

    /**
     * The same, the other system beside: {@code under 0.001 in (0.01 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatMeasuredBoth(UnitSystem first) {
        return LengthText.printMeasuredBoth(this, first, 2);
    }

    /**
     * A decimal finer still, to tell two of them apart that differ little: {@code under 0.0001 in (0.001 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatMeasuredFinestBoth(UnitSystem first) {
        return LengthText.printMeasuredBoth(this, first, 3);
    }

    /**
     * What was reckoned and stands below others like it: all its decimals, a hundredth of a millimetre or a thousandth of an inch, and never told as
     * nothing: {@code 0.20 mm}, {@code under 0.001 in}.
     *
     * @param units the units to print in
     * @return the figure with its unit
     */
    public String formatSteady(UnitSystem units) {
        return LengthText.printSteady(this, units, 2);
    }

    /**
     * The same, the other system beside: {@code 0.20 mm (0.008 in)}, {@code under 0.01 mm (0.001 in)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatSteadyBoth(UnitSystem first) {
        return LengthText.printSteadyBoth(this, first, 2);
    }

    /**
     * Finest in the first system, the other beside: {@code 1 1/8 in (28.575 mm)}.
     *
     * @param first the units whose figure stands first
     * @return both figures, each with its unit
     */
    public String formatFinestBoth(UnitSystem first) {
        return formatFinest(first) + " (" + formatFinest(first.other()) + ")";
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }
}
