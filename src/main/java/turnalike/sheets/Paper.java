package turnalike.sheets;

import turnalike.units.Length;

/** A sheet of paper as it lies in the printer. */
public enum Paper {
    /** 210 × 297 mm (ISO 216; from memory). */
    A4(210, 297),
    /** US Letter, 8½ × 11 in (ANSI/ASME Y14.1, size A; from memory). */
    LETTER(8.5 * Length.MM_PER_INCH, 11 * Length.MM_PER_INCH);

    /**
     * The border nothing is printed in, 12 mm: common printers leave 4 to 6 mm white, a few along one edge up to 12 (common practice, no
     * source).
     */
    public static final Length MARGIN = Length.ofMm(12);

    private final double shortMm;
    private final double longMm;

    Paper(double shortMm, double longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** One way of holding a sheet. */
    public record Format(Length width, Length height) {}

    public Format portrait() {
        return new Format(Length.ofMm(shortMm), Length.ofMm(longMm));
    }

    public Format landscape() {
        return new Format(Length.ofMm(longMm), Length.ofMm(shortMm));
    }

    /** What a person calls it. */
    public String label() {
        return this == A4 ? "A4" : "US Letter";
    }
}
