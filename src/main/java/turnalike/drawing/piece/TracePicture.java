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
import turnalike.outline.Outline;
import turnalike.trace.Profile;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What was read of an original over the members that explain it: the members in wood with their joints and numbers, each station as a dot on
 * both sides (where there are many, as a line), and grey where nothing was seen.
 */
public final class TracePicture {
    private static final Length WIDTH = Length.ofMm(280);
    private static final double SIDE_MM = 6;
    private static final double TALLEST_MM = 120;
    private static final double HEAD_MM = 9;
    private static final double FOOT_MM = 13;
    private static final double DOT_MM = 0.45;
    private static final int FEW = 120;

    private final Traced traced;
    private final DrawingScale scale;
    private final double axisMm;
    private final double reachMm;
    private final OutlinePath path;

    private TracePicture(Traced traced) {
        this.traced = traced;
        Outline outline = traced.run().outline();
        double widest = Math.max(
                outline.largestRadius().mm(),
                traced.original().profile().largestRadius().mm());
        double along = (WIDTH.mm() - 2 * SIDE_MM) / outline.length().mm();
        this.scale = DrawingScale.of(Math.min(along, TALLEST_MM / (2 * widest)));
        this.reachMm = scale.paperOverWood() * widest;
        this.axisMm = HEAD_MM + 2 + reachMm;
        this.path = new OutlinePath(SIDE_MM, axisMm, scale.paperOverWood());
    }

    /**
     * {@return the picture}
     *
     * @param traced what was found
     * @param units to letter in
     */
    public static Svg svg(Traced traced, UnitSystem units) {
        return new TracePicture(traced).draw(units);
    }

    private Svg draw(UnitSystem units) {
        List<Shape> shapes = new ArrayList<>();
        Outline outline = traced.run().outline();
        String title = "What was read (%s) over the members found, drawn %s; %s long"
                .formatted(
                        traced.source().word(), scale.text(), outline.length().format(units));
        shapes.add(TextLine.of(Lettering.SMALL, SIDE_MM, 5.5, title));
        for (Profile.Stretch each : traced.original().profile().hidden()) {
            double from = path.x(each.from().mm());
            shapes.add(Path.rectangle(
                    Pen.TINT, from, axisMm - reachMm, path.x(each.to().mm()) - from, 2 * reachMm));
        }
        shapes.add(path.closed(Pen.WOOD, outline));
        shapes.addAll(joints());
        shapes.add(path.closed(Pen.OUTLINE, outline));
        shapes.add(
                Path.line(Pen.DASHED, SIDE_MM - 3, axisMm, path.x(outline.end().mm()) + 3, axisMm));
        shapes.addAll(stations());
        double height = axisMm + reachMm + FOOT_MM;
        TracedMember.Miss worst = traced.run().miss();
        String foot = worst.isNone()
                ? "All %d places read lie on the members".formatted(worst.stations())
                : "Worst: %s off at %s; %s in the mean"
                        .formatted(
                                worst.worst().formatMeasured(units),
                                worst.worstAt().format(units),
                                worst.rms().formatMeasured(units));
        shapes.add(TextLine.of(Lettering.SMALL, SIDE_MM, height - 2, foot));
        return new Svg(WIDTH, Length.ofMm(height), title, shapes);
    }

    private List<Shape> joints() {
        MemberNumbers numbers = new MemberNumbers(axisMm, reachMm);
        for (TracedMember each : traced.run().members()) {
            numbers.add(path.x(each.from().mm()), path.x(each.to().mm()));
        }
        return numbers.shapes();
    }

    private List<Shape> stations() {
        List<Profile.Station> stations = traced.original().profile().stations();
        List<Path> out = new ArrayList<>();
        boolean few = stations.size() <= FEW;
        for (int side = -1; side <= 1; side += 2) {
            double[] through = new double[2 * stations.size()];
            for (int i = 0; i < stations.size(); i++) {
                double x = path.x(stations.get(i).place().mm());
                double y = axisMm + side * scale.times(stations.get(i).radius());
                through[2 * i] = x;
                through[2 * i + 1] = y;
                if (few) {
                    out.add(Path.circle(Pen.ACCENT_FILL, x, y, DOT_MM));
                }
            }
            if (!few) {
                out.add(Path.through(Pen.ACCENT, through));
            }
        }
        return Path.together(few ? Pen.ACCENT_FILL : Pen.ACCENT, out);
    }
}
