package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.photo.SheetSquares;
import turnalike.units.Length;

/** One page of numbered squares to lay under or beside a piece for its picture, at true size: the rows of squares, what to do, and the check bars. */
public final class SquaresPage {
    /** The drawing's width. */
    public static final Length WIDTH = Length.ofMm(254);

    /** The drawing's height. */
    public static final Length HEIGHT = Length.ofMm(186);

    /** White that every square keeps beside it, so that it is told from what is printed near. */
    private static final double QUIET_MM = 6;

    private static final double LINE_MM = 4.2;

    private static final List<String> LAY = List.of(
            "Tape the pages down flat in a row, short edges touching.",
            "Lay the piece along the blank band, whole, or beside the sheet on the same flat top.");

    private static final List<String> TAKE = List.of(
            "Camera straight above, no zoom, about one and a half times the piece's length away; squares in sight at both its ends.",
            "No length is needed then. Bars not as long as they say: give the first one's true length with --bar.");

    private SquaresPage() {}

    /**
     * The page.
     *
     * @param page which, from 1
     * @param pages of how many
     */
    public static Svg svg(int page, int pages) {
        List<Shape> out = new ArrayList<>();
        for (SheetSquares.Place place : SheetSquares.ofPage(page)) {
            square(out, place);
        }
        double gap = SheetSquares.COLUMN.minus(SheetSquares.SIDE).mm() - 2 * QUIET_MM;
        double half = SheetSquares.SIDE.mm() / 2 + QUIET_MM;
        double top = y(SheetSquares.ROW.times(-1)) - SheetSquares.SIDE.mm() / 2;
        double left = x(SheetSquares.COLUMN.times(-1)) + half;
        out.add(TextLine.of(Lettering.HEADING, left, top + 4, "Photo sheet, page %d of %d".formatted(page, pages)));
        words(out, left, top + 9.5, gap, LAY);
        words(out, x(Length.ZERO) + half, top + 4, gap, TAKE);
        Svg bars = CheckBars.svg();
        out.add(Group.at(
                (WIDTH.mm() - bars.width().mm()) / 2,
                y(SheetSquares.ROW) - bars.height().mm() / 2,
                bars.shapes()));
        return new Svg(WIDTH, HEIGHT, "photo sheet with numbered squares, page %d of %d".formatted(page, pages), out);
    }

    private static double x(Length right) {
        return WIDTH.mm() / 2 + right.mm();
    }

    private static double y(Length down) {
        return HEIGHT.mm() / 2 + down.mm();
    }

    private static void words(List<Shape> out, double left, double first, double width, List<String> sentences) {
        double y = first;
        for (String sentence : sentences) {
            for (String line : TextWrap.wrap(sentence, Lettering.SMALL, width)) {
                out.add(TextLine.of(Lettering.SMALL, left, y, line));
                y += LINE_MM;
            }
        }
    }

    /** Row by row, neighbouring black cells as one area: no hair line between them, whatever prints it. */
    private static void square(List<Shape> out, SheetSquares.Place place) {
        double cell = SheetSquares.SIDE.mm() / SheetSquares.CELLS;
        double left = x(place.right()) - SheetSquares.SIDE.mm() / 2;
        double top = y(place.down()) - SheetSquares.SIDE.mm() / 2;
        out.add(Path.rectangle(Pen.INK_FILL, left, top, SheetSquares.SIDE.mm(), SheetSquares.SIDE.mm()));
        for (int row = 1; row < SheetSquares.CELLS - 1; row++) {
            int from = 0;
            for (int column = 0; column < SheetSquares.CELLS; column++) {
                boolean black = SheetSquares.isBlack(place.number(), row, column);
                if (black && column > from) {
                    white(out, left + from * cell, top + row * cell, (column - from) * cell, cell);
                }
                from = black ? column + 1 : from;
            }
        }
    }

    private static void white(List<Shape> out, double x, double y, double width, double height) {
        out.add(Path.rectangle(Pen.WHITE, x, y, width, height));
    }
}
