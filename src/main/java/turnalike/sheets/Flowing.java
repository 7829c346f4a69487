package turnalike.sheets;

import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Shape;

/** Something that goes down a page and, when the page is full, on to the next. */
interface Flowing {
    /**
     * As much as the room holds; empty when that is nothing worth printing.
     *
     * @param freshPage whether the page is still empty: then something must be given, or nothing ever would be
     */
    Optional<Laid> lay(double roomMm, boolean freshPage);

    /** What was laid, its top left at the origin, and what is left for the next page. */
    record Laid(List<Shape> shapes, double heightMm, Optional<Flowing> rest) {}

    /** Shapes that stay together. */
    static Flowing whole(List<Shape> shapes, double heightMm) {
        return (roomMm, freshPage) -> heightMm <= roomMm || freshPage
                ? Optional.of(new Laid(shapes, heightMm, Optional.empty()))
                : Optional.empty();
    }
}
