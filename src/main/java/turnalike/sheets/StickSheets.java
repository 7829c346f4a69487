package turnalike.sheets;

import java.util.List;
import turnalike.drawing.gauge.MarkingStick;
import turnalike.pattern.Pattern;
import turnalike.units.UnitSystem;

/** The full-size marking stick, in strips that fit the paper. */
public final class StickSheets {
    private StickSheets() {}

    /** The stick with pencil lines at its marks. */
    public static Sheet of(Pattern pattern, UnitSystem units, Paper paper) {
        return of(pattern, units, MarkingStick.Edge.LINES, paper);
    }

    /** The stick on landscape pages. Its SVG is the whole stick in one piece. */
    public static Sheet of(Pattern pattern, UnitSystem units, MarkingStick.Edge edge, Paper paper) {
        MarkingStick stick = MarkingStick.of(pattern, units, edge);
        String how = "Full size; figures in %s from the datum end. Cut along the long dashes; %s,"
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
                        List.of(
                                how,
                                "short thick ticks show where to take a diameter (Ø). Lay joint upon joint, line on line."),
                        stick.svg(),
                        stick.datum(),
                        stick.edge(),
                        stick.listPlaces()),
                units,
                paper);
    }
}
