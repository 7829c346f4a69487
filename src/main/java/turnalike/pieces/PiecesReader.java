package turnalike.pieces;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.csv.CsvText;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** Reads a pieces file line by line, gathering everything wrong on the way. */
final class PiecesReader {
    private final CsvText text;
    private final PiecesHeader header;
    private final KeyedFigure keyed;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Long> lineOfLabel = new HashMap<>();

    private PiecesReader(CsvText text, PiecesHeader header, UnitSystem units) {
        this.text = text;
        this.header = header;
        this.keyed = new KeyedFigure(units, header.massUnit());
    }

    static PiecesFile.Read read(String file, UnitSystem units, boolean massNeeded) {
        CsvText text = CsvText.of(file, PiecesFile.LABEL);
        if (text.lines().isEmpty()) {
            Problem empty =
                    new Problem("pieces file", "the file is empty", "give a header line and a line for each piece");
            return new PiecesFile.Read(List.of(), List.of(text.broken().orElse(empty)), List.of(), MassUnit.GRAM);
        }
        CsvText.Line first = text.lines().get(0);
        PiecesHeader header = PiecesHeader.of(first);
        PiecesReader reader = new PiecesReader(text, header, units);
        reader.problems.addAll(header.problems(first.number(), massNeeded));
        if (header.label() >= 0) {
            reader.readLines();
        }
        text.broken().ifPresent(reader.problems::add);
        return new PiecesFile.Read(reader.pieces, reader.problems, header.slips(first.number()), header.massUnit());
    }

    private void readLines() {
        List<CsvText.Line> lines = text.lines().subList(1, text.lines().size());
        if (lines.isEmpty() && text.broken().isEmpty()) {
            problems.add(new Problem("pieces file", "there is a header and no piece", "give a line for each piece"));
        }
        if (lines.size() > PiecesFile.MOST_PIECES) {
            problems.add(new Problem(
                    "pieces file",
                    "%d pieces are more than %d".formatted(lines.size(), PiecesFile.MOST_PIECES),
                    "give one order's pieces at a time"));
            return;
        }
        Optional<Problem> swapped = StrayRows.swapped(lines, header);
        if (swapped.isPresent()) {
            problems.add(swapped.get());
            return; // what each line says besides is wrong for the same reason
        }
        lines.forEach(this::readLine);
    }

    private void readLine(CsvText.Line line) {
        Optional<Problem> stray = StrayRows.of(line, header);
        if (stray.isPresent()) {
            problems.add(stray.get());
            return;
        }
        int found = line.cells().size();
        int wanted = header.names().size();
        if (found != wanted) {
            problems.add(new Problem(
                    "line " + line.number(),
                    "%d %s where the header has %d".formatted(found, found == 1 ? "cell" : "cells", wanted),
                    found > wanted && text.separator() == ','
                            ? "a decimal comma cannot be told from a separator here: write decimal points, or put semicolons between the cells"
                            : "leave a blank cell for what was not measured"));
            return;
        }
        int before = problems.size();
        String label = label(line);
        Measures measures = measures(line);
        Map<String, String> extra = extra(line);
        if (problems.size() == before) {
            pieces.add(new Piece(label, measures, extra));
        }
    }

    private String label(CsvText.Line line) {
        String label = line.cell(header.label()).strip();
        Optional<String> wrong = Optional.empty();
        if (label.isEmpty()) {
            wrong = Optional.of("the piece has no label");
        } else if (label.chars().anyMatch(Character::isISOControl) || label.indexOf(Piece.UNREADABLE_LETTER) >= 0) {
            wrong = Optional.of("the label holds what is not a letter");
        } else if (label.length() > Piece.LONGEST_LABEL) {
            wrong = Optional.of("the label has more than %d letters".formatted(Piece.LONGEST_LABEL));
        }
        wrong.ifPresent(what -> wrong(line, header.label(), what, "give each piece a short label of its own"));
        Long earlier = wrong.isPresent() ? null : lineOfLabel.putIfAbsent(label, line.number());
        if (earlier != null) {
            wrong(
                    line,
                    header.label(),
                    "piece '%s' is already on line %d".formatted(label, earlier),
                    "give each piece a label of its own, or take out the line that is wrong");
        }
        return label;
    }

    private Measures measures(CsvText.Line line) {
        Measures measures = Measures.NONE;
        for (int i = 0; i < header.names().size(); i++) {
            Optional<Column> column = header.column(i);
            String cell = line.cell(i);
            if (column.isEmpty() || cell.isBlank()) {
                continue;
            }
            Parsed<Double> figure = keyed.figure(column.get(), cell);
            if (figure instanceof Parsed.Refused<Double> refused) {
                wrong(line, i, refused.what(), refused.mend());
            } else {
                measures = measures.with(column.get(), figure.get());
            }
        }
        return measures;
    }

    private Map<String, String> extra(CsvText.Line line) {
        Map<String, String> extra = new LinkedHashMap<>();
        for (int i = 0; i < header.names().size(); i++) {
            String cell = line.cell(i);
            if (cell.isBlank()) {
                continue;
            }
            if (header.isExtra(i)) {
                extra.put(header.names().get(i), cell);
            } else if (header.names().get(i).isEmpty()) {
                problems.add(new Problem(
                        "line " + line.number(),
                        "'%s' stands under no column name".formatted(cell),
                        "name the column in the header"));
            }
        }
        return extra;
    }

    private void wrong(CsvText.Line line, int index, String what, String mend) {
        problems.add(new Problem(
                "line %d, column %s".formatted(line.number(), header.names().get(index)), what, mend));
    }
}
