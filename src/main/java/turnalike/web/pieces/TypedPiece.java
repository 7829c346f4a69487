package turnalike.web.pieces;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import turnalike.job.Job;
import turnalike.job.kept.KeptJob;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** What is kept of a piece, as a person would type it into the table. */
final class TypedPiece {
    private static final double SAME_MM = 1e-6;

    private TypedPiece() {}

    /** A piece's figures by column, as they would be typed, and what is kept with it in further columns. */
    static Map<String, String> of(KeptJob kept, String label) {
        return kept.find(label)
                .map(piece -> typed(piece.piece(), kept.text().job()))
                .orElse(Map.of());
    }

    private static Map<String, String> typed(Piece piece, Job job) {
        MassUnit masses = job.tolerances().masses();
        Map<String, String> out = new LinkedHashMap<>(piece.extra());
        piece.measures()
                .figures()
                .forEach((column, figure) -> out.put(
                        column.format(masses),
                        column.isMass()
                                ? thousandths(masses.count(Mass.ofGrams(figure)))
                                : length(Length.ofMm(figure), job.units())));
        return out;
    }

    private static String thousandths(double figure) {
        String text = String.format(Locale.ROOT, "%.3f", figure);
        return text.replaceAll("\\.?0+$", "");
    }

    /** As a person would type it in the job's units and get the same length back: a fraction, else decimals, else with another unit. */
    private static String length(Length length, UnitSystem units) {
        LengthText.Printed fraction = LengthText.print(length, units);
        if (Math.abs(fraction.roundedOff().mm()) < SAME_MM) {
            return fraction.text().replace(" " + units.symbol(), "");
        }
        if (units == UnitSystem.INCH) {
            String decimals =
                    String.format(Locale.ROOT, "%.4f", length.inches()).replaceAll("0$", "");
            boolean same =
                    Math.abs(Length.ofInches(Double.parseDouble(decimals)).mm() - length.mm()) < SAME_MM;
            return same ? decimals : LengthText.printMm(length, 4).text();
        }
        return LengthText.printMm(length, 4).text().replace(" mm", "");
    }
}
