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
import turnalike.drawing.svg.ShadedArea;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.job.set.WheelFit;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * A wheel as it will stand, before any piece is turned: to scale, from the pattern's true outline, with the mortises in hub and rim dashed and
 * the places numbered. Where spokes or mortises come too near, a red ring is drawn there.
 *
 * @param pattern of each spoke
 * @param fit how it stands in the wheel
 */
record WheelElevation(Pattern pattern, WheelFit fit) {
    private static final double LABEL_MM = 9;
    private static final double LEAST_RIM_MM = 3.4;

    /** How much of its shade a piece keeps that stands behind. */
    private static final double BEHIND = 0.35;

    /** Beyond so many a number at each place runs into the next. */
    private static final int MOST_NUMBERS = 60;

    /**
     * {@return the picture}
     *
     * @param width of it, and its height; 80 mm or more, else {@link IllegalArgumentException}
     */
    public Svg svg(Length width) {
        FrameView.requireWidth(width);
        return new Drawing(width.mm() / 2).svg();
    }

    private final class Drawing {
        private final double middle;
        private final double scale;
        private final double outerMm;

        Drawing(double middle) {
            this.middle = middle;
            double seat = fit.rimSeats().map(seats -> seats.depth().mm()).orElse(0.0);
            double outer =
                    fit.outerRadius().map(Length::mm).orElse(fit.innerRadius().mm() + seat * 1.3);
            this.scale = (middle - LABEL_MM - LEAST_RIM_MM) / outer;
            this.outerMm = scale * outer;
        }

        Svg svg() {
            List<Shape> out = new ArrayList<>();
            boolean numbered = fit.places() <= MOST_NUMBERS;
            boolean twoRows = fit.stagger().isPositive();
            // The second row stands behind the first: its pieces are drawn first, and paler.
            for (int place = 1; twoRows && place < fit.places(); place += 2) {
                out.add(place(place, numbered, true));
            }
            for (int place = 0; place < fit.places(); place += twoRows ? 2 : 1) {
                out.add(place(place, numbered, false));
            }
            out.addAll(rim());
            out.add(Path.circle(
                    Pen.PAPER, middle, middle, scale * fit.hubRadius().mm()));
            out.addAll(joints());
            out.addAll(mortises());
            double axle = fit.axleHole().mm() / 2;
            out.add(
                    axle > 0
                            ? Path.circle(Pen.LINE, middle, middle, scale * axle)
                            : Path.circle(Pen.INK_FILL, middle, middle, 0.8));
            out.addAll(near());
            String title = "the wheel as it will stand: %d places, place 1 at the right, the others anticlockwise%s"
                    .formatted(
                            fit.places(),
                            (twoRows ? "; every second place, paler, stands behind in the second row" : "")
                                    + (fit.buildable() ? "" : "; it cannot be built so"));
            Length side = Length.ofMm(2 * middle);
            return new Svg(side, side, title, out);
        }

        private double angle(int place) {
            return 2 * Math.PI * place / fit.places();
        }

        private double x(double angle, double awayMm, double asideMm) {
            return middle + awayMm * Math.cos(angle) - asideMm * Math.sin(angle);
        }

        private double y(double angle, double awayMm, double asideMm) {
            return middle - awayMm * Math.sin(angle) - asideMm * Math.cos(angle);
        }

        private Group place(int place, boolean numbered, boolean behind) {
            double angle = angle(place);
            Pattern outward = fit.hubEndFirst() ? pattern : pattern.mirrored();
            double start = scale
                    * (fit.hubRadius().mm()
                            - outward.members().get(0).lengthInHole().mm());
            TurnedBody.Spot origin = new TurnedBody.Spot(x(angle, start, 0), y(angle, start, 0));
            int bands = fit.places() <= 24 ? 9 : 5;
            List<Shape> body = new ArrayList<>(
                    new TurnedBody(outward.outline(), origin, Math.cos(angle), -Math.sin(angle), scale, bands)
                            .shapes());
            if (behind) {
                body.replaceAll(Drawing::paler);
            }
            if (numbered) {
                double away = outerMm + LABEL_MM / 2;
                body.add(TextLine.centred(
                        Lettering.NUMBER,
                        x(angle, away, 0),
                        y(angle, away, 0) + Lettering.NUMBER.capHeightMm() / 2,
                        Integer.toString(place + 1)));
            }
            return new Group(
                    0,
                    0,
                    Map.of("class", "place", "data-place", Integer.toString(place + 1)),
                    Optional.of("place %d".formatted(place + 1)),
                    body);
        }

        private static Shape paler(Shape shape) {
            return shape instanceof ShadedArea area
                    ? new ShadedArea(1 - BEHIND * (1 - area.light()), area.steps())
                    : shape;
        }

        /** The rim hides what runs into it; round tips that stand free there is none, only the circle they lie on. */
        private List<Shape> rim() {
            double inner = scale * fit.innerRadius().mm();
            if (fit.endsInTips()) {
                return List.of(Path.circle(Pen.DASHED, middle, middle, inner));
            }
            List<Path.Step> steps = new ArrayList<>(
                    Path.circle(Pen.PAPER, middle, middle, outerMm).steps());
            steps.add(new Path.Move(middle - inner, middle));
            steps.add(new Path.Arc(inner, inner, false, middle + inner, middle));
            steps.add(new Path.Arc(inner, inner, false, middle - inner, middle));
            steps.add(new Path.Close());
            return List.of(new Path(Pen.PAPER, steps));
        }

        private List<Shape> joints() {
            List<Path> out = new ArrayList<>();
            fit.rim().ifPresent(rim -> {
                for (int i = 0; i < rim.segments(); i++) {
                    double angle = rim.jointAt().radians() + 2 * Math.PI * i / rim.segments();
                    double inner = scale * fit.innerRadius().mm();
                    out.add(Path.line(
                            Pen.LINE,
                            x(angle, inner, 0),
                            y(angle, inner, 0),
                            x(angle, outerMm, 0),
                            y(angle, outerMm, 0)));
                }
            });
            return Path.together(Pen.LINE, out);
        }

        private List<Shape> mortises() {
            List<Path> out = new ArrayList<>();
            for (int place = 0; place < fit.places(); place++) {
                double angle = angle(place);
                fit.hub()
                        .ifPresent(seats -> out.add(mortise(
                                angle,
                                fit.hubRadius().mm(),
                                fit.hubRadius().minus(seats.depth()).mm(),
                                seats.hole().mm())));
                fit.rimSeats()
                        .ifPresent(seats -> out.add(mortise(
                                angle,
                                fit.innerRadius().mm(),
                                fit.innerRadius().plus(seats.depth()).mm(),
                                seats.hole().mm())));
            }
            return Path.together(Pen.DASHED, out);
        }

        private Path mortise(double angle, double mouth, double bottom, double hole) {
            double half = scale * hole / 2;
            return Path.through(
                    Pen.DASHED,
                    x(angle, scale * mouth, half),
                    y(angle, scale * mouth, half),
                    x(angle, scale * bottom, half),
                    y(angle, scale * bottom, half),
                    x(angle, scale * bottom, -half),
                    y(angle, scale * bottom, -half),
                    x(angle, scale * mouth, -half),
                    y(angle, scale * mouth, -half));
        }

        /** A red ring half-way between the first two places, where what stands there is too near. */
        private List<Shape> near() {
            List<Shape> out = new ArrayList<>();
            double between = Math.PI / fit.places();
            boolean spokes =
                    fit.misfits().stream().anyMatch(each -> each.where().equals(WheelFit.SPOKES));
            boolean hub = fit.misfits().stream().anyMatch(each -> each.where().equals(WheelFit.HUB));
            if (spokes) {
                ring(out, between, scale * fit.nearest().mm() * Math.cos(between));
            }
            if (hub && fit.hub().isPresent()) {
                Length bottom = fit.hubRadius().minus(fit.hub().get().depth());
                ring(out, between, scale * Math.max(0, bottom.mm()) * Math.cos(between));
            }
            return out;
        }

        private void ring(List<Shape> out, double angle, double away) {
            out.add(Path.circle(Pen.ACCENT, x(angle, away, 0), y(angle, away, 0), 3.2));
        }
    }
}
