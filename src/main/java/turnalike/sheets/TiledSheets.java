package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.drawing.gauge.CheckBars;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.units.Length;

/**
 * A full-size drawing larger than the paper both ways, cut into tiles, a page each, rows from the top and columns from the left. Neighbours
 * overlap and both show the line on which they are laid over one another.
 */
final class TiledSheets {
    private static final double OVERLAP_MM = 12;
    private static final double HEAD_MM = 22;
    private static final double DIAMOND_MM = 1.6;

    private final Subject subject;
    private final Paper.Format format;
    private final double roomWide;
    private final double roomTall;

    private TiledSheets(Subject subject, Paper paper) {
        this.subject = subject;
        this.format = paper.portrait();
        this.roomWide = format.width().minus(Paper.MARGIN.times(2)).mm();
        this.roomTall = format.height().minus(Paper.MARGIN.times(2)).mm()
                - HEAD_MM
                - CheckBars.svg().height().mm();
    }

    /**
     * What is set on the pages.
     *
     * @param fileName without paper size or ending
     * @param title above each page
     * @param how what to do with it, in lines
     * @param whole in one piece, with every name
     * @param drawing the same without names
     * @param names what stands where; on each tile that holds all of it
     */
    record Subject(String fileName, String title, List<String> how, Svg whole, Svg drawing, List<TextLine> names) {
        Subject {
            how = List.copyOf(how);
            names = List.copyOf(names);
        }
    }

    static Sheet of(Subject subject, Paper paper) {
        return new TiledSheets(subject, paper).sheet(paper);
    }

    /** How many tiles a length takes: each after the first adds what does not overlap. */
    private static int tiles(double lengthMm, double roomMm) {
        return (int) Math.max(1, Math.ceil((lengthMm - OVERLAP_MM) / (roomMm - OVERLAP_MM) - 1e-9));
    }

    private Sheet sheet(Paper paper) {
        int columns = tiles(subject.drawing().width().mm(), roomWide);
        int rows = tiles(subject.drawing().height().mm(), roomTall);
        List<PdfPages.Page> pages = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                String name = rows * columns == 1
                        ? ""
                        : "row %d of %d, column %d of %d".formatted(row + 1, rows, column + 1, columns);
                pages.add(page(
                        Tile.of(column, columns, subject.drawing().width().mm(), roomWide),
                        Tile.of(row, rows, subject.drawing().height().mm(), roomTall),
                        name));
            }
        }
        String file = subject.fileName() + "-"
                + paper.label().toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(file, subject.title(), List.of(subject.whole()), pages);
    }

    /**
     * A tile along one way.
     *
     * @param from where it begins in the drawing
     * @param to where it ends
     * @param joints the lines it shares with its neighbours
     */
    private record Tile(double from, double to, List<Double> joints) {
        static Tile of(int index, int count, double lengthMm, double roomMm) {
            double step = roomMm - OVERLAP_MM;
            List<Double> joints = new ArrayList<>();
            if (index > 0) {
                joints.add(index * step + OVERLAP_MM / 2);
            }
            if (index < count - 1) {
                joints.add((index + 1) * step + OVERLAP_MM / 2);
            }
            return new Tile(index * step, Math.min(lengthMm, index * step + roomMm), List.copyOf(joints));
        }

        PlacedDrawing.Window window() {
            return new PlacedDrawing.Window(Length.ofMm(from), Length.ofMm(to));
        }
    }

    private PdfPages.Page page(Tile across, Tile down, String name) {
        double left = Paper.MARGIN.mm();
        double top = left + HEAD_MM;
        List<Shape> marks = new ArrayList<>(heading(name));
        for (double joint : across.joints()) {
            double x = left + joint - across.from();
            marks.add(Path.line(Pen.CUT, x, top, x, top + down.to() - down.from()));
            marks.add(diamond(x, top + (down.to() - down.from()) / 2));
        }
        for (double joint : down.joints()) {
            double y = top + joint - down.from();
            marks.add(Path.line(Pen.CUT, left, y, left + across.to() - across.from(), y));
            marks.add(diamond(left + (across.to() - across.from()) / 2, y));
        }
        for (TextLine each : subject.names()) {
            Box box = Box.of(each);
            boolean held = box.left() > across.from()
                    && box.right() < across.to()
                    && box.top() > down.from()
                    && box.bottom() < down.to()
                    && across.joints().stream().noneMatch(joint -> box.left() < joint && joint < box.right())
                    && down.joints().stream().noneMatch(joint -> box.top() < joint && joint < box.bottom());
            if (held) {
                double y = top + each.yMm() - down.from();
                marks.add(TextLine.of(each.lettering(), left + box.left() - across.from(), y, each.text()));
            }
        }
        Svg check = CheckBars.svg();
        Length checkAt = format.height().minus(Paper.MARGIN).minus(check.height());
        return new PdfPages.Page(
                format,
                List.of(
                        PlacedDrawing.tile(
                                subject.drawing(), across.window(), down.window(), Paper.MARGIN, Length.ofMm(top)),
                        PlacedDrawing.whole(check, Paper.MARGIN, checkAt),
                        PlacedDrawing.whole(
                                new Svg(format.width(), format.height(), subject.title(), marks),
                                Length.ZERO,
                                Length.ZERO)));
    }

    private static Path diamond(double x, double y) {
        return Path.polygon(Pen.INK_FILL, x, y - DIAMOND_MM, x + DIAMOND_MM, y, x, y + DIAMOND_MM, x - DIAMOND_MM, y);
    }

    private List<Shape> heading(String name) {
        double left = Paper.MARGIN.mm();
        double right = format.width().minus(Paper.MARGIN).mm();
        List<Shape> out = new ArrayList<>();
        double room = right - left - Lettering.STRONG.widthMm(name) - 6;
        out.add(TextLine.of(Lettering.HEADING, left, left + 4, TextWrap.cut(subject.title(), Lettering.HEADING, room)));
        out.add(TextLine.ending(Lettering.STRONG, right, left + 4, name));
        double y = left + 9;
        for (String how : subject.how()) {
            for (String line : TextWrap.wrap(how, Lettering.SMALL, right - left)) {
                out.add(TextLine.of(Lettering.SMALL, left, y, line));
                y += 4;
            }
        }
        return out;
    }
}
