package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.drawing.svg.DrawingScale;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.LengthLabels;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.outline.Section;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The piece as it lies on the lathe, head end left: both sides of its outline, in wood; its diameters above; and below it a stick with
 * the marks, numbered from 0 at the datum end as everywhere else. Length and thickness are drawn to one scale.
 */
public final class SpindleDrawing {
    private static final double SIDE_MM = 4;
    private static final double AIR_MM = 3;
    private static final double STICK_MM = 5;
    private static final double RING_MM = 2.6;

    private final Pattern pattern;
    private final UnitSystem units;
    private final Length width;
    private final DrawingScale scale;
    private final OptionalInt held;
    private final Optional<Length> touched;
    private final Optional<PhotoBehind> behind;

    private SpindleDrawing(Pattern pattern, UnitSystem units, Length width, DrawingScale scale) {
        this(pattern, units, width, scale, OptionalInt.empty(), Optional.empty(), Optional.empty());
    }

    private SpindleDrawing(
            Pattern pattern,
            UnitSystem units,
            Length width,
            DrawingScale scale,
            OptionalInt held,
            Optional<Length> touched,
            Optional<PhotoBehind> behind) {
        this.behind = behind;
        this.held = held;
        this.touched = touched;
        this.pattern = pattern;
        this.units = units;
        this.width = width;
        this.scale = scale;
    }

    /**
     * For a page on a screen: as large as the width lets it be, and no taller than asked.
     *
     * @param width of the whole picture, above 20 mm
     * @param tallest the body may be on paper
     */
    public static SpindleDrawing filling(Pattern pattern, UnitSystem units, Length width, Length tallest) {
        return new SpindleDrawing(pattern, units, width, DrawingScale.of(largest(pattern, width, tallest)));
    }

    /** For paper: at the largest scale a person would choose, 1 : 1, 1 : 1.5, 1 : 2 …, that fits. */
    public static SpindleDrawing toScale(Pattern pattern, UnitSystem units, Length width, Length tallest) {
        return new SpindleDrawing(pattern, units, width, DrawingScale.tidy(largest(pattern, width, tallest)));
    }

    private static double largest(Pattern pattern, Length width, Length tallest) {
        double along = (width.mm() - 2 * SIDE_MM) / pattern.length().mm();
        double across = tallest.mm() / (2 * pattern.outline().largestRadius().mm());
        if (!(along > 0 && across > 0)) {
            throw new IllegalArgumentException(
                    "no room for a drawing in %s × %s mm".formatted(width.mm(), tallest.mm()));
        }
        return Math.min(along, across);
    }

    /** The same drawing with handles to drag the member of that number by. */
    public SpindleDrawing holding(int member) {
        return new SpindleDrawing(pattern, units, width, scale, OptionalInt.of(member), touched, behind);
    }

    /** The same drawing with a ring round the place, from the start end, where the piece runs into its neighbour in the frame, if it does. */
    public SpindleDrawing touching(Optional<Length> place) {
        return new SpindleDrawing(pattern, units, width, scale, held, place, behind);
    }

    /** The same drawing before the photograph that its pattern was copied from, if there is one. */
    public SpindleDrawing before(Optional<PhotoBehind> photo) {
        return new SpindleDrawing(pattern, units, width, scale, held, touched, photo);
    }

    /**
     * The same drawing at another scale, however tall it comes out: while a size is dragged, what is under the finger keeps its own.
     *
     * @param paperOverWood above zero
     */
    public SpindleDrawing at(double paperOverWood) {
        return new SpindleDrawing(pattern, units, width, DrawingScale.of(paperOverWood), held, touched, behind);
    }

    /** {@return how far from the picture's left edge the datum end lies} */
    public static Length side() {
        return Length.ofMm(SIDE_MM);
    }

    /** The scale it is drawn to. */
    public DrawingScale scale() {
        return scale;
    }

    public Svg svg() {
        double reach = scale.times(pattern.outline().largestRadius());
        LeaderLabels sizes = LeaderLabels.between(1, width.mm() - 1, sizeFlags());
        LeaderLabels marks = LeaderLabels.between(1, width.mm() - 1, markFlags());
        double axis = sizes.depthMm() + AIR_MM + reach;
        double stickTop = axis + reach + AIR_MM;
        OutlinePath path = new OutlinePath(SIDE_MM, axis, scale.paperOverWood());

        List<Shape> shapes = new ArrayList<>();
        behind.ifPresent(each -> shapes.add(each.at(SIDE_MM, axis, scale.paperOverWood())));
        shapes.addAll(sizeLeaders(path, axis - reach - AIR_MM));
        shapes.addAll(sizes.above(axis - reach - AIR_MM));
        shapes.addAll(body(path));
        touched.ifPresent(place -> shapes.addAll(rings(path, place)));
        shapes.addAll(stick(path, stickTop));
        shapes.addAll(marks.below(stickTop + STICK_MM));
        held.ifPresent(number -> shapes.addAll(Handles.of(pattern.placed().get(number - 1), path, units)));
        double height = stickTop + STICK_MM + marks.depthMm() + 1;
        String title = "%s, %s long, drawn %s"
                .formatted(pattern.name(), pattern.length().format(units), scale.text());
        return new Svg(width, Length.ofMm(height), title, shapes);
    }

    /** On both sides of the piece: whichever side its neighbour stands on. */
    private List<Shape> rings(OutlinePath path, Length place) {
        double half = scale.times(pattern.outline().radiusAt(place));
        double x = x(place);
        String tip = "runs into its neighbour here, %s from the start end".formatted(place.formatBoth(units));
        List<Shape> both = List.of(
                Path.circle(Pen.ACCENT, x, path.axisMm() - half, RING_MM),
                Path.circle(Pen.ACCENT, x, path.axisMm() + half, RING_MM));
        return List.of(new Group(0, 0, Map.of("class", "touching"), Optional.of(tip), both));
    }

    private double x(Length place) {
        return SIDE_MM + scale.times(place);
    }

    private List<LeaderLabels.Flag> sizeFlags() {
        List<LeaderLabels.Flag> out = new ArrayList<>();
        for (DrawnDiameters.Size size : DrawnDiameters.of(pattern)) {
            out.add(new LeaderLabels.Flag(
                    x(size.place()),
                    "",
                    LengthLabels.bare(size.diameter(), units),
                    "diameter " + size.diameter().formatBoth(units),
                    Map.of("class", "size")));
        }
        return out;
    }

    private List<Shape> sizeLeaders(OutlinePath path, double topMm) {
        List<Path> out = new ArrayList<>();
        for (DrawnDiameters.Size size : DrawnDiameters.of(pattern)) {
            double surface = path.axisMm() - scale.times(size.diameter()) / 2;
            double x = x(size.place());
            out.add(Path.line(Pen.FINE, x, surface, x, topMm));
        }
        return Path.together(Pen.FINE, out);
    }

    private List<LeaderLabels.Flag> markFlags() {
        List<Mark> marks = pattern.marks();
        List<LeaderLabels.Flag> out = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            out.add(new LeaderLabels.Flag(
                    x(mark.place()),
                    Integer.toString(i),
                    LengthLabels.bare(mark.place(), units),
                    "mark %d: %s, %s from the datum end"
                            .formatted(i, mark.label(), mark.place().formatBoth(units)),
                    Map.of("class", "mark", "data-mark", Integer.toString(i))));
        }
        return out;
    }

    private List<Shape> body(OutlinePath path) {
        List<Shape> out = new ArrayList<>();
        for (PlacedMember placed : pattern.placed()) {
            out.add(member(path, placed));
        }
        List<PlacedMember> run = pattern.placed();
        List<Path> boundaries = new ArrayList<>();
        for (int i = 1; i < run.size(); i++) {
            double before = run.get(i - 1).outline().endRadius().mm();
            double after = run.get(i).outline().startRadius().mm();
            double half = scale.paperOverWood() * Math.max(before, after);
            double x = x(run.get(i).start());
            boundaries.add(Path.line(Pen.FINE, x, path.axisMm() - half, x, path.axisMm() + half));
        }
        out.addAll(Path.together(Pen.FINE, boundaries));
        out.add(path.closed(Pen.OUTLINE, pattern.outline()));
        double end = x(pattern.length());
        out.add(Path.line(Pen.DASHED, SIDE_MM - 3, path.axisMm(), end + 3, path.axisMm()));
        return out;
    }

    private Group member(OutlinePath path, PlacedMember placed) {
        List<Shape> shapes = new ArrayList<>();
        boolean square = placed.member().section() == Section.SQUARE;
        shapes.add(path.closed(square ? Pen.WOOD_FLAT : Pen.WOOD, placed.outline()));
        if (square) {
            shapes.addAll(flatFace(path, placed));
        }
        String tip = "%s, %s long, from %s"
                .formatted(
                        placed.where(),
                        placed.member().length().formatBoth(units),
                        placed.start().formatBoth(units));
        Map<String, String> attributes = Map.of("class", "member", "data-member", Integer.toString(placed.number()));
        return new Group(0, 0, attributes, Optional.of(tip), shapes);
    }

    /** Crossed thin lines say that a face is flat, as in any engineering drawing (ISO 128; from memory). */
    private List<Shape> flatFace(OutlinePath path, PlacedMember placed) {
        double half = scale.paperOverWood() * placed.outline().startRadius().mm();
        double from = x(placed.start());
        double to = x(placed.end());
        double top = path.axisMm() - half;
        double bottom = path.axisMm() + half;
        return List.of(Path.line(Pen.FINE, from, top, to, bottom), Path.line(Pen.FINE, from, bottom, to, top));
    }

    private List<Shape> stick(OutlinePath path, double topMm) {
        List<Shape> out = new ArrayList<>();
        double end = x(pattern.length());
        double bottom = topMm + STICK_MM;
        out.add(Path.rectangle(Pen.PAPER, SIDE_MM, topMm, end - SIDE_MM, STICK_MM));
        List<Path> leaders = new ArrayList<>();
        List<Path> boundaries = new ArrayList<>();
        List<Path> crests = new ArrayList<>();
        for (Mark mark : pattern.marks()) {
            double x = x(mark.place());
            double surface = path.axisMm() + scale.times(pattern.outline().radiusAt(mark.place()));
            leaders.add(Path.line(Pen.FINE, x, surface, x, topMm));
            // A crest is told from a boundary by a shorter tick, so also in black and white.
            if (mark.kind() == Mark.Kind.CREST) {
                crests.add(Path.line(Pen.ACCENT, x, topMm + STICK_MM / 2, x, bottom));
            } else {
                boundaries.add(Path.line(Pen.LINE, x, topMm, x, bottom));
            }
        }
        out.addAll(Path.together(Pen.FINE, leaders));
        out.addAll(Path.together(Pen.LINE, boundaries));
        out.addAll(Path.together(Pen.ACCENT, crests));
        out.add(Path.polygon(
                Pen.INK_FILL, SIDE_MM - 3.5, topMm, SIDE_MM - 3.5, bottom, SIDE_MM - 0.3, topMm + STICK_MM / 2));
        return out;
    }
}
