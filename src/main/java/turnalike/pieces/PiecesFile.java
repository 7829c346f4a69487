package turnalike.pieces;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/**
 * The pieces file: a table with a header, read as a CSV file or straight off a spreadsheet's clipboard. {@link #parse} and {@link #format}
 * are inverses.
 *
 * <p>Columns are found by name, in any order: {@code piece} (label, unique), {@code mass_g} or {@code mass_oz} (one of them), and as far
 * as measured {@code length}, {@code balance}, {@code d1}, {@code d2}, … at the job's check places and {@code m1}, {@code m2}, … where its
 * marks stand. A blank cell is not measured. Other columns are kept and ignored. Cells stand between commas, semicolons or tabs; a decimal
 * comma is read in the last two, and within quotation marks in the first.
 */
public final class PiecesFile {
    /** The column with the pieces' labels. */
    static final String LABEL = "piece";

    /** The most pieces one file may hold (common practice, no source): more is another table than this one. */
    static final int MOST_PIECES = 10_000;

    private PiecesFile() {}

    /**
     * What came of reading.
     *
     * @param pieces the pieces of the lines that had nothing wrong, in the file's order
     * @param problems everything wrong, in the file's order; when there is any the pieces are not all there
     * @param slips what reads like a mistake in the header; the figures are asked about by {@link Slips}
     * @param massUnit the unit the file has its masses in
     */
    public record Read(List<Piece> pieces, List<Problem> problems, List<Slip> slips, MassUnit massUnit) {
        public Read {
            pieces = List.copyOf(pieces);
            problems = List.copyOf(problems);
            slips = List.copyOf(slips);
        }
    }

    /**
     * {@return the pieces of a file, with everything wrong in it}
     *
     * @param text the file's whole text, or what came off a spreadsheet's clipboard
     * @param units of lengths without a unit
     */
    public static Read parse(String text, UnitSystem units) {
        return PiecesReader.read(text, units, true);
    }

    /**
     * {@return the pieces of a file that need not have a mass column, as a control chart of one diameter is content with}
     *
     * @param text the file's whole text, or what came off a spreadsheet's clipboard
     * @param units of lengths without a unit
     */
    public static Read parseWithoutMass(String text, UnitSystem units) {
        return PiecesReader.read(text, units, false);
    }

    /**
     * Writes a pieces file: masses in grams, lengths as bare numbers in {@code units} (or in mm with the unit where a number of inches
     * would not be read back exactly), lines ended by CR LF as RFC 4180 has it.
     *
     * <p>Reading it with the same units gives the same pieces; a length of many digits may differ by 10⁻¹⁵ mm.
     *
     * @param pieces in the order of the lines
     * @param units inches or millimetres, to read it with again
     * @return the file's whole text, header first
     * @throws IllegalArgumentException when two pieces bear the same label
     */
    public static String format(List<Piece> pieces, UnitSystem units) {
        return write(pieces, units, MassUnit.GRAM, MassText::format);
    }

    /**
     * The same for a person to read, its masses in the job's unit, {@code mass_oz} where it is kept in ounces, and as its scale would show them:
     * {@link MassText#format(turnalike.units.Mass, WeighingScale)}.
     *
     * @param pieces in the order of the lines
     * @param units inches or millimetres, to read it with again
     * @param scale of the job; the column is named after its unit
     * @return the file's whole text, header first
     * @throws IllegalArgumentException when two pieces bear the same label
     */
    public static String format(List<Piece> pieces, UnitSystem units, WeighingScale scale) {
        return write(pieces, units, scale.unit(), mass -> MassText.format(mass, scale));
    }

    private static String write(List<Piece> pieces, UnitSystem units, MassUnit unit, Function<Mass, String> masses) {
        if (Set.copyOf(pieces.stream().map(Piece::label).toList()).size() != pieces.size()) {
            throw new IllegalArgumentException("two pieces bear the same label");
        }
        return PiecesWriter.write(pieces, units, unit.column(), masses);
    }

    /**
     * {@return whether a column of that name holds figures: a mass, a length, a diameter; the label and extra columns hold text}
     *
     * @param column its name as the header has it
     */
    public static boolean isFigure(String column) {
        return Column.find(column).isPresent();
    }
}
