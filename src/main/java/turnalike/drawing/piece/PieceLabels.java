package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.drawing.svg.LengthLabels;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The labels of a full-size drawing: each mark's number and place, and each diameter where it is taken. */
public final class PieceLabels {
    /** A diameter this near a mark is written with it. */
    private static final double SAME_MM = 0.01;

    private final Pattern pattern;
    private final UnitSystem units;
    private final double datumMm;

    private PieceLabels(Pattern pattern, UnitSystem units, double datumMm) {
        this.pattern = pattern;
        this.units = units;
        this.datumMm = datumMm;
    }

    /** In order of place, with the datum end that far along the paper. */
    public static List<LeaderLabels.Flag> of(Pattern pattern, UnitSystem units, double datumMm) {
        return new PieceLabels(pattern, units, datumMm).flags();
    }

    private double x(Length place) {
        return datumMm + place.mm();
    }

    private List<LeaderLabels.Flag> flags() {
        List<Mark> marks = pattern.marks();
        List<DrawnDiameters.Size> sizes = DrawnDiameters.of(pattern);
        List<LeaderLabels.Flag> out = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            while (next < sizes.size()
                    && sizes.get(next).place().mm() < mark.place().mm() - SAME_MM) {
                out.add(sizeAlone(sizes.get(next++), "Ø "));
            }
            boolean here = next < sizes.size() && isAt(sizes.get(next), mark);
            out.add(atMark(i, mark, here ? diameter(sizes.get(next++)) + "   " : ""));
            while (next < sizes.size() && isAt(sizes.get(next), mark)) {
                out.add(sizeAlone(sizes.get(next++), "→ Ø ")); // the far side of a shoulder
            }
        }
        while (next < sizes.size()) {
            out.add(sizeAlone(sizes.get(next++), "Ø "));
        }
        return out;
    }

    private static boolean isAt(DrawnDiameters.Size size, Mark mark) {
        return size.place().minus(mark.place()).abs().mm() <= SAME_MM;
    }

    private String diameter(DrawnDiameters.Size size) {
        return "Ø " + LengthLabels.bare(size.diameter(), units);
    }

    private LeaderLabels.Flag sizeAlone(DrawnDiameters.Size size, String before) {
        return new LeaderLabels.Flag(
                x(size.place()),
                "",
                before + LengthLabels.bare(size.diameter(), units),
                "diameter " + size.diameter().formatBoth(units),
                Map.of("class", "size"));
    }

    /** The label reads upwards, so that what stands last is nearest the mark. */
    private LeaderLabels.Flag atMark(int number, Mark mark, String diameter) {
        return new LeaderLabels.Flag(
                x(mark.place()),
                Integer.toString(number),
                (mark.kind() == Mark.Kind.SHOULDER ? "shoulder   " : "")
                        + diameter
                        + LengthLabels.bare(mark.place(), units),
                "mark %d: %s, %s".formatted(number, mark.label(), mark.place().formatBoth(units)),
                Map.of("class", "mark", "data-mark", Integer.toString(number)));
    }
}
