package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.piece.DrawnDiameters;
import turnalike.drawing.piece.LeaderLabels;
import turnalike.drawing.piece.PieceLabels;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.SvgNumbers;
import turnalike.outline.Outline;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The half-profile checking template, full size: a card whose lower edge is the piece's profile, to be held against it. Its ends stand at
 * the ends of the piece and its back is straight. Lines from the labels down to the edge are the marks; a short tick says where a
 * diameter is taken. The true shape: lines, arcs and cubic curves without approximation.
 */
public final class ProfileTemplate {
    private static final double PAD_MM = 4;
    private static final double EDGE_MM = 2;
    /** Between the labels and the piece's largest radius: what keeps the card stiff. */
    private static final double NECK_MM = 9;

    private static final double TICK_MM = 5;
    private static final double BELOW_MM = 3;

    private final Pattern pattern;
    private final UnitSystem units;
    private final Outline outline;
    private final double padMm;

    private ProfileTemplate(Pattern pattern, UnitSystem units, double padMm) {
        this.pattern = pattern;
        this.units = units;
        this.outline = pattern.outline();
        this.padMm = padMm;
    }

    public static ProfileTemplate of(Pattern pattern, UnitSystem units) {
        double needed = LeaderLabels.closestMm(new ProfileTemplate(pattern, units, 0).flags());
        double pad = Math.max(PAD_MM, (needed - pattern.length().mm()) / 2 + 2);
        return new ProfileTemplate(pattern, units, pad);
    }

    /** Where the datum end lies in the drawing, from its left edge. */
    public Length datum() {
        return Length.ofMm(padMm);
    }

    /** Where the card's straight back lies in the drawing, from its top. */
    public Length edge() {
        return Length.ofMm(EDGE_MM);
    }

    /** Every place along the piece where the template has a line or a tick, from the datum end. */
    public List<Length> listPlaces() {
        return DrawnDiameters.places(pattern);
    }

    public Svg svg() {
        double widthMm = 2 * padMm + pattern.length().mm();
        LeaderLabels flags = labels(widthMm);
        double labelsEnd = EDGE_MM + flags.depthMm() + 2;
        double axis = labelsEnd + NECK_MM + outline.largestRadius().mm();
        double height = axis - outline.smallestRadius().mm() + BELOW_MM;
        List<Shape> shapes = new ArrayList<>();
        // Whoever reads the drawing back cannot see where the axis lay: the card ends at its own back.
        Map<String, String> told = Map.of("data-axis", SvgNumbers.mm(axis));
        shapes.add(new Group(0, 0, told, Optional.empty(), List.of(card(axis))));
        shapes.addAll(lines(labelsEnd, axis));
        shapes.addAll(flags.above(labelsEnd));
        String title = "checking template for %s, full size, %s long"
                .formatted(pattern.name(), pattern.length().format(units));
        return new Svg(Length.ofMm(widthMm), Length.ofMm(height), title, shapes);
    }

    /** Within the card's ends where there is room, so that none is cut through. */
    private LeaderLabels labels(double widthMm) {
        List<LeaderLabels.Flag> flags = flags();
        boolean inside = LeaderLabels.closestMm(flags) <= pattern.length().mm() - 2;
        double least = inside ? padMm + 1 : 1;
        return LeaderLabels.between(least, widthMm - least, flags);
    }

    private Path card(double axisMm) {
        double end = padMm + pattern.length().mm();
        List<Path.Step> steps = new ArrayList<>(new OutlinePath(padMm, axisMm, 1)
                .upperSide(Pen.OUTLINE, outline)
                .steps());
        steps.add(new Path.Straight(end, EDGE_MM));
        steps.add(new Path.Straight(padMm, EDGE_MM));
        steps.add(new Path.Close());
        return new Path(Pen.OUTLINE, steps);
    }

    private List<Shape> lines(double labelsEndMm, double axisMm) {
        List<Shape> out = new ArrayList<>();
        for (Mark mark : pattern.marks()) {
            if (mark.kind() != Mark.Kind.END) {
                double x = padMm + mark.place().mm();
                out.add(Path.line(Pen.FINE, x, labelsEndMm, x, axisMm - highestMm(mark.place())));
            }
        }
        for (DrawnDiameters.Size size : DrawnDiameters.of(pattern)) {
            double x = padMm + size.place().mm();
            out.add(Path.line(Pen.ACCENT, x, labelsEndMm, x, labelsEndMm + TICK_MM));
        }
        return out;
    }

    /** At a shoulder the larger radius, where the card ends first. */
    private double highestMm(Length place) {
        double hair = 1e-7;
        double before = outline.radiusAt(Length.ofMm(place.mm() - hair)).mm();
        double after = outline.radiusAt(Length.ofMm(place.mm() + hair)).mm();
        return Math.max(before, after);
    }

    private List<LeaderLabels.Flag> flags() {
        return PieceLabels.of(pattern, units, padMm);
    }
}
