package turnalike.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import turnalike.csv.CsvText;
import turnalike.units.MassUnit;
import turnalike.units.Problem;

/**
 * The header of a pieces file.
 *
 * @param names the columns' names as written, blank where there was none
 * @param label the index of the column of labels, or -1
 * @param massUnit the unit of the masses
 * @param line where it stands in the text, from 1
 */
record PiecesHeader(List<String> names, int label, MassUnit massUnit, long line) {
    private static final Pattern ALMOST = Pattern.compile("(?:d|dia|diam|diameter|m|mark)[ _-]*\\d+");
    private static final Set<String> MASS_WORDS = Set.of("mass", "weight", "wt", "grams", "g", "oz", "ounces");

    PiecesHeader {
        names = List.copyOf(names);
    }

    static PiecesHeader of(CsvText.Line line) {
        List<String> names = line.cells().stream().map(String::strip).toList();
        boolean ounces = names.stream().anyMatch(MassUnit.OUNCE.column()::equalsIgnoreCase);
        List<String> plain =
                names.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
        return new PiecesHeader(
                names, plain.indexOf(PiecesFile.LABEL), ounces ? MassUnit.OUNCE : MassUnit.GRAM, line.number());
    }

    /** The column a place in the line belongs to; empty for the label and for extra columns. */
    Optional<Column> column(int index) {
        return Column.find(names.get(index));
    }

    /** The index of the column of masses, if there is one. */
    Optional<Integer> mass() {
        return IntStream.range(0, names.size())
                .filter(i -> column(i).filter(Column::isMass).isPresent())
                .boxed()
                .findFirst();
    }

    boolean isExtra(int index) {
        return !names.get(index).isEmpty() && !Piece.isKnown(names.get(index));
    }

    /** Everything wrong with the header on that line. */
    List<Problem> problems(long lineNumber, boolean massNeeded) {
        String where = "line " + lineNumber;
        List<Problem> problems = new ArrayList<>();
        if (label < 0) {
            problems.add(new Problem(
                    where,
                    "the header has no column 'piece'",
                    "name the columns in the first line, like piece,mass_g,length,d1"));
            if (names.stream().noneMatch(Piece::isKnown)) {
                return problems; // no header at all: one line says it
            }
        }
        Set<String> seen = new HashSet<>();
        Map<String, String> twice = new TreeMap<>();
        for (String name : names) {
            if (!name.isEmpty() && !seen.add(name.toLowerCase(Locale.ROOT))) {
                twice.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
            }
        }
        twice.values()
                .forEach(name -> problems.add(new Problem(
                        where + ", column " + name,
                        "two columns bear this name",
                        "rename one of them or take it out")));
        boolean grams = seen.contains(MassUnit.GRAM.column());
        boolean ounces = seen.contains(MassUnit.OUNCE.column());
        if (grams && ounces) {
            problems.add(
                    new Problem(where, "there are masses in grams and in ounces", "keep mass_g or mass_oz, not both"));
        } else if (massNeeded && !grams && !ounces) {
            problems.add(
                    new Problem(where, "the header has no column of masses", "name it mass_g, or mass_oz for ounces"));
        }
        return problems;
    }

    /** Names that read like a column of ours and are not, so that the whole column would be ignored. */
    List<Slip> slips(long lineNumber) {
        List<Slip> slips = new ArrayList<>();
        for (String name : names) {
            String plain = name.toLowerCase(Locale.ROOT);
            boolean almost = MASS_WORDS.contains(plain) || ALMOST.matcher(plain).matches();
            if (almost && !Piece.isKnown(name)) {
                slips.add(Slip.ofHeader("line " + lineNumber + ", column " + name, MASS_WORDS.contains(plain)));
            }
        }
        return slips;
    }
}
