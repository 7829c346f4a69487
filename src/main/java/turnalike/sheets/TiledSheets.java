package turnalike.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import turnalike.drawing.gauge.CheckBars;
import turnalike.drawing.gauge.PlacedName;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.job.Plan;
import turnalike.job.set.FrameFit;
import turnalike.units.Length;
import turnalike.units.SentenceCase;

/**
 * A full-size drawing larger than the paper both ways, cut into tiles, a page each, rows from the top and columns from the left. Neighbours
 * overlap and both show the line on which they are laid over one another. A tile that holds nothing of the drawing gets no page.
 */
final class TiledSheets {
    private static final double OVERLAP_MM = 12;
    /** Room for the title and four lines of what to do; the joints' lines begin below. */
    private static final double HEAD_MM = 26;

    private static final double DIAMOND_MM = 1.6;
    private static final double CLEAR_MM = 0.8;

    /** A joint so near to what is bored passes through it, or its cross. */
    private static final double NEAR_MM = 16;

    /** What takes more is joined by nobody: no shift is looked for. */
    private static final int MOST_TILES = 100;

    /** So many parts of the room that a shift is tried by. */
    private static final int SHIFTS = 8;

    private static final Comparator<TiledSheets> BY_PAGES_AND_JOINTS =
            Comparator.comparingInt(TiledSheets::pageCount).thenComparingLong(TiledSheets::jointsThrough);

    private final Subject subject;
    private final Paper.Format format;
    private final double roomWide;
    private final double roomTall;
    private final int columns;
    private final int rows;
    private final double shiftAcross;
    private final double shiftDown;

    private TiledSheets(Subject subject, Paper.Format format, double shareAcross, double shareDown) {
        this.subject = subject;
        this.format = format;
        this.roomWide = format.width().minus(Paper.MARGIN.times(2)).mm();
        this.roomTall = format.height().minus(Paper.MARGIN.times(2)).mm()
                - HEAD_MM
                - CheckBars.svg().height().mm();
        this.columns = tiles(subject.drawing().width().mm(), roomWide);
        this.rows = tiles(subject.drawing().height().mm(), roomTall);
        this.shiftAcross =
                shareAcross * spare(columns, subject.drawing().width().mm(), roomWide);
        this.shiftDown = shareDown * spare(rows, subject.drawing().height().mm(), roomTall);
    }

    /** The first of its places on the page that holds what it names; where there is none there, the best is put aside. */
    private TextLine onItsPage(PlacedName name) {
        return name.places().stream()
                .filter(place -> isBeside(name, Box.of(place)))
                .findFirst()
                .orElseGet(() -> besideJoints(name.places().get(0)));
    }

    private boolean isBeside(PlacedName name, Box box) {
        return IntStream.range(0, columns)
                        .mapToObj(this::across)
                        .anyMatch(tile -> tile.has(name.xMm(), name.xMm()) && tile.has(box.left(), box.right()))
                && IntStream.range(0, rows)
                        .mapToObj(this::down)
                        .anyMatch(tile -> tile.has(name.yMm(), name.yMm()) && tile.has(box.top(), box.bottom()));
    }

    /** A name through which a joint passes would be on neither of the two pages: it is put just before that joint. */
    private TextLine besideJoints(TextLine name) {
        Box box = Box.of(name);
        double back = IntStream.range(0, columns)
                .mapToDouble(column -> across(column).pushed(box.left(), box.right()))
                .max()
                .orElse(0);
        double up = IntStream.range(0, rows)
                .mapToDouble(row -> down(row).pushed(box.top(), box.bottom()))
                .max()
                .orElse(0);
        return back == 0 && up == 0
                ? name
                : TextLine.of(name.lettering(), box.left() - back, name.yMm() - up, name.text());
    }

    /**
     * What is set on the pages.
     *
     * @param fileName without paper size or ending
     * @param title above each page
     * @param how what to do with it, in lines
     * @param whole in one piece, with every name
     * @param drawing the same without names
     * @param names what stands where; on the tile that holds what it names, put aside where a joint would pass through it
     * @param holds whether a part of the drawing, in its own millimetres, has anything in it
     */
    record Subject(
            String fileName,
            String title,
            List<String> how,
            Svg whole,
            Svg drawing,
            List<PlacedName> names,
            Predicate<Box> holds) {
        Subject {
            how = List.copyOf(how);
            names = List.copyOf(names);
        }
    }

    /** What stands above each page: what it is of, and first of all that it cannot be built, since the foot of these pages has no room for that. */
    static String title(FrameFit fit, String what, Plan plan) {
        String name = plan.job().pattern().name();
        return fit.buildable() ? SentenceCase.capital(what + name) : "The frame cannot be built; " + what + name;
    }

    static Sheet of(Subject subject, Paper paper) {
        return best(subject, paper).sheet(paper);
    }

    /**
     * Pages that lie or stand, and the drawing shifted on them as far as they have room: the fewest pages, then the fewest joints through what is
     * named, then standing and unshifted.
     */
    private static TiledSheets best(Subject subject, Paper paper) {
        TiledSheets best = new TiledSheets(subject, paper.portrait(), 0, 0);
        if (best.columns * best.rows > MOST_TILES) {
            return best;
        }
        for (Paper.Format format : List.of(paper.portrait(), paper.landscape())) {
            for (int i = 0; i <= SHIFTS; i++) {
                for (int k = 0; k <= SHIFTS; k++) {
                    TiledSheets next = new TiledSheets(subject, format, i / (double) SHIFTS, k / (double) SHIFTS);
                    if (BY_PAGES_AND_JOINTS.compare(next, best) < 0) {
                        best = next;
                    }
                }
            }
        }
        return best;
    }

    /** How far the drawing can be shifted on its tiles. */
    private static double spare(int count, double lengthMm, double roomMm) {
        return Math.max(0, count * (roomMm - OVERLAP_MM) + OVERLAP_MM - lengthMm);
    }

    /** Joints so near to what is named that they pass through it. */
    private long jointsThrough() {
        return subject.names().stream()
                .mapToLong(name -> near(name.xMm(), IntStream.range(0, columns).mapToObj(this::across))
                        + near(name.yMm(), IntStream.range(0, rows).mapToObj(this::down)))
                .sum();
    }

    /** Each joint is looked for as the last of the tile before it. */
    private static long near(double placeMm, Stream<Tile> tiles) {
        return tiles.flatMap(tile -> tile.joints().stream())
                .distinct()
                .filter(joint -> Math.abs(joint - placeMm) < NEAR_MM)
                .count();
    }

    private int pageCount() {
        int out = 0;
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                out += holds(across(column), down(row)) ? 1 : 0;
            }
        }
        return out;
    }

    /** How many tiles a length takes: each after the first adds what does not overlap. */
    private static int tiles(double lengthMm, double roomMm) {
        return (int) Math.max(1, Math.ceil((lengthMm - OVERLAP_MM) / (roomMm - OVERLAP_MM) - 1e-9));
    }

    /** How many pages it takes. */
    static int pages(Subject subject, Paper paper) {
        return best(subject, paper).pageCount();
    }

    private Tile across(int column) {
        return Tile.of(column, columns, subject.drawing().width().mm(), roomWide, shiftAcross);
    }

    private Tile down(int row) {
        return Tile.of(row, rows, subject.drawing().height().mm(), roomTall, shiftDown);
    }

    /** What lies beyond its joints is on the neighbours' pages as well, and makes no page. */
    private boolean holds(Tile across, Tile down) {
        return subject.holds().test(new Box(across.first(), down.first(), across.last(), down.last()));
    }

    private Sheet sheet(Paper paper) {
        List<PdfPages.Page> pages = new ArrayList<>();
        List<TextLine> names = subject.names().stream().map(this::onItsPage).toList();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                String name = rows * columns == 1
                        ? ""
                        : "row %d of %d, column %d of %d".formatted(row + 1, rows, column + 1, columns);
                Tile across = across(column);
                Tile down = down(row);
                if (holds(across, down)) {
                    pages.add(page(across, down, name, names));
                }
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
     * @param first the joint with the tile before, or the drawing's edge
     * @param last the joint with the tile after, or the drawing's edge
     * @param joints the lines it shares with its neighbours
     */
    private record Tile(double from, double to, double first, double last, List<Double> joints) {
        /** The drawing begins so far into the first tile as it is shifted. */
        static Tile of(int index, int count, double lengthMm, double roomMm, double shiftMm) {
            double step = roomMm - OVERLAP_MM;
            double start = index * step - shiftMm;
            double from = Math.max(0, start);
            double to = Math.min(lengthMm, start + roomMm);
            double first = index > 0 ? start + OVERLAP_MM / 2 : from;
            double last = index < count - 1 ? start + step + OVERLAP_MM / 2 : to;
            List<Double> joints = new ArrayList<>();
            if (index > 0) {
                joints.add(first);
            }
            if (index < count - 1) {
                joints.add(last);
            }
            return new Tile(from, to, first, last, List.copyOf(joints));
        }

        /** Whether that lies between its joints, clear of them. */
        boolean has(double start, double end) {
            double clear = start == end ? 0 : CLEAR_MM;
            return first() + clear <= start && end <= last() - clear;
        }

        /** How far what lies from one place to another is put back so that no joint passes through it; 0 where none does. */
        double pushed(double start, double end) {
            return joints.stream()
                    .filter(joint -> start < joint + CLEAR_MM && joint - CLEAR_MM < end)
                    .mapToDouble(joint -> end - joint + CLEAR_MM)
                    .max()
                    .orElse(0);
        }

        PlacedDrawing.Window window() {
            return new PlacedDrawing.Window(Length.ofMm(from), Length.ofMm(to));
        }
    }

    private PdfPages.Page page(Tile across, Tile down, String name, List<TextLine> names) {
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
        for (TextLine each : names) {
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
