package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.piece.TurnedBody;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.outline.Section;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.units.Angle;
import turnalike.units.Article;
import turnalike.units.Length;

/** The whole frame with its pieces in place, from the pattern's true outline and to one scale. */
public final class FrameView {
    /** Beyond so many pieces a true outline is a smear; the plan of the places says more. */
    public static final int MOST_PIECES = 60;

    private static final double LABEL_MM = 9;
    private static final double RIM_MM = 3.4;

    private FrameView() {}

    /**
     * The wheel from the side; empty when it has too many pieces to be seen.
     *
     * @param hubEndFirst whether the start of the pattern enters the hub
     * @param width of the picture, 80 mm or more, else {@link IllegalArgumentException}
     */
    public static Optional<Svg> wheel(Pattern pattern, boolean hubEndFirst, WheelDrawing wheel, Length width) {
        requireWidth(width);
        List<PlacesDrawing.Place> places = wheel.places();
        if (places.size() > MOST_PIECES) {
            return Optional.empty();
        }
        Pattern outward = hubEndFirst ? pattern : pattern.mirrored();
        double hub = wheel.hubRadius().mm();
        double hubTenon = tenonMm(outward, 0);
        double rimTenon = tenonMm(outward, outward.members().size() - 1);
        double rim = hub + outward.length().mm() - hubTenon - rimTenon;
        double middle = width.mm() / 2;
        double scale = (middle - LABEL_MM - RIM_MM) / (rim + rimTenon);
        int bands = places.size() <= 24 ? 9 : 5;
        List<Shape> out = new ArrayList<>();
        // The tenons run into hub and rim, which are drawn over them.
        for (PlacesDrawing.Place place : places) {
            Angle angle = place.angle().orElseThrow();
            double cos = Math.cos(angle.radians());
            double sin = -Math.sin(angle.radians());
            double start = scale * (hub - hubTenon);
            TurnedBody.Spot origin = new TurnedBody.Spot(middle + start * cos, middle + start * sin);
            List<Shape> body =
                    new ArrayList<>(new TurnedBody(outward.outline(), origin, cos, sin, scale, bands).shapes());
            double away = scale * (rim + rimTenon) + RIM_MM + LABEL_MM / 2;
            body.add(TextLine.centred(
                    Lettering.NUMBER,
                    middle + away * cos,
                    middle + away * sin + Lettering.NUMBER.capHeightMm() / 2,
                    TextWrap.cut(place.piece(), Lettering.NUMBER, LABEL_MM)));
            out.add(new Group(
                    0,
                    0,
                    Map.of("class", "place", "data-place", Integer.toString(place.number())),
                    Optional.of(place.tip()),
                    body));
        }
        out.addAll(ring(middle, scale * rim, scale * (rim + rimTenon) + RIM_MM));
        out.add(Path.circle(Pen.PAPER, middle, middle, scale * hub));
        out.add(Path.circle(Pen.INK_FILL, middle, middle, Math.min(1.2, scale * hub / 3)));
        if (wheel.isHeavyOnOneSide()) {
            out.addAll(heavy(wheel.placement().unbalance().at(), middle, scale * hub, scale * rim));
        }
        String title = "the wheel with its %s; place 1 at the right, the others anticlockwise. %s"
                .formatted(
                        Article.count(places.size(), "piece"),
                        wheel.statements().get(0));
        return Optional.of(new Svg(width, width, title, out));
    }

    private static double tenonMm(Pattern pattern, int member) {
        return pattern.members().get(member).lengthInHole().mm();
    }

    /** The rim: a ring of paper with ink edges, so that what is under it does not show. */
    private static List<Shape> ring(double middle, double inner, double outer) {
        List<Path.Step> steps =
                new ArrayList<>(Path.circle(Pen.PAPER, middle, middle, outer).steps());
        steps.add(new Path.Move(middle - inner, middle));
        steps.add(new Path.Arc(inner, inner, false, middle + inner, middle));
        steps.add(new Path.Arc(inner, inner, false, middle - inner, middle));
        steps.add(new Path.Close());
        return List.of(new Path(Pen.PAPER, steps));
    }

    private static List<Shape> heavy(Angle at, double middle, double hub, double rim) {
        double cos = Math.cos(at.radians());
        double sin = -Math.sin(at.radians());
        double tip = rim - 1;
        double foot = rim - 7;
        return List.of(
                Path.line(Pen.ACCENT, middle + hub * cos, middle + hub * sin, middle + foot * cos, middle + foot * sin),
                Path.polygon(
                        Pen.ACCENT_FILL,
                        middle + tip * cos,
                        middle + tip * sin,
                        middle + foot * cos - 2.5 * sin,
                        middle + foot * sin + 2.5 * cos,
                        middle + foot * cos + 2.5 * sin,
                        middle + foot * sin - 2.5 * cos));
    }

    /**
     * A rail, or legs side by side, in elevation: every piece of a rail upright with its start end below, every leg on its foot, as close
     * as half a piece's width; empty when there are too many to be seen.
     *
     * @param width of the picture, 80 mm or more, else {@link IllegalArgumentException}
     */
    public static Optional<Svg> row(Pattern pattern, RowDrawing row, Length width) {
        requireWidth(width);
        List<PlacesDrawing.Place> places = row.places();
        if (places.size() > MOST_PIECES) {
            return Optional.empty();
        }
        Pattern upright = row.inGroup().isPresent() && !isFootFirst(pattern) ? pattern.mirrored() : pattern;
        double across = 2 * pattern.outline().largestRadius().mm();
        double scale = Math.min(
                (width.mm() - 8) / (1.5 * across * places.size() + across),
                150 / pattern.length().mm());
        double pitch = 1.5 * across * scale;
        double left = (width.mm() - pitch * (places.size() - 1)) / 2;
        double top = RIM_MM + 1;
        double foot = top + scale * pattern.length().mm();
        // Where there is no room for every label each second is lettered, or each third; all have theirs as a tip.
        int every = (int) Math.ceil(LABEL_MM / pitch);
        List<Shape> out = new ArrayList<>();
        int bands = places.size() <= 24 ? 9 : 5;
        for (int i = 0; i < places.size(); i++) {
            double x = left + i * pitch;
            List<Shape> body = new ArrayList<>(
                    new TurnedBody(upright.outline(), new TurnedBody.Spot(x, foot), 0, -1, scale, bands).shapes());
            if (i % every == 0) {
                body.add(TextLine.centred(
                        Lettering.SMALL,
                        x,
                        foot + RIM_MM + 2 + Lettering.SMALL.capHeightMm(),
                        TextWrap.cut(places.get(i).piece(), Lettering.SMALL, every * pitch - 1)));
            }
            out.add(new Group(
                    0,
                    0,
                    Map.of(
                            "class",
                            "place",
                            "data-place",
                            Integer.toString(places.get(i).number())),
                    Optional.of(places.get(i).tip()),
                    body));
        }
        double start = left - pitch * 0.6;
        double extent = pitch * (places.size() - 1) + pitch * 1.2;
        if (row.inGroup().isEmpty()) {
            out.add(Path.rectangle(Pen.PAPER, start, top - RIM_MM, extent, RIM_MM));
        }
        out.add(Path.rectangle(Pen.PAPER, start, foot, extent, row.inGroup().isEmpty() ? RIM_MM : 0.4));
        String title = "%s in their places, seen from the side".formatted(Article.count(places.size(), "piece"));
        return Optional.of(new Svg(width, Length.ofMm(foot + RIM_MM + 7), title, out));
    }

    /**
     * Whether a leg's foot is its start end: the other end is a square or a tenon, which the frame takes, and this one is neither. Else the
     * foot is the far end, as a leg is laid out from where it is fixed (common practice, no source).
     */
    private static boolean isFootFirst(Pattern pattern) {
        return !isFixed(pattern.members().get(0))
                && isFixed(pattern.members().get(pattern.members().size() - 1));
    }

    private static boolean isFixed(Member member) {
        return member.section() == Section.SQUARE || member.lengthInHole().isPositive();
    }

    static void requireWidth(Length width) {
        if (width.mm() < 80) {
            throw new IllegalArgumentException("a frame needs 80 mm or more, was %s mm".formatted(width.mm()));
        }
    }
}
