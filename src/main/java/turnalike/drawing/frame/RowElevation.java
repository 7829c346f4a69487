package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.drawing.piece.TurnedBody;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.frame.RowGap;
import turnalike.frame.RowOpening;
import turnalike.job.set.RowFit;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * A row as it will stand, to scale: the pieces from the pattern's true outline between posts and rails, and the largest ball that passes
 * between two pieces and beside a post: red where it is larger than the limit. A red ring marks where pieces run into one another.
 *
 * @param pattern of each piece
 * @param fit how it stands
 */
record RowElevation(Pattern pattern, RowFit fit) {
    private static final double POST_MM = 5;
    private static final double RAIL_MM = 5;
    private static final double FOOT_MM = 6;
    private static final int MOST_SHADED = 24;

    /** What rounding may take. */
    private static final double LEAST_MM = 1e-9;

    /**
     * {@return the picture}
     *
     * @param width of it, 80 mm or more, else {@link IllegalArgumentException}
     * @param tallest the row may be in it
     */
    public Svg svg(Length width, Length tallest) {
        FrameView.requireWidth(width);
        return new Drawing(width.mm(), tallest.mm()).svg();
    }

    private final class Drawing {
        private final RowFit.Stand stand = fit.stand();
        private final double scale;
        private final double left;
        private final double foot;
        private final double width;
        private final double height;
        private final double low;

        Drawing(double width, double tallest) {
            double rise = stand.rise(stand.clear()).mm();
            this.low = Math.min(
                    0,
                    IntStream.range(0, stand.places().size())
                            .mapToDouble(i -> Math.min(foot(i), foot(i) + riseAt(i)))
                            .min()
                            .orElse(0));
            double tall = stand.height().mm() + rise - low;
            this.width = width;
            this.scale = Math.min((width - 2 * POST_MM - 4) / stand.clear().mm(), tallest / tall);
            this.left = (width - scale * stand.clear().mm()) / 2;
            double rail = RAIL_MM / Math.cos(stand.rake().radians());
            this.foot = 1 + rail + scale * tall;
            this.height = foot + rail + FOOT_MM;
        }

        private double x(double aside) {
            return left + scale * aside;
        }

        /** @param up over where the lower rail's face meets the first post */
        private double y(double up) {
            return foot - scale * (up - low);
        }

        /** How much higher than as drawn the start shoulder of a place's piece stands. */
        private double foot(int i) {
            return fit.own().isEmpty() ? 0 : fit.own().get(i).foot().mm();
        }

        private double riseAt(int i) {
            return stand.rise(stand.places().get(i)).mm();
        }

        Svg svg() {
            List<Shape> out = new ArrayList<>();
            List<Length> places = stand.places();
            // What stands on a tread is seen whole; only tenons are hidden in it.
            boolean onTreads = fit.cuts().stream().anyMatch(each -> !each.upper())
                    && !fit.own().isEmpty();
            if (onTreads) {
                treads(out);
            }
            for (int i = 0; i < places.size(); i++) {
                out.add(place(i));
            }
            if (fit.own().isEmpty()) {
                rail(out, 0, -1);
            } else if (!onTreads) {
                treads(out);
            }
            rail(out, stand.height().mm(), 1);
            post(out, -POST_MM);
            post(out, scale * stand.clear().mm());
            numbers(out);
            balls(out);
            touching(out);
            touchingPosts(out);
            String title = "the row as it will stand: %d places between two posts%s"
                    .formatted(places.size(), fit.buildable() ? "" : "; it cannot be built so");
            return new Svg(Length.ofMm(width), Length.ofMm(height), title, out);
        }

        private Group place(int i) {
            Length at = stand.places().get(i);
            Optional<RowFit.Own> own = fit.own().isEmpty()
                    ? Optional.empty()
                    : Optional.of(fit.own().get(i));
            Outline outline = own.map(RowFit.Own::outline).orElse(pattern.outline());
            double tenon =
                    own.map(RowFit.Own::start).orElse(stand.exposed().start()).mm();
            double start = riseAt(i) + foot(i) - tenon;
            String tip = "place %d%s"
                    .formatted(
                            i + 1, own.map(each -> ", length " + each.letter()).orElse(""));
            TurnedBody.Spot origin = new TurnedBody.Spot(x(at.mm()), y(start));
            int bands = stand.places().size() <= MOST_SHADED ? 9 : 5;
            return new Group(
                    0,
                    0,
                    Map.of("class", "place", "data-place", Integer.toString(i + 1)),
                    Optional.of(tip),
                    new TurnedBody(outline, origin, 0, -1, scale, bands).shapes());
        }

        /** The rail hides the tenons in it. */
        private void rail(List<Shape> out, double up, int outward) {
            double from = y(up);
            double to = y(up + stand.rise(stand.clear()).mm());
            double thick = -outward * RAIL_MM / Math.cos(stand.rake().radians());
            // Longer tenons come through a rail drawn thin: nothing of them is to be seen.
            out.add(Path.polygon(
                    Pen.PAPER,
                    x(0),
                    from,
                    x(stand.clear().mm()),
                    to,
                    x(stand.clear().mm()),
                    to + thick,
                    x(0),
                    from + thick));
        }

        /** What pieces of several lengths stand on: from the one start shoulder to the next, and on to the posts on the rake. */
        private void treads(List<Shape> out) {
            int last = stand.places().size() - 1;
            List<Double> along = new ArrayList<>();
            List<Double> up = new ArrayList<>();
            along.add(0.0);
            up.add(foot(0));
            for (int i = 0; i <= last; i++) {
                along.add(stand.places().get(i).mm());
                up.add(riseAt(i) + foot(i));
            }
            along.add(stand.clear().mm());
            up.add(stand.rise(stand.clear()).mm() + foot(last));
            double thick = RAIL_MM / Math.cos(stand.rake().radians());
            int count = along.size();
            double[] corners = new double[4 * count];
            for (int i = 0; i < count; i++) {
                corners[2 * i] = x(along.get(i));
                corners[2 * i + 1] = y(up.get(i));
                int back = 2 * count - 1 - i;
                corners[2 * back] = corners[2 * i];
                corners[2 * back + 1] = corners[2 * i + 1] + thick;
            }
            out.add(Path.polygon(Pen.PAPER, corners));
        }

        private void post(List<Shape> out, double from) {
            out.add(Path.rectangle(Pen.PAPER, left + from, 0.5, POST_MM, height - FOOT_MM));
        }

        private void numbers(List<Shape> out) {
            double pitch = stand.pitch().map(Length::mm).orElse(stand.clear().mm()) * scale;
            int every = (int) Math.max(1, Math.ceil(5 / Math.max(0.1, pitch)));
            for (int i = 0; i < stand.places().size(); i += every) {
                out.add(TextLine.centred(
                        Lettering.SMALL, x(stand.places().get(i).mm()), height - 1.5, Integer.toString(i + 1)));
            }
        }

        private void balls(List<Shape> out) {
            List<Length> places = stand.places();
            int first = fit.widestAt();
            fit.between().ifPresent(ball -> ball(out, ball, places.get(first).mm(), riseAt(first) + foot(first)));
            int last = places.size() - 1;
            if (fit.endAtUpper()) {
                ball(out, fit.end(), places.get(last).mm(), riseAt(last) + foot(last));
            } else {
                ball(out, fit.end(), 0, foot(0));
            }
        }

        private void ball(List<Shape> out, RowOpening.Ball ball, double aside, double up) {
            double radius = scale * ball.diameter().mm() / 2;
            if (radius < 0.1) {
                return;
            }
            boolean large = fit.limit()
                    .filter(limit -> ball.diameter().mm() > limit.mm() + 1e-4)
                    .isPresent();
            out.add(Path.circle(
                    large ? Pen.ACCENT : Pen.LINE,
                    x(aside + ball.aside().mm()),
                    y(up + ball.up().mm()),
                    radius));
        }

        private void touching(List<Shape> out) {
            for (int i = 0; i + 1 < stand.places().size(); i++) {
                double aside =
                        (stand.places().get(i).mm() + stand.places().get(i + 1).mm()) / 2;
                double lower = Math.min(riseAt(i) + foot(i), riseAt(i + 1) + foot(i + 1));
                gap(i).filter(gap -> gap.left().mm() < 0)
                        .ifPresent(gap -> out.add(Path.circle(
                                Pen.ACCENT, x(aside), y(lower + gap.at().mm()), 2)));
            }
        }

        private void touchingPosts(List<Shape> out) {
            Length reach = RowGap.reach(stand.exposed());
            double thickest =
                    RowGap.of(stand.exposed(), Length.ZERO, Length.ZERO).at().mm();
            int last = stand.places().size() - 1;
            Length fromLast = stand.clear().minus(stand.places().get(last));
            if (stand.places().get(0).mm() < reach.mm() - LEAST_MM) {
                out.add(Path.circle(Pen.ACCENT, x(0), y(foot(0) + riseAt(0) + thickest), 2));
            }
            if (fromLast.mm() < reach.mm() - LEAST_MM) {
                out.add(Path.circle(Pen.ACCENT, x(stand.clear().mm()), y(foot(last) + riseAt(last) + thickest), 2));
            }
        }

        /** Where a place's piece and the next come nearest, from the start shoulder of the one that begins lower. */
        private Optional<RowGap.Nearest> gap(int i) {
            if (fit.own().isEmpty()) {
                return fit.gap();
            }
            return fit.besides().stream()
                    .filter(each -> each.left().equals(fit.own().get(i).letter())
                            && each.right().equals(fit.own().get(i + 1).letter()))
                    .findFirst()
                    .map(RowFit.Beside::gap);
        }
    }
}
