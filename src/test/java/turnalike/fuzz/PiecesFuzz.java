package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import turnalike.pieces.Column;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/** Whatever a pieces table holds is pieces or problems; pieces written are the same pieces when they are read again. */
public final class PiecesFuzz {
    /** A length of many digits, written in inches, may differ in its last one. */
    private static final double SLACK = 1e-14;

    private PiecesFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        for (UnitSystem units : UnitSystem.values()) {
            PiecesFile.Read read = PiecesFile.parseWithoutMass(text, units);
            Fuzz.readable(read.problems());
            Fuzz.readable(PiecesFile.parse(text, units).problems());
            if (read.problems().isEmpty() && !read.pieces().isEmpty()) {
                PiecesFile.Read again = PiecesFile.parseWithoutMass(PiecesFile.format(read.pieces(), units), units);
                Fuzz.require(again.problems().isEmpty(), "a table of ours that we do not read: " + again.problems());
                Fuzz.require(again.pieces().size() == read.pieces().size(), "pieces lost by being written");
                for (int i = 0; i < read.pieces().size(); i++) {
                    Fuzz.require(same(read.pieces().get(i), again.pieces().get(i)), "a piece changed by being written");
                }
            }
        }
    }

    private static boolean same(Piece one, Piece other) {
        Map<Column, Double> figures = one.measures().figures();
        Map<Column, Double> others = other.measures().figures();
        return one.label().equals(other.label())
                && one.extra().equals(other.extra())
                && figures.keySet().equals(others.keySet())
                && figures.entrySet().stream()
                        .allMatch(each -> near(each.getValue(), others.getOrDefault(each.getKey(), Double.NaN)));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= SLACK * Math.max(1, Math.abs(one));
    }
}
