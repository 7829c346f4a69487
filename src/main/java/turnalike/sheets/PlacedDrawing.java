package turnalike.sheets;

import java.util.Optional;
import turnalike.drawing.svg.Svg;
import turnalike.units.Length;

/**
 * A drawing on a page at its true size, whole or a stretch of it.
 *
 * @param right from the paper's left edge to the drawing's own left edge; negative when a later stretch of a long drawing is shown
 * @param down from the paper's top edge to the drawing's own top edge
 * @param window the part that shows, in the drawing's own x; all of it when empty
 * @param tall the part that shows in its own y; likewise
 */
record PlacedDrawing(Svg drawing, Length right, Length down, Optional<Window> window, Optional<Window> tall) {
    /** A stretch of a drawing, from one x to another. */
    record Window(Length from, Length to) {
        Window {
            if (from.compareTo(to) >= 0) {
                throw new IllegalArgumentException(
                        "a window must end after it starts, was %s to %s mm".formatted(from.mm(), to.mm()));
            }
        }
    }

    /** What shows of it, in millimetres from the paper's left edge; everything when there is no window. */
    Shown shown() {
        return window.map(each -> new Shown(
                        right.plus(each.from()).mm(), right.plus(each.to()).mm()))
                .orElse(Shown.ALL);
    }

    /** A stretch of the page across, in millimetres. */
    record Shown(double fromMm, double toMm) {
        static final Shown ALL = new Shown(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        boolean holds(double startMm, double endMm) {
            return startMm >= fromMm && endMm <= toMm;
        }
    }

    static PlacedDrawing whole(Svg drawing, Length right, Length down) {
        return new PlacedDrawing(drawing, right, down, Optional.empty(), Optional.empty());
    }

    /** The stretch of a drawing with its own left edge at {@code right}. */
    static PlacedDrawing part(Svg drawing, Window window, Length right, Length down) {
        return new PlacedDrawing(drawing, right.minus(window.from()), down, Optional.of(window), Optional.empty());
    }

    /** A rectangle of a drawing that bears no words, its own upper left corner at {@code right} and {@code down}. */
    static PlacedDrawing tile(Svg drawing, Window across, Window tall, Length right, Length down) {
        return new PlacedDrawing(
                drawing, right.minus(across.from()), down.minus(tall.from()), Optional.of(across), Optional.of(tall));
    }
}
