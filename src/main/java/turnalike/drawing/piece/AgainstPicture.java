package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.DrawingScale;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.trace.Profile;
import turnalike.trace.against.Comparison;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A piece over its pattern: the pattern in wood with its outline, what was seen of the piece as a line over it, both to one scale; below, how
 * far the piece lies off the pattern, drawn many times as large, with the tolerance as two dashed lines; then what is said of it. Grey where
 * nothing was seen.
 */
public final class AgainstPicture {
    private static final Length WIDTH = Length.ofMm(280);
    private static final double SIDE_MM = 6;
    private static final double TALLEST_MM = 100;
    private static final double HEAD_MM = 9;
    private static final double HALF_CHART_MM = 18;
    private static final double LINE_MM = 5;
    private static final double[] TIMES = {1, 2, 5, 10, 20, 50};
    /** Stations further apart than this are joined only if the next is no further than the piece was swept in. */
    private static final double SWEPT_MM = 3;

    private static final double DOT_MM = 0.5;

    private final Pattern pattern;
    private final Comparison comparison;
    private final Length tolerance;
    private final UnitSystem units;
    private final DrawingScale scale;
    private final double heldMm;
    private final double axisMm;
    private final double reachMm;
    private final double chartMm;
    private final double times;
    private final double originMm;

    private AgainstPicture(Pattern pattern, Comparison comparison, Length diameterTolerance, UnitSystem units) {
        this.pattern = pattern;
        this.comparison = comparison;
        this.tolerance = diameterTolerance.times(0.5);
        this.units = units;
        boolean byEnd = comparison.held() == Comparison.Held.END;
        double longer = comparison.longer().mm();
        this.heldMm = byEnd ? longer : 0;
        double left = Math.min(0, heldMm);
        double right = Math.max(pattern.length().mm() + heldMm, pattern.length().mm() + longer);
        double widest = Math.max(
                pattern.outline().largestRadius().mm(),
                comparison.profile().largestRadius().mm());
        double along = (WIDTH.mm() - 2 * SIDE_MM) / (right - left);
        this.scale = DrawingScale.of(Math.min(along, TALLEST_MM / (2 * widest)));
        this.reachMm = scale.paperOverWood() * widest;
        this.axisMm = HEAD_MM + 2 + reachMm;
        this.chartMm = axisMm + reachMm + 16 + HALF_CHART_MM;
        this.times = times();
        this.originMm = SIDE_MM - scale.paperOverWood() * left;
    }

    /**
     * {@return the picture}
     *
     * @param pattern what the piece was to be
     * @param comparison what was found
     * @param diameterTolerance how far a diameter may be off
     * @param words what is said of it, each a sentence; the first few are set below
     * @param units to letter in
     */
    public static Svg svg(
            Pattern pattern, Comparison comparison, Length diameterTolerance, List<String> words, UnitSystem units) {
        return new AgainstPicture(pattern, comparison, diameterTolerance, units).draw(words);
    }

    /** As large as the chart holds nearly all of it: nineteen places of twenty. */
    private double times() {
        double[] off = comparison.off().stream()
                .mapToDouble(each -> each.much().value().abs().mm())
                .sorted()
                .toArray();
        double most = Math.max(tolerance.mm(), off.length == 0 ? 0 : off[(int) (0.95 * (off.length - 1))]);
        double best = TIMES[0];
        for (double each : TIMES) {
            best = each * scale.paperOverWood() * most <= HALF_CHART_MM ? each : best;
        }
        return best;
    }

    private double x(double placeMm) {
        return originMm + scale.paperOverWood() * placeMm;
    }

    private double chart(double offMm) {
        double up = scale.paperOverWood() * times * offMm;
        return chartMm - Math.max(-HALF_CHART_MM, Math.min(HALF_CHART_MM, up));
    }

    private Svg draw(List<String> words) {
        List<Shape> shapes = new ArrayList<>();
        String title = "The piece (heavy line) over its pattern, drawn %s; %s long, held at its %s end"
                .formatted(
                        scale.text(),
                        comparison.profile().length().format(units),
                        comparison.held() == Comparison.Held.START ? "start" : "far");
        shapes.add(TextLine.of(Lettering.SMALL, SIDE_MM, 5.5, title));
        for (Profile.Stretch each : comparison.profile().hidden()) {
            double from = x(each.from().mm());
            double wide = x(each.to().mm()) - from;
            shapes.add(Path.rectangle(Pen.TINT, from, axisMm - reachMm, wide, 2 * reachMm));
            shapes.add(Path.rectangle(Pen.TINT, from, chartMm - HALF_CHART_MM, wide, 2 * HALF_CHART_MM));
        }
        OutlinePath path = new OutlinePath(x(heldMm), axisMm, scale.paperOverWood());
        shapes.add(path.closed(Pen.WOOD, pattern.outline()));
        shapes.addAll(members());
        shapes.add(path.closed(Pen.LINE, pattern.outline()));
        shapes.add(Path.line(
                Pen.DASHED, x(heldMm) - 3, axisMm, x(heldMm + pattern.length().mm()) + 3, axisMm));
        shapes.addAll(piece());
        shapes.addAll(chart());
        double y = chartMm + HALF_CHART_MM + 8;
        for (String each : words) {
            for (String line : TextWrap.wrap(each, Lettering.BODY, WIDTH.mm() - 2 * SIDE_MM)) {
                shapes.add(TextLine.of(Lettering.BODY, SIDE_MM, y, line));
                y += LINE_MM;
            }
        }
        return new Svg(WIDTH, Length.ofMm(y), title, shapes);
    }

    private List<Shape> members() {
        MemberNumbers numbers = new MemberNumbers(axisMm, reachMm);
        for (PlacedMember each : pattern.placed()) {
            numbers.add(x(heldMm + each.start().mm()), x(heldMm + each.end().mm()));
        }
        return numbers.shapes();
    }

    /** What was seen, on both sides; swept from end to end a line, else a dot for each place. */
    private List<Shape> piece() {
        List<Shape> out = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            for (List<Profile.Station> run : runs()) {
                double[] through = new double[2 * run.size()];
                for (int i = 0; i < run.size(); i++) {
                    through[2 * i] = x(run.get(i).place().mm());
                    through[2 * i + 1] = axisMm + side * scale.times(run.get(i).radius());
                }
                if (run.size() > 1) {
                    out.add(Path.through(Pen.ACCENT, through));
                } else {
                    out.add(Path.circle(Pen.ACCENT_FILL, through[0], through[1], DOT_MM));
                }
            }
        }
        return out;
    }

    private List<List<Profile.Station>> runs() {
        List<List<Profile.Station>> out = new ArrayList<>();
        for (Profile.Station each : comparison.profile().stations()) {
            double at = each.place().mm();
            boolean hidden = comparison.profile().hidden().stream()
                    .anyMatch(gap -> gap.from().mm() < at && at < gap.to().mm());
            if (hidden) {
                continue;
            }
            List<Profile.Station> last = out.isEmpty() ? List.of() : out.get(out.size() - 1);
            boolean joins = !last.isEmpty()
                    && at - last.get(last.size() - 1).place().mm() <= SWEPT_MM
                    && !hiddenBetween(last.get(last.size() - 1).place().mm(), at);
            if (!joins) {
                out.add(new ArrayList<>());
            }
            out.get(out.size() - 1).add(each);
        }
        return out;
    }

    private boolean hiddenBetween(double fromMm, double toMm) {
        return comparison.profile().hidden().stream()
                .anyMatch(gap -> gap.from().mm() < toMm && fromMm < gap.to().mm());
    }

    private List<Shape> chart() {
        List<Shape> out = new ArrayList<>();
        double left = x(Math.min(0, heldMm));
        double right = x(comparison.profile().length().mm());
        String told =
                ("How far it lies off the pattern, %s times as large as above: upward where wood stands proud. Dashed: the %s"
                                + " that a radius may be off.")
                        .formatted(Math.round(times), tolerance.formatFine(units));
        out.add(TextLine.of(Lettering.SMALL, SIDE_MM, chartMm - HALF_CHART_MM - 3, told));
        out.add(Path.line(Pen.LINE, left, chartMm, right, chartMm));
        out.add(Path.line(Pen.DASHED, left, chart(tolerance.mm()), right, chart(tolerance.mm())));
        out.add(Path.line(Pen.DASHED, left, chart(-tolerance.mm()), right, chart(-tolerance.mm())));
        double lastPlace = Double.NEGATIVE_INFINITY;
        List<double[]> run = new ArrayList<>();
        for (Comparison.Off each : comparison.off()) {
            double at = each.place().mm();
            if (!run.isEmpty() && (at - lastPlace > SWEPT_MM || hiddenBetween(lastPlace, at))) {
                out.add(line(run));
                run.clear();
            }
            run.add(new double[] {x(at), chart(each.much().value().mm())});
            lastPlace = at;
        }
        if (!run.isEmpty()) {
            out.add(line(run));
        }
        return out;
    }

    private static Shape line(List<double[]> run) {
        double[] through = new double[2 * run.size()];
        for (int i = 0; i < run.size(); i++) {
            through[2 * i] = run.get(i)[0];
            through[2 * i + 1] = run.get(i)[1];
        }
        return run.size() > 1
                ? Path.through(Pen.ACCENT, through)
                : Path.circle(Pen.ACCENT_FILL, through[0], through[1], DOT_MM);
    }
}
