package turnalike.drawing;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Length;

/**
 * The finished piece as it will look, lit from above: the same outline as every drawing, its roundness shown by light and shade. A round
 * body's surface at a share k of its radius above the axis faces the same way all along it, so it is drawn as bands of equal k, each of one
 * brightness: ambient light and the cosine of the angle to the lamp (Lambert's law). Square sections are flat, so one band.
 */
public final class ShadedPiece {
    private static final double SIDE_MM = 3;
    private static final int BANDS = 18;
    private static final double AMBIENT = 0.35;

    /** The lamp stands above the lathe and on the turner's side: the share of the radius that faces it. */
    private static final double LIT_AT = 0.55;

    /** Points along a curve; a twentieth of a millimetre of paper at the sizes drawn, and the outline itself is drawn exactly on top. */
    private static final int POINTS = 24;

    private static final int[] LIGHT_WOOD = {246, 219, 173};

    private ShadedPiece() {}

    /**
     * The picture, head end left.
     *
     * @param title what it shows, read aloud in its place
     * @param width of the picture
     * @param tallest the body may be
     */
    public static Svg svg(Outline outline, String title, Length width, Length tallest) {
        double along = (width.mm() - 2 * SIDE_MM) / outline.length().mm();
        double across =
                (tallest.mm() - 2 * SIDE_MM) / (2 * outline.largestRadius().mm());
        double scale = Math.min(along, across);
        double axis = SIDE_MM + scale * outline.largestRadius().mm();
        double left = (width.mm() - scale * outline.length().mm()) / 2;
        OutlinePath path = new OutlinePath(left - scale * outline.start().mm(), axis, scale);
        List<Shape> out = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            out.addAll(bands(segment, path));
        }
        out.add(path.closed(Pen.OUTLINE, outline));
        return new Svg(width, Length.ofMm(2 * axis), title, out);
    }

    /** From the top down, each band reaching to the lower edge, so that no gap shows between two. */
    private static List<Shape> bands(Segment segment, OutlinePath path) {
        boolean flat = segment.section() == Section.SQUARE;
        int count = flat ? 1 : BANDS;
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double top = 1 - 2.0 * i / count;
            double middle = flat ? LIT_AT : 1 - (2.0 * i + 1) / count;
            out.add(tint(area(segment, path, top), brightness(middle)));
        }
        return out;
    }

    private static double brightness(double share) {
        double angle = Math.asin(share) - Math.asin(LIT_AT);
        return AMBIENT + (1 - AMBIENT) * Math.max(0, Math.cos(angle));
    }

    private static Tint tint(Path area, double brightness) {
        return new Tint(
                area, (int) Math.round(LIGHT_WOOD[0] * brightness), (int) Math.round(LIGHT_WOOD[1] * brightness), (int)
                        Math.round(LIGHT_WOOD[2] * brightness));
    }

    private static Path area(Segment segment, OutlinePath path, double top) {
        double[] xy = new double[4 * (POINTS + 1)];
        for (int i = 0; i <= POINTS; i++) {
            double u = (double) i / POINTS;
            double at = u * segment.curve().length().mm();
            double radius = path.scale() * segment.curve().radiusMm(at);
            // A hair to the left, or the paper would shine through between two members.
            double x = path.x(segment.start().mm() + at) - (i == 0 ? 0.08 : 0);
            int back = xy.length - 2 - 2 * i;
            xy[2 * i] = x;
            xy[2 * i + 1] = path.axisMm() - top * radius;
            xy[back] = x;
            xy[back + 1] = path.axisMm() + radius;
        }
        return Path.polygon(Pen.WOOD, xy);
    }
}
