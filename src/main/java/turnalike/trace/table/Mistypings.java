package turnalike.trace.table;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Rows that were likely mistyped. One that ten times more or less would put among its neighbours is refused: nobody turns a disc ten
 * times as thick as what stands before and behind it and measures it once. One that merely stands out by more than members do is asked about. What lies
 * within the plausible, as two digits swapped often do, cannot be told and is passed over.
 */
final class Mistypings {
    private static final double[] POINT_MOVED = {0.1, 10, 0.01, 100};
    /** A size beyond its neighbours by so much is no member of one row where a moved decimal point makes it one of them. */
    private static final double FAR_OFF = 4;

    /** By so much a row alone may stand out of others and be passed over. */
    private static final double STANDS_OUT = 2;

    /** With the decimal point moved it lies between its neighbours, or by so much beyond. */
    private static final double BETWEEN = 1.3;

    /** Neighbours that differ by less agree. */
    private static final double AGREE = 1.5;

    /** The last place so many times as far on as all others reach is asked about. */
    private static final double BEYOND = 3;

    private final List<PointRow> rows;
    private final UnitSystem units;
    final List<Problem> problems = new ArrayList<>();
    final List<String> notes = new ArrayList<>();

    private Mistypings(List<PointRow> rows, UnitSystem units) {
        this.rows = rows;
        this.units = units;
    }

    /**
     * Places that break the order in which the others stand and, with the decimal point moved, would keep it.
     *
     * @param rows as they stand in the table
     */
    static Mistypings ofPlaces(List<PointRow> rows, UnitSystem units) {
        Mistypings mistyped = new Mistypings(rows, units);
        for (int i = 1; i + 1 < rows.size(); i++) {
            mistyped.place(i);
        }
        return mistyped;
    }

    /**
     * Diameters that stand out of their neighbours', and a last place far beyond all others.
     *
     * @param rows by place
     */
    static Mistypings ofSizes(List<PointRow> rows, UnitSystem units) {
        Mistypings mistyped = new Mistypings(rows, units);
        for (int i = 0; i < rows.size(); i++) {
            mistyped.size(i);
        }
        mistyped.lastPlace();
        return mistyped;
    }

    private String fine(double mm) {
        return Length.ofMm(mm).formatFine(units);
    }

    private void place(int i) {
        double at = rows.get(i).placeMm();
        double low = Math.min(rows.get(i - 1).placeMm(), rows.get(i + 1).placeMm());
        double high = Math.max(rows.get(i - 1).placeMm(), rows.get(i + 1).placeMm());
        OptionalDouble moved = moved(at, low, high);
        double outside = Math.max(low - at, at - high);
        // Two rows that only changed places: either could be the one astray.
        boolean swapped = outside <= high - low && (isOneAstray(i - 1) || isOneAstray(i + 1));
        if (outside > 0 && moved.isPresent() && isOneAstray(i) && !swapped) {
            problems.add(new Problem(
                    "line %d: x".formatted(rows.get(i).line()),
                    "%s stands between %s and %s"
                            .formatted(
                                    fine(at),
                                    fine(rows.get(i - 1).placeMm()),
                                    fine(rows.get(i + 1).placeMm())),
                    "write %s if the decimal point slipped; if it is right, put the row where it belongs"
                            .formatted(fine(moved.getAsDouble()))));
        }
    }

    private boolean isOneAstray(int astray) {
        List<PointRow> others = new ArrayList<>(rows);
        others.remove(astray);
        boolean rises = true;
        boolean falls = true;
        for (int i = 1; i < others.size(); i++) {
            rises &= others.get(i).placeMm() >= others.get(i - 1).placeMm();
            falls &= others.get(i).placeMm() <= others.get(i - 1).placeMm();
        }
        return rises || falls;
    }

    private static OptionalDouble moved(double value, double low, double high) {
        for (double by : POINT_MOVED) {
            if (low <= value * by && value * by <= high) {
                return OptionalDouble.of(value * by);
            }
        }
        return OptionalDouble.empty();
    }

    private void size(int i) {
        boolean atEnd = i == 0 || i + 1 == rows.size();
        PointRow here = rows.get(i);
        PointRow before = rows.get(i == 0 ? 1 : i - 1);
        PointRow after = rows.get(i + 1 == rows.size() ? i - 1 : i + 1);
        double low = 2 * Math.min(before.radiusMm(), after.radiusMm());
        double high = 2 * Math.max(before.radiusMm(), after.radiusMm());
        double size = 2 * here.radiusMm();
        double times = Math.max(size / high, low / size);
        OptionalDouble moved = moved(size, low / BETWEEN, high * BETWEEN);
        double near = Math.min(Math.abs(here.placeMm() - before.placeMm()), Math.abs(after.placeMm() - here.placeMm()));
        boolean isSteep = Math.max(size - high, low - size) / 2 > near;
        if (times >= FAR_OFF && moved.isPresent() && !atEnd) {
            problems.add(new Problem(
                    "line %d: %s".formatted(here.line(), here.isSquare() ? "side" : "diameter"),
                    "%s stands among %s and %s"
                            .formatted(fine(size), fine(2 * before.radiusMm()), fine(2 * after.radiusMm())),
                    "write %s if the decimal point slipped; if it is right, give two rows of it, where it begins and where it ends"
                            .formatted(fine(moved.getAsDouble()))));
        } else if (atEnd && times >= FAR_OFF && moved.isPresent() && isSteep) {
            notes.add("Line %d: %s at the end, beside %s: is it %s? Look there again."
                    .formatted(here.line(), fine(size), fine(low), fine(moved.getAsDouble())));
        } else if (!atEnd && times > STANDS_OUT && isSteep && high < AGREE * low) {
            notes.add(
                    "Line %d: %s stands alone among %s and %s: a slip? If it is right, a row more on either side of it tells its shape."
                            .formatted(
                                    here.line(), fine(size), fine(2 * before.radiusMm()), fine(2 * after.radiusMm())));
        }
    }

    private void lastPlace() {
        PointRow last = rows.get(rows.size() - 1);
        double before = rows.get(rows.size() - 2).placeMm();
        double others = before - rows.get(0).placeMm();
        OptionalDouble moved = moved(last.placeMm(), before, before + others);
        if (last.placeMm() - before > BEYOND * others && moved.isPresent()) {
            notes.add("Line %d: the place %s lies far beyond %s, the one before it: is it %s? Look there again."
                    .formatted(last.line(), fine(last.placeMm()), fine(before), fine(moved.getAsDouble())));
        }
    }
}
