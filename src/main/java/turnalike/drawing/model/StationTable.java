package turnalike.drawing.model;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import turnalike.csv.CsvText;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;

/**
 * The piece as a table: how thick it is at every step along it and at every mark. Columns {@code x} (from the datum end), {@code diameter} or
 * {@code side} (across the flats, where it is square), and {@code mark}; at a shoulder stand two rows, the size before it and the size after
 * it. The form is the one that a pattern is traced from.
 */
public final class StationTable {
    /** Below a hundredth of what a caliper tells on wood. */
    private static final int INCH_DECIMALS = 5;

    private static final int MM_DECIMALS = 4;
    private static final double SAME_PLACE_MM = 1e-6;
    private static final double SAME_SIZE_MM = 1e-4;

    private final Pattern pattern;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder(CsvText.row(List.of("x", "diameter", "side", "mark")));

    private StationTable(Pattern pattern, UnitSystem units) {
        this.pattern = pattern;
        this.units = units;
    }

    /** How far apart rows stand where nobody says otherwise: a quarter of an inch, or 5 mm. */
    public static Length usualStep(UnitSystem units) {
        return units == UnitSystem.INCH ? Length.ofInches(0.25) : Length.ofMm(5);
    }

    /** How many rows it would have, those of shoulders not counted twice. */
    public static long rows(Pattern pattern, Length step) {
        return (long) Math.ceil(pattern.length().mm() / step.mm())
                + pattern.marks().size();
    }

    /**
     * The whole text.
     *
     * @param units in which bare numbers are
     * @param step between rows, above zero
     */
    public static String of(Pattern pattern, UnitSystem units, Length step) {
        StationTable table = new StationTable(pattern, units);
        table.places(step).forEach(table::station);
        return table.out.toString();
    }

    /** What stands at each place, empty where no mark is; a step that falls on a mark is one with it. */
    private Map<Double, String> places(Length step) {
        TreeMap<Double, String> out = new TreeMap<>();
        for (Mark mark : pattern.marks()) {
            out.merge(mark.place().mm(), mark.label(), (one, other) -> one + ", " + other);
        }
        double end = pattern.length().mm();
        for (int i = 1; i * step.mm() < end; i++) {
            double place = i * step.mm();
            if (out.subMap(place - SAME_PLACE_MM, place + SAME_PLACE_MM).isEmpty()) {
                out.put(place, "");
            }
        }
        return out;
    }

    private void station(double placeMm, String mark) {
        Outline outline = pattern.outline();
        List<Segment> here = outline.segments().stream()
                .filter(each -> each.start().mm() < placeMm + SAME_PLACE_MM
                        && each.end().mm() > placeMm - SAME_PLACE_MM)
                .toList();
        Segment before = here.get(0);
        Segment after = here.get(here.size() - 1);
        double sizeBefore = 2 * before.curve().radiusMm(placeMm - before.start().mm());
        double sizeAfter = 2 * after.curve().radiusMm(placeMm - after.start().mm());
        row(placeMm, sizeBefore, before.section(), mark);
        if (before.section() != after.section() || Math.abs(sizeBefore - sizeAfter) > SAME_SIZE_MM) {
            row(placeMm, sizeAfter, after.section(), mark);
        }
    }

    private void row(double placeMm, double sizeMm, Section section, String mark) {
        String size = number(sizeMm);
        boolean round = section == Section.ROUND;
        out.append(CsvText.row(List.of(number(placeMm), round ? size : "", round ? "" : size, mark)));
    }

    private String number(double mm) {
        boolean inches = units == UnitSystem.INCH;
        double figure = inches ? Length.ofMm(mm).inches() : mm;
        return PlainNumber.toDecimals(figure, inches ? INCH_DECIMALS : MM_DECIMALS);
    }
}
