package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.units.Article;
import turnalike.units.Length;

/**
 * The order of pieces along a rail, from its first end; as many lines as it needs, each read from left to right. Few places are drawn as
 * turned pieces between rails, many as a strip of labels.
 *
 * <p>Legs in groups are drawn the same way, each group a line of its own between closed rails.
 *
 * @param places in order, at least one
 * @param inGroup how many make one group; without it all are one row
 */
public record RowDrawing(List<Place> places, OptionalInt inGroup) implements PlacesDrawing {
    /** Beyond so many places only labels are drawn. */
    private static final int MOST_BODIES = 60;

    private static final double SIDE_MM = 4;
    private static final double BODY_MM = 13;
    private static final double RAIL_MM = 1.8;
    private static final double LONGEST_LABEL_MM = 22;

    public RowDrawing {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a row needs at least one place");
        }
        if (inGroup.isPresent() && (inGroup.getAsInt() < 1 || places.size() % inGroup.getAsInt() != 0)) {
            throw new IllegalArgumentException(
                    "%d places make no groups of %d".formatted(places.size(), inGroup.getAsInt()));
        }
    }

    /** One row along a rail. */
    public static RowDrawing along(List<Place> places) {
        return new RowDrawing(places, OptionalInt.empty());
    }

    /** Groups of legs; the places of the first group come first. */
    public static RowDrawing ofGroups(List<Place> places, int inGroup) {
        return new RowDrawing(places, OptionalInt.of(inGroup));
    }

    /** How one line of the row is laid. */
    private record Cells(Lettering piece, Lettering mass, double widthMm, int inLine, boolean bodies, boolean masses) {
        double heightMm() {
            double words = 3.8 + piece.sizeMm() + (masses ? mass.sizeMm() + 0.6 : 0);
            return words + (bodies ? BODY_MM + 5 : 5);
        }
    }

    @Override
    public Svg svg(Length width) {
        if (width.mm() < 60) {
            throw new IllegalArgumentException("a row needs 60 mm or more, was %s mm".formatted(width.mm()));
        }
        Cells cells = cells(width.mm() - 2 * SIDE_MM);
        List<Shape> out = new ArrayList<>();
        int lines = (places.size() + cells.inLine() - 1) / cells.inLine();
        for (int line = 0; line < lines; line++) {
            int from = line * cells.inLine();
            int to = Math.min(places.size(), from + cells.inLine());
            out.add(Group.at(SIDE_MM, line * cells.heightMm(), line(cells, from, to)));
        }
        String caption = caption(lines);
        double y = lines * cells.heightMm() + 3;
        for (String line : TextWrap.wrap(caption, Lettering.SMALL, width.mm() - 2 * SIDE_MM)) {
            out.add(TextLine.of(Lettering.SMALL, SIDE_MM, y, line));
            y += 4.2;
        }
        return new Svg(width, Length.ofMm(y - 2.2), (inGroup.isPresent() ? "legs: " : "row: ") + caption, out);
    }

    private String caption(int lines) {
        if (inGroup.isPresent()) {
            int size = inGroup.getAsInt();
            return "%s of %d, numbered group·leg%s"
                    .formatted(
                            Article.count(places.size() / size, "group"),
                            size,
                            lines * size == places.size() ? "; each line is a group." : ".");
        }
        return "%s from the first end of the row%s"
                .formatted(
                        Article.count(places.size(), "place"),
                        lines > 1 ? "; each line goes on from the one above." : ".");
    }

    /** {@inheritDoc} In groups {@code 2·3} is the third leg of the second. */
    @Override
    public String numberText(Place place) {
        if (inGroup.isEmpty()) {
            return Integer.toString(place.number());
        }
        int size = inGroup.getAsInt();
        return "%d·%d".formatted((place.number() - 1) / size + 1, (place.number() - 1) % size + 1);
    }

    private Cells cells(double roomMm) {
        boolean bodies = places.size() <= MOST_BODIES;
        boolean masses = places.stream().anyMatch(place -> place.mass().isPresent());
        Lettering piece = bodies ? Lettering.STRONG : Lettering.NUMBER;
        Lettering mass = bodies ? Lettering.SMALL : Lettering.TINY;
        double widest = 8;
        for (Place place : places) {
            widest = Math.max(widest, Math.min(LONGEST_LABEL_MM, piece.widthMm(place.piece())));
            widest = Math.max(widest, mass.widthMm(place.massText()));
        }
        int most = Math.max(1, (int) (roomMm / (widest + 1.6)));
        int lines = (places.size() + most - 1) / most;
        int inLine = inGroup.isPresent() && inGroup.getAsInt() <= most
                ? inGroup.getAsInt()
                : (places.size() + lines - 1) / lines;
        double cell = Math.min(roomMm / inLine, 2.2 * (widest + 1.6));
        return new Cells(piece, mass, cell, inLine, bodies, masses);
    }

    private List<Shape> line(Cells cells, int from, int to) {
        List<Shape> out = new ArrayList<>();
        double numbersAt = 3.2;
        double top = numbersAt + 1.4;
        double bottom = top + (cells.bodies() ? BODY_MM : 0);
        double length = (to - from) * cells.widthMm();
        if (cells.bodies()) {
            boolean starts = isStart(from);
            boolean ends = isStart(to);
            out.addAll(rail(top, length, starts, ends));
            out.addAll(rail(bottom - RAIL_MM, length, starts, ends));
        } else {
            out.add(Path.line(Pen.LINE, 0, top, length, top));
        }
        for (int i = from; i < to; i++) {
            Place place = places.get(i);
            double x = (i - from + 0.5) * cells.widthMm();
            List<Shape> shapes = new ArrayList<>();
            if (cells.bodies()) {
                shapes.addAll(body(x, top + RAIL_MM, bottom - RAIL_MM));
            }
            shapes.add(TextLine.centred(Lettering.SMALL, x, numbersAt, numberText(place)));
            double y = bottom + 1.4 + cells.piece().capHeightMm();
            double room = cells.widthMm() - 1;
            shapes.add(TextLine.centred(cells.piece(), x, y, TextWrap.cut(place.piece(), cells.piece(), room)));
            if (place.mass().isPresent()) {
                y += cells.mass().capHeightMm() + 1.5;
                shapes.add(TextLine.centred(cells.mass(), x, y, place.massText()));
            }
            Map<String, String> attributes = Map.of("class", "place", "data-place", Integer.toString(place.number()));
            out.add(new Group(0, 0, attributes, Optional.of(place.tip()), shapes));
        }
        return out;
    }

    /** Whether a row or a group begins at that index, or the last one ended before it. */
    private boolean isStart(int index) {
        return index == 0 || index == places.size() || (inGroup.isPresent() && index % inGroup.getAsInt() == 0);
    }

    /** A rail; open, and a little longer, at an end where it goes on in another line. */
    private static List<Shape> rail(double top, double length, boolean starts, boolean ends) {
        double left = starts ? 0 : 1 - SIDE_MM;
        double right = ends ? length : length + SIDE_MM - 1;
        double bottom = top + RAIL_MM;
        List<Shape> out = new ArrayList<>();
        out.add(Path.line(Pen.LINE, left, top, right, top));
        out.add(Path.line(Pen.LINE, left, bottom, right, bottom));
        if (starts) {
            out.add(Path.line(Pen.LINE, left, top, left, bottom));
        }
        if (ends) {
            out.add(Path.line(Pen.LINE, right, top, right, bottom));
        }
        return out;
    }

    /** A turned piece that stands for any: square ends, a swell between. */
    private static List<Shape> body(double x, double top, double bottom) {
        double end = (bottom - top) * 0.16;
        double middle = (top + bottom) / 2;
        List<Path.Step> steps = List.of(
                new Path.Move(x - 1.1, top),
                new Path.Straight(x + 1.1, top),
                new Path.Straight(x + 1.1, top + end),
                new Path.Straight(x + 0.6, top + end),
                new Path.Cubic(x + 0.6, middle - 1, x + 1.5, middle, x + 1.5, middle + 1),
                new Path.Cubic(x + 1.5, middle + 2, x + 0.6, bottom - end - 1, x + 0.6, bottom - end),
                new Path.Straight(x + 1.1, bottom - end),
                new Path.Straight(x + 1.1, bottom),
                new Path.Straight(x - 1.1, bottom),
                new Path.Straight(x - 1.1, bottom - end),
                new Path.Straight(x - 0.6, bottom - end),
                new Path.Cubic(x - 0.6, bottom - end - 1, x - 1.5, middle + 2, x - 1.5, middle + 1),
                new Path.Cubic(x - 1.5, middle, x - 0.6, middle - 1, x - 0.6, top + end),
                new Path.Straight(x - 1.1, top + end),
                new Path.Close());
        return List.of(new Path(Pen.WOOD, steps), new Path(Pen.FINE, steps));
    }
}
