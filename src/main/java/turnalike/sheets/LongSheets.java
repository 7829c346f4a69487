package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.drawing.gauge.CheckBars;
import turnalike.drawing.gauge.MarkingStick;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A full-size drawing as long as the piece, cut into strips that fit the paper. Neighbouring strips both show the joint and a stretch
 * beyond it, with the same line to lay one over the other; the joints lie at round distances from the datum end, so that a rule finds a
 * slip.
 */
final class LongSheets {
    private static final double HOW_MM = 9;
    private static final double LINE_MM = 4;
    /** From the last line of what to do to the strips' labels. */
    private static final double BELOW_MM = 3;

    private static final int USUAL_LINES = 2;
    private static final double LABEL_MM = 8;
    private static final double JOINT_MM = 14;
    private static final double APART_MM = 4;

    private final Subject subject;
    private final UnitSystem units;
    private final Paper paper;
    private final Paper.Format format;
    private final Svg drawing;
    private final List<String> how;

    private LongSheets(Subject subject, UnitSystem units, Paper paper, Paper.Format format) {
        this.subject = subject;
        this.units = units;
        this.paper = paper;
        this.format = format;
        this.drawing = subject.drawing();
        this.how = how(subject.how(), strips().size() > 1).stream()
                .flatMap(each -> TextWrap.wrap(each, Lettering.SMALL, wide() - besideMm()).stream())
                .toList();
    }

    /** One strip alone has no joint. */
    private static List<String> how(List<String> how, boolean hasJoints) {
        List<String> out = new ArrayList<>(how);
        if (hasJoints) {
            out.set(out.size() - 1, out.get(out.size() - 1) + " Lay joint upon joint, line on line.");
        }
        return out;
    }

    /**
     * What is set on the pages.
     *
     * @param fileName without paper size or ending
     * @param title above each page
     * @param how what to do with it, at least one line, which are broken where the length stands beside them
     * @param whole at full size in one piece, with every name
     * @param drawing the same without names, to be cut into strips
     * @param datum where the datum end lies in it, from its left edge
     * @param edge where its upper edge lies in it, from its top: the joints begin there
     * @param places from the datum end, which joints keep clear of
     * @param names what stands along it, on each strip where there is room
     * @param nameLine where they stand, from its top
     * @param length from the datum end to the far end
     * @param within how far the joined strips may be out
     */
    record Subject(
            String fileName,
            String title,
            List<String> how,
            Svg whole,
            Svg drawing,
            Length datum,
            Length edge,
            List<Length> places,
            List<MarkingStick.Stretch> names,
            Length nameLine,
            Length length,
            Length within) {
        Subject {
            names = List.copyOf(names);
            how = List.copyOf(how);
            places = List.copyOf(places);
        }
    }

    /**
     * The drawing on pages that lie or stand, whichever takes fewer: long strips one to a page, or shorter ones several. Where both take as
     * many, they lie: fewer joints. Its SVG is the whole of it in one piece.
     */
    static Sheet of(Subject subject, UnitSystem units, Paper paper) {
        LongSheets lying = new LongSheets(subject, units, paper, paper.landscape());
        LongSheets standing = new LongSheets(subject, units, paper, paper.portrait());
        boolean lies = lying.holdsOne() && (!standing.holdsOne() || lying.pageCount() <= standing.pageCount());
        return (lies ? lying : standing).sheet();
    }

    /** Whether a drawing of that height fits on a page, lying or standing, between its heading and the check bars. */
    static boolean fits(Length height, Paper paper) {
        return height.mm() + LABEL_MM <= roomMm(paper.portrait(), USUAL_LINES + 1);
    }

    private static double headMm(int lines) {
        return HOW_MM + LINE_MM * (Math.max(USUAL_LINES, lines) - 1) + BELOW_MM;
    }

    private static double roomMm(Paper.Format format, int lines) {
        return format.height().minus(Paper.MARGIN.times(2)).mm()
                - headMm(lines)
                - CheckBars.svg().height().mm();
    }

    private double wide() {
        return format.width().minus(Paper.MARGIN.times(2)).mm();
    }

    private boolean holdsOne() {
        return drawing.height().mm() + LABEL_MM <= roomMm(format, how.size());
    }

    private int pageCount() {
        int perPage = perPage();
        return (strips().size() + perPage - 1) / perPage;
    }

    private Sheet sheet() {
        List<SheetStrip> strips = strips();
        int perPage = perPage();
        int pageCount = pageCount();
        List<PdfPages.Page> pages = new ArrayList<>();
        for (int page = 0; page < pageCount; page++) {
            List<SheetStrip> here = strips.subList(page * perPage, Math.min(strips.size(), (page + 1) * perPage));
            pages.add(page(here, "page %d of %d".formatted(page + 1, pageCount), strips.size()));
        }
        String name = subject.fileName() + "-"
                + paper.label().toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Sheet(name, subject.title(), List.of(subject.whole()), pages);
    }

    private List<SheetStrip> strips() {
        return SheetStrip.cut(drawing.width(), printable(), subject.datum(), subject.places(), units);
    }

    private Length printable() {
        return format.width().minus(Paper.MARGIN.times(2));
    }

    private int perPage() {
        return Math.max(1, (int) (roomMm(format, how.size()) / (drawing.height().mm() + LABEL_MM)));
    }

    private PdfPages.Page page(List<SheetStrip> strips, String pageOf, int stripCount) {
        double margin = Paper.MARGIN.mm();
        List<Shape> marks = new ArrayList<>(heading(pageOf, stripCount));
        List<PlacedDrawing> placed = new ArrayList<>();
        double top = margin + headMm(how.size());
        for (SheetStrip strip : strips) {
            Length down = Length.ofMm(top + LABEL_MM);
            PlacedDrawing.Window window = new PlacedDrawing.Window(strip.from(), strip.to());
            placed.add(PlacedDrawing.part(drawing, window, Paper.MARGIN, down));
            marks.addAll(labels(strip, top, stripCount));
            top += LABEL_MM + drawing.height().mm();
        }
        Svg check = CheckBars.svg();
        Length checkAt = format.height().minus(Paper.MARGIN).minus(check.height());
        placed.add(PlacedDrawing.whole(check, Paper.MARGIN, checkAt));
        placed.add(
                PlacedDrawing.whole(new Svg(format.width(), format.height(), pageOf, marks), Length.ZERO, Length.ZERO));
        return new PdfPages.Page(format, placed);
    }

    private List<Shape> heading(String pageOf, int stripCount) {
        double left = Paper.MARGIN.mm();
        double right = format.width().minus(Paper.MARGIN).mm();
        double room = right - left - Lettering.STRONG.widthMm(pageOf) - 6;
        String title = TextWrap.cut(subject.title(), Lettering.HEADING, room);
        List<Shape> out = new ArrayList<>();
        out.add(TextLine.of(Lettering.HEADING, left, left + 4, title));
        out.add(TextLine.ending(Lettering.STRONG, right, left + 4, pageOf));
        if (stripCount > 1) {
            out.add(TextLine.ending(Lettering.STRONG, right, left + HOW_MM + 0.4, joined()));
            out.add(TextLine.ending(Lettering.SMALL, right, left + HOW_MM + LINE_MM + 0.4, within()));
        }
        for (int i = 0; i < how.size(); i++) {
            out.add(TextLine.of(Lettering.SMALL, left, left + HOW_MM + LINE_MM * i, how.get(i)));
        }
        return out;
    }

    /** Each joint may be a hair out, and ten hairs are a line's width: only the whole length shows it. */
    private String joined() {
        return "Joined, end to end: " + subject.length().formatBoth(units);
    }

    private String within() {
        return "within %s by a rule, or lay the joints again"
                .formatted(subject.within().formatBoth(units));
    }

    private double besideMm() {
        return drawing.width().compareTo(printable()) <= 0
                ? 0
                : Math.max(Lettering.STRONG.widthMm(joined()), Lettering.SMALL.widthMm(within())) + 2;
    }

    private List<Shape> labels(SheetStrip strip, double topMm, int stripCount) {
        List<Shape> out = new ArrayList<>();
        double left = Paper.MARGIN.mm();
        for (SheetStrip.Joint joint : strip.joints()) {
            double x = left + joint.at().minus(strip.from()).mm();
            double edge = topMm + LABEL_MM + subject.edge().mm();
            double bottom = topMm + LABEL_MM + drawing.height().mm();
            // In two pieces, so that it strikes no label through.
            out.add(Path.line(Pen.DASHED, x, topMm + 6, x, edge + JOINT_MM));
            out.add(Path.line(Pen.DASHED, x, bottom - 4, x, bottom));
            out.add(Path.polygon(Pen.INK_FILL, x, edge - 2, x + 1.2, edge, x, edge + 2, x - 1.2, edge));
        }
        List<TextLine> joints = jointLabels(strip, topMm);
        out.addAll(joints);
        if (stripCount > 1) {
            out.add(stripLabel(strip, stripCount, topMm, joints));
        }
        out.addAll(names(strip, topMm));
        return out;
    }

    private List<TextLine> jointLabels(SheetStrip strip, double topMm) {
        List<TextLine> out = new ArrayList<>();
        for (SheetStrip.Joint joint : strip.joints()) {
            double x = Paper.MARGIN.mm() + joint.at().minus(strip.from()).mm();
            String place = joint.at().minus(subject.datum()).format(units);
            String text = "joint %d, at %s".formatted(joint.number(), place);
            out.add(
                    strip.isLast(joint)
                            ? TextLine.ending(Lettering.SMALL, x + SheetStrip.OVERLAP_MM, topMm + 5, text)
                            : TextLine.of(Lettering.SMALL, x - SheetStrip.OVERLAP_MM, topMm + 5, text));
        }
        return out;
    }

    /** In the middle, or beside the joint's label where the strip is too short for both. */
    private TextLine stripLabel(SheetStrip strip, int stripCount, double topMm, List<TextLine> joints) {
        String first = strip.number() == 1 ? "datum" : "joint";
        String last = strip.number() == stripCount ? "far end" : "joint";
        Length length = strip.end(subject.datum().plus(subject.length())).minus(strip.start(subject.datum()));
        String text =
                "strip %d of %d: %s to %s %s".formatted(strip.number(), stripCount, first, last, length.format(units));
        double middle = Paper.MARGIN.mm() + strip.to().minus(strip.from()).mm() / 2;
        TextLine centred = TextLine.centred(Lettering.NUMBER, middle, topMm + 5, text);
        Box box = Box.of(centred).grown(APART_MM);
        boolean free = box.left() >= Paper.MARGIN.mm()
                && joints.stream().noneMatch(each -> Box.of(each).meets(box));
        double right =
                joints.stream().mapToDouble(each -> Box.of(each).right()).min().orElse(Paper.MARGIN.mm());
        return free ? centred : TextLine.of(Lettering.NUMBER, right + APART_MM, topMm + 5, text);
    }

    /** Each name in the middle of what the strip has of its stretch between the joints. */
    private List<Shape> names(SheetStrip strip, double topMm) {
        List<Shape> out = new ArrayList<>();
        double least = strip.start(subject.datum()).mm();
        double most = strip.end(subject.datum().plus(subject.length())).mm();
        for (MarkingStick.Stretch name : subject.names()) {
            double from = Math.max(subject.datum().plus(name.from()).mm(), least);
            double to = Math.min(subject.datum().plus(name.to()).mm(), most);
            if (Lettering.SMALL.widthMm(name.name()) + 2 <= to - from) {
                double x = Paper.MARGIN.mm() + (from + to) / 2 - strip.from().mm();
                double y = topMm + LABEL_MM + subject.nameLine().mm();
                out.add(TextLine.centred(Lettering.SMALL, x, y, name.name()));
            }
        }
        return out;
    }
}
