package turnalike.drawing.svg;

/** Numbers as the pictures carry them: millimetres to three decimals with a full stop, trailing zeros dropped. */
public final class SvgNumbers {
    private SvgNumbers() {}

    /** A micrometre is a tenth of what a printer can set, and small enough that rounding never shows in a reread drawing. */
    public static String mm(double value) {
        return mm(new StringBuilder(), value).toString();
    }

    /** Writes it at the end of what is there. */
    public static StringBuilder mm(StringBuilder out, double value) {
        if (!(Math.abs(value) < 1e9)) {
            throw new IllegalArgumentException("a drawing's number must be finite and small, was %s".formatted(value));
        }
        long thousandths = Math.round(value * 1000);
        long whole = Math.abs(thousandths) / 1000;
        long rest = Math.abs(thousandths) % 1000;
        out.append(thousandths < 0 ? "-" : "").append(whole);
        if (rest != 0) {
            out.append('.').append(rest / 100);
            if (rest % 100 != 0) {
                out.append(rest / 10 % 10);
                if (rest % 10 != 0) {
                    out.append(rest % 10);
                }
            }
        }
        return out;
    }
}
