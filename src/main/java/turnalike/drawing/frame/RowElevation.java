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
import turnalike.frame.RowOpening;
import turnalike.job.set.RowFit;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * A row as it will stand, to scale: the pieces from the pattern's true outline between posts and rails, and the largest ball that passes
 * between two pieces and beside a post: red where it is larger than the limit. A red ring marks where pieces run into one another.
 *
 * @param pattern of each piece
 * @param fit how it stands
 */
public record RowElevation(Pattern pattern, RowFit fit) {
    private static final double POST_MM = 5;
    private static final double RAIL_MM = 5;
    private static final double FOOT_MM = 6;
    private static final double TALLEST_MM = 150;
    private static final int MOST_SHADED = 24;

    /**
     * {@return the picture}
     *
     * @param width of it, 80 mm or more, else {@link IllegalArgumentException}
     */
    public Svg svg(Length width) {
        FrameView.requireWidth(width);
        return new Drawing(width.mm()).svg();
    }

    private final class Drawing {
        private final RowFit.Stand stand = fit.stand();
        private final double scale;
        private final double left;
        private final double foot;
        private final double width;
        private final double height;

        Drawing(double width) {
            double rise = stand.rise(stand.clear()).mm();
            double tall = stand.height().mm() + rise;
            this.width = width;
            this.scale = Math.min((width - 2 * POST_MM - 4) / stand.clear().mm(), TALLEST_MM / tall);
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
            return foot - scale * up;
        }

        Svg svg() {
            List<Shape> out = new ArrayList<>();
            List<Length> places = stand.places();
            for (int i = 0; i < places.size(); i++) {
                out.add(place(i));
            }
            rail(out, 0, -1);
            rail(out, stand.height().mm(), 1);
            post(out, -POST_MM);
            post(out, scale * stand.clear().mm());
            numbers(out);
            balls(out);
            touching(out);
            String title = "the row as it will stand: %d places between two posts%s"
                    .formatted(places.size(), fit.buildable() ? "" : "; it cannot be built so");
            return new Svg(Length.ofMm(width), Length.ofMm(height), title, out);
        }

        private Group place(int i) {
            Length at = stand.places().get(i);
            double start = stand.rise(at).mm() - stand.exposed().start().mm();
            TurnedBody.Spot origin = new TurnedBody.Spot(x(at.mm()), y(start));
            int bands = stand.places().size() <= MOST_SHADED ? 9 : 5;
            return new Group(
                    0,
                    0,
                    Map.of("class", "place", "data-place", Integer.toString(i + 1)),
                    Optional.of("place %d".formatted(i + 1)),
                    new TurnedBody(pattern.outline(), origin, 0, -1, scale, bands).shapes());
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
            int first = (places.size() - 1) / 2;
            if (!fit.besides().isEmpty()) {
                return; // pieces are pictured as drawn, and the balls pass between their own lengths
            }
            fit.between().ifPresent(ball -> ball(out, ball, places.get(first).mm(), stand.rise(places.get(first))));
            Length last = places.get(places.size() - 1);
            ball(out, fit.end(), fit.endAtUpper() ? last.mm() : 0, fit.endAtUpper() ? stand.rise(last) : Length.ZERO);
        }

        private void ball(List<Shape> out, RowOpening.Ball ball, double aside, Length up) {
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
                    y(up.plus(ball.up()).mm()),
                    radius));
        }

        private void touching(List<Shape> out) {
            fit.gap().filter(gap -> gap.left().mm() < 0).ifPresent(gap -> {
                double pitch = stand.pitch().orElseThrow().mm();
                for (int i = 0; i + 1 < stand.places().size(); i++) {
                    Length at = stand.places().get(i);
                    out.add(Path.circle(
                            Pen.ACCENT,
                            x(at.mm() + pitch / 2),
                            y(stand.rise(at).plus(gap.at()).mm()),
                            2));
                }
            });
        }
    }
}
