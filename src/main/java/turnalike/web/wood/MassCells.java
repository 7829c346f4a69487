package turnalike.web.wood;

import java.util.LinkedHashMap;
import java.util.Map;
import turnalike.job.edit.ShopTable;
import turnalike.job.kept.JobText;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.PlainNumber;

/**
 * The weights of the blanks' table, which a job keeps in grams, as they are seen and typed in the unit of the job's scale.
 *
 * @param masses that unit
 */
record MassCells(MassUnit masses) {
    private static final int DECIMALS = 3;

    static MassCells of(JobText text) {
        return new MassCells(text.job().tolerances().masses());
    }

    /** {@return the row with its weights in that unit} */
    ShopTable.Row seen(ShopTable.Row row) {
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        cells.replaceAll((column, grams) -> isMass(column) ? seen(grams) : grams);
        return new ShopTable.Row(row.number(), row.text(), cells);
    }

    /**
     * {@return what was typed, each bare weight with that unit; one that stayed as it was seen is what was kept, so that no weight walks by
     *     being looked at}
     *
     * @param kept the row as it is kept; without cells for a new one
     * @param typed by column
     */
    Map<String, String> kept(Map<String, String> kept, Map<String, String> typed) {
        Map<String, String> out = new LinkedHashMap<>(typed);
        out.replaceAll((column, text) -> {
            String plain = text.strip();
            if (masses == MassUnit.GRAM || !isMass(column) || plain.isEmpty()) {
                return text;
            }
            String was = kept.getOrDefault(column, "");
            if (plain.equals(seen(was))) {
                return was;
            }
            return Character.isLetter(plain.codePointBefore(plain.length())) ? text : plain + " " + masses.symbol();
        });
        return out;
    }

    private String seen(String grams) {
        if (masses == MassUnit.GRAM || !grams.matches("\\d+(\\.\\d+)?")) {
            return grams;
        }
        return PlainNumber.toDecimals(masses.count(Mass.ofGrams(Double.parseDouble(grams))), DECIMALS);
    }

    private static boolean isMass(String column) {
        return column.equals("mass_g") || column.equals("finished_g");
    }
}
