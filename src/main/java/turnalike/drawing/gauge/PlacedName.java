package turnalike.drawing.gauge;

import java.util.List;
import turnalike.drawing.svg.TextLine;

/**
 * A name beside what it names, for whoever cuts the drawing into pages: it belongs on the page that holds what it names.
 *
 * @param xMm where that lies, from the drawing's left edge, in millimetres
 * @param yMm from its top
 * @param places where the name may stand, the best first; at least one
 */
public record PlacedName(double xMm, double yMm, List<TextLine> places) {
    public PlacedName {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a name stands somewhere");
        }
    }

    /**
     * {@return a name that stands for itself, in one place}
     *
     * @param name where it stands
     */
    public static PlacedName of(TextLine name) {
        return new PlacedName(name.xMm(), name.yMm(), List.of(name));
    }
}
