package turnalike.job.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.csv.CsvText;
import turnalike.job.set.LegsSet;
import turnalike.job.set.Roundness;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.match.Candidate;
import turnalike.match.Seat;
import turnalike.pieces.MassText;
import turnalike.pieces.Piece;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;

/**
 * A placed set as a table for a spreadsheet: a line for each place in order, then the pieces left over, whose place says {@code spare}. It reads
 * as a pieces file too. Angles in degrees, lengths in mm, masses in g or, of a set kept in ounces, in those, as the job's
 * scale would show them.
 */
public final class SetTable implements SetMatch.Cases<List<List<String>>> {
    /** What the file is called that holds it. */
    public static final String FILE = "set.csv";

    private static final String SPARE = "spare";

    private SetTable() {}

    /**
     * {@return the table, its first line the names of its columns; what a spreadsheet would take for a formula is written as text}
     *
     * @param match the set, placed in its frame
     */
    public static String csv(SetMatch match) {
        StringBuilder out = new StringBuilder();
        match.match(new SetTable()).forEach(line -> out.append(CsvText.row(line)));
        return out.toString();
    }

    @Override
    public List<List<String>> wheel(WheelSet set) {
        Optional<Roundness> bored = set.roundness().filter(Roundness::isBored);
        List<List<String>> out = new ArrayList<>();
        out.add(line(
                List.of("place", "piece", set.weighing().unit().column(), "angle_deg"),
                bored.map(each -> "bore_deeper_mm")));
        WeighingScale scale = set.weighing();
        for (Seat seat : set.placement().seats()) {
            Optional<String> deeper =
                    bored.map(each -> millimetres(each.deepenings().get(seat.place() - 1)));
            out.add(line(
                    List.of(
                            Integer.toString(seat.place()),
                            seat.piece().label(),
                            MassText.format(seat.piece().mass(), scale),
                            degrees(seat.angle())),
                    deeper));
        }
        for (Candidate spare : set.placement().spares()) {
            out.add(line(
                    List.of(SPARE, spare.label(), MassText.format(spare.mass(), scale), ""), bored.map(each -> "")));
        }
        return out;
    }

    @Override
    public List<List<String>> row(RowSet set) {
        Optional<List<String>> lengths = Optional.of(set.lengths()).filter(each -> !each.isEmpty());
        List<List<String>> out = new ArrayList<>();
        out.add(line(List.of("place", "piece", set.weighing().unit().column()), lengths.map(each -> "of_length")));
        List<Piece> order = set.inOrder();
        for (int i = 0; i < order.size(); i++) {
            int place = i;
            out.add(line(
                    List.of(Integer.toString(i + 1), order.get(i).label(), mass(order.get(i), set)),
                    lengths.map(each -> each.get(place))));
        }
        set.spares()
                .forEach(spare ->
                        out.add(line(List.of(SPARE, spare.label(), mass(spare, set)), lengths.map(each -> ""))));
        return out;
    }

    @Override
    public List<List<String>> legs(LegsSet set) {
        List<List<String>> out = new ArrayList<>();
        out.add(List.of("place", "piece", set.weighing().unit().column(), "group"));
        int place = 0;
        for (int group = 0; group < set.groups().size(); group++) {
            for (Piece piece : set.groups().get(group)) {
                place++;
                out.add(List.of(Integer.toString(place), piece.label(), mass(piece, set), Integer.toString(group + 1)));
            }
        }
        set.spares().forEach(spare -> out.add(List.of(SPARE, spare.label(), mass(spare, set), "")));
        return out;
    }

    private static List<String> line(List<String> cells, Optional<String> last) {
        List<String> out = new ArrayList<>(cells);
        last.ifPresent(out::add);
        return out;
    }

    private static String mass(Piece piece, SetMatch set) {
        return piece.mass().map(mass -> MassText.format(mass, set.weighing())).orElse("");
    }

    private static String degrees(Angle angle) {
        return plain(angle.degrees());
    }

    private static String millimetres(Length length) {
        return plain(length.mm());
    }

    /** To a thousandth: a table is for people, {@code match.json} has every digit. */
    private static String plain(double figure) {
        return PlainNumber.toDecimals(figure, 3);
    }
}
