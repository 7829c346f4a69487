package turnalike.trace.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Reads a table of measured points: {@code x} (the place along the piece) and {@code diameter}, or {@code side} across the flats where it
 * is square. Two rows at one place are a shoulder, in the order in which they stand. The first place is the start end, whatever its figure.
 */
public final class PointTable {
    /** The fewest rows that say anything of a shape. */
    public static final int FEWEST = 5;

    /** The most rows that are read. */
    public static final int MOST = 500;

    /** Of readings that stray by so much of the thickest diameter no shape is told; likelier it is a unit mistaken. */
    private static final double MOST_ERROR = 0.25;

    private static final Length SUREST = Length.ofMm(0.03);

    private final UnitSystem units;
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private PointTable(UnitSystem units) {
        this.units = units;
    }

    /**
     * What came of reading.
     *
     * @param original empty when anything is wrong
     * @param problems everything wrong, in order, each with its line
     * @param notes what was assumed or set right, each a sentence
     */
    public record Read(Optional<Original> original, List<Problem> problems, List<String> notes) {
        public Read {
            problems = List.copyOf(problems);
            notes = List.copyOf(notes);
        }
    }

    /**
     * {@return the original that a table tells of, or what is wrong with it}
     *
     * @param text of the CSV file
     * @param units of bare numbers
     * @param error how far a diameter was measured to be off, one standard deviation, above zero
     */
    public static Read read(String text, UnitSystem units, Length error) {
        PointTable table = new PointTable(units);
        List<PointRow> points = PointRows.read(text, units, table.problems);
        if (table.problems.isEmpty()) {
            table.problems.addAll(Mistypings.ofPlaces(points, units).problems);
        }
        if (table.problems.isEmpty()) {
            points = table.inOrder(points);
        }
        if (table.problems.isEmpty()) {
            table.asked(points, error);
        }
        if (!table.problems.isEmpty()) {
            return new Read(Optional.empty(), table.problems, List.of());
        }
        return new Read(Optional.of(table.original(points, error)), List.of(), table.notes);
    }

    private void problem(String where, String what, String mend) {
        problems.add(new Problem(where, what, mend));
    }

    /** What the rows say cannot well be, though each alone might. */
    private void asked(List<PointRow> points, Length error) {
        double thickest = points.stream().mapToDouble(PointRow::radiusMm).max().orElse(0) * 2;
        if (error.mm() > MOST_ERROR * thickest) {
            problem(
                    "--error",
                    "%s is more than a quarter of the thickest diameter, %s"
                            .formatted(
                                    error.formatFine(units),
                                    Length.ofMm(thickest).formatFine(units)),
                    "say by how much a single reading may be off, and in which unit");
        }
        Mistypings mistyped = Mistypings.ofSizes(points, units);
        problems.addAll(mistyped.problems);
        notes.addAll(0, mistyped.notes);
    }

    /** By place; rows at one place stay as they stand. */
    private List<PointRow> inOrder(List<PointRow> points) {
        List<PointRow> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(PointRow::placeMm));
        if (!sorted.equals(points)) {
            notes.add(
                    isFalling(points)
                            ? "The rows run from the far end back; they were turned round, and places still count from the least."
                            : "The rows were not in order of place and were sorted; rows at one place were left as they stand.");
        }
        if (isFalling(points)) {
            sorted = new ArrayList<>(points);
            java.util.Collections.reverse(sorted);
        }
        withoutDoubles(sorted);
        for (int i = 2; i < sorted.size(); i++) {
            if (sorted.get(i).placeMm() == sorted.get(i - 2).placeMm()) {
                problem(
                        "line " + sorted.get(i).line(),
                        "is the third row at one place",
                        "give two at a shoulder: the size before it and the size after it");
            }
        }
        if (sorted.size() < FEWEST) {
            problem(
                    "table",
                    "has %d different rows".formatted(sorted.size()),
                    "give %d to %d, one for each place".formatted(FEWEST, MOST));
            return sorted;
        }
        double first = sorted.get(0).placeMm();
        double last = sorted.get(sorted.size() - 1).placeMm();
        if (last - first < 1) {
            problem("table", "all places lie within 1 mm", "check the column x, and the unit");
        }
        return sorted;
    }

    private void withoutDoubles(List<PointRow> sorted) {
        for (int i = sorted.size() - 1; i > 0; i--) {
            PointRow one = sorted.get(i - 1);
            PointRow other = sorted.get(i);
            if (one.isSameAs(other)) {
                sorted.remove(i);
                notes.add("Line %d says the same as line %d and is left out."
                        .formatted(Math.max(one.line(), other.line()), Math.min(one.line(), other.line())));
            }
        }
    }

    private static boolean isFalling(List<PointRow> points) {
        boolean falls = points.get(0).placeMm() > points.get(points.size() - 1).placeMm();
        for (int i = 1; i < points.size(); i++) {
            falls &= points.get(i).placeMm() <= points.get(i - 1).placeMm();
        }
        return falls;
    }

    private Original original(List<PointRow> points, Length error) {
        double start = points.get(0).placeMm();
        double length = points.get(points.size() - 1).placeMm() - start;
        if (start > 0) {
            notes.add("The first place, %s, is taken as the start end: everything is counted from there."
                    .formatted(Length.ofMm(start).formatBoth(units)));
        }
        List<Profile.Station> stations = new ArrayList<>();
        for (PointRow point : points) {
            stations.add(new Profile.Station(
                    Length.ofMm(Math.min(length, point.placeMm() - start)),
                    Length.ofMm(point.radiusMm()),
                    error.times(0.5)));
        }
        Profile profile = new Profile(Length.ofMm(length), stations, List.of());
        return new Original(profile, squares(points, start), SUREST);
    }

    /** From the first row of flats to the last of a run; where no shoulder's second row says where it ends, halfway to the next row. */
    private List<Profile.Stretch> squares(List<PointRow> points, double start) {
        List<Profile.Stretch> out = new ArrayList<>();
        int i = 0;
        while (i < points.size()) {
            if (!points.get(i).isSquare()) {
                i++;
                continue;
            }
            int first = i;
            while (i + 1 < points.size() && points.get(i + 1).isSquare()) {
                i++;
            }
            double from = first == 0 ? points.get(0).placeMm() : between(points.get(first - 1), points.get(first));
            double to = i + 1 == points.size() ? points.get(i).placeMm() : between(points.get(i), points.get(i + 1));
            if (to > from) {
                out.add(new Profile.Stretch(Length.ofMm(from - start), Length.ofMm(to - start)));
            }
            i++;
        }
        return out;
    }

    private double between(PointRow before, PointRow after) {
        double middle = (before.placeMm() + after.placeMm()) / 2;
        if (after.placeMm() > before.placeMm()) {
            notes.add(String.format(
                    Locale.ROOT,
                    "Between lines %d and %d the piece turns from %s; where is not told, so halfway is taken, at %s."
                            + " Two rows at the shoulder's place say it.",
                    before.line(),
                    after.line(),
                    before.isSquare() ? "square to round" : "round to square",
                    Length.ofMm(middle).formatBoth(units)));
        }
        return middle;
    }
}
