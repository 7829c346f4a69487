package turnalike.sheets;

import java.util.List;
import turnalike.drawing.gauge.MarkingStick;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The full-size marking stick, in strips that fit the paper. */
final class StickSheets {
    /** What is read off a rule: half a millimetre (common practice, no source). */
    static final Length WITHIN = Length.ofMm(0.5);

    private StickSheets() {}

    /** The stick with pencil lines at its marks. */
    public static Sheet of(Pattern pattern, UnitSystem units, Paper paper) {
        return of(pattern, units, MarkingStick.Edge.LINES, WITHIN, paper);
    }

    /**
     * The stick on as few pages as they take. Its SVG is the whole stick in one piece.
     *
     * @param within how far the joined strips may be out from end to end
     */
    public static Sheet of(Pattern pattern, UnitSystem units, MarkingStick.Edge edge, Length within, Paper paper) {
        MarkingStick stick = MarkingStick.of(pattern, units, edge);
        String how =
                ("Full size; figures in %s from the datum end. Cut along the long dashes; %s, short thick ticks show where to"
                                + " take a diameter (Ø).")
                        .formatted(
                                units == UnitSystem.INCH ? "inches" : "millimetres",
                                switch (edge) {
                                    case LINES -> "lines that reach the edge are marks";
                                    case NOTCHES -> "cut the notches, which hold the pencil at the marks";
                                });
        return LongSheets.of(
                new LongSheets.Subject(
                        "marking-stick",
                        "Marking stick: " + pattern.name(),
                        List.of(how),
                        stick.svg(),
                        stick.withoutNames(),
                        stick.datum(),
                        stick.edge(),
                        stick.listPlaces(),
                        stick.names(),
                        stick.nameLine(),
                        pattern.length(),
                        within),
                units,
                paper);
    }
}
