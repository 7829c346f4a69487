package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Length;

/**
 * The pattern's outline as a chain of points close together, walls of shoulders included, and where each point comes to stand under a
 * {@link Bend}.
 */
final class BentLine {
    private static final double STEP_MM = 0.2;

    /** Nothing further along than this is taken for the nearest. */
    private static final double REACH_MM = 5;

    /** A crest that rises or sinks less than this from the straight line between its ends has no shape of its own to grow by. */
    private static final double LEAST_RISE_MM = 0.3;

    /**
     * What a point moves by: the shifts of the spots on either side, {@code share} of the way between them, and its member's growths, each
     * so many times.
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Link(
            double placeMm,
            double radiusMm,
            int shift,
            double share,
            int[] growths,
            double[] times,
            boolean square,
            boolean chamfer) {
        double grown(double[] figures) {
            double sum = 0;
            for (int k = 0; k < growths.length; k++) {
                sum += times[k] * figures[growths[k]];
            }
            return sum;
        }
    }

    /**
     * The nearest point of the chain to a station.
     *
     * @param off how far the station lies from it along the direction (along, across)
     * @param link the point of the chain before it
     * @param share how far from there to the next, 0 to 1
     * @param level whether it lies on the outline of one member and not on a wall between two
     */
    record Nearest(double off, double along, double across, int link, double share, boolean level) {}

    private final List<Link> links = new ArrayList<>();
    private final double[] x;
    private final double[] r;

    BentLine(Bend bend) {
        for (Bend.Stretch stretch : bend.stretches()) {
            List<Segment> segments = stretch.placed().outline().segments();
            for (Segment segment : segments) {
                boolean whole = stretch.placed().member().section() == Section.SQUARE || segments.size() == 1;
                add(bend, stretch, segment, !whole && isChamfer(segment, stretch));
            }
        }
        x = new double[links.size()];
        r = new double[links.size()];
        bend(bend.none());
    }

    /** A short slope at an end of a member that is straight otherwise. */
    private static boolean isChamfer(Segment segment, Bend.Stretch stretch) {
        boolean straight = stretch.growths().length == 2;
        boolean slope = segment.curve().startRadiusMm() != segment.curve().endRadiusMm();
        return straight
                && slope
                && segment.curve().length().mm()
                        < 0.5 * stretch.placed().outline().length().mm();
    }

    private void add(Bend bend, Bend.Stretch stretch, Segment segment, boolean chamfer) {
        double length = segment.curve().length().mm();
        int parts = (int) Math.min(4000, Math.max(8, Math.ceil(length / STEP_MM)));
        boolean square = segment.section() == Section.SQUARE;
        for (int i = 0; i <= parts; i++) {
            // Closer together towards both ends, where arcs stand upright.
            double inside = length * (1 - Math.cos(Math.PI * i / parts)) / 2;
            double place = segment.start().mm() + inside;
            int k = stretch.firstSpot();
            while (k + 1 < stretch.lastSpot() && place > bend.spotMm()[k + 1]) {
                k++;
            }
            double from = bend.spotMm()[k];
            double share = Math.max(0, Math.min(1, (place - from) / (bend.spotMm()[k + 1] - from)));
            double radius = segment.curve().radiusMm(inside);
            links.add(new Link(
                    place,
                    radius,
                    k,
                    share,
                    stretch.growths(),
                    times(bend, stretch, k, share, place, radius),
                    square,
                    chamfer));
        }
    }

    /**
     * How much each growth of a member counts at a place. A bead that is thicker at its crest is so in the shape of the bead and not in that
     * of a tent: with one crest, the growth beyond the straight line between the ends goes as the member's own rise beyond it.
     */
    private static double[] times(
            Bend bend, Bend.Stretch stretch, int spot, double share, double placeMm, double radiusMm) {
        double[] out = new double[stretch.growths().length];
        double[] shape = out.length == 3 ? shape(bend, stretch, placeMm, radiusMm) : new double[0];
        if (shape.length == 0) {
            out[spot - stretch.firstSpot()] = 1 - share;
            out[spot - stretch.firstSpot() + 1] += share;
            return out;
        }
        double risen = shape[0];
        double along = shape[1];
        double crest = shape[2];
        out[0] = 1 - along - risen * (1 - crest);
        out[1] = risen;
        out[2] = along - risen * crest;
        return out;
    }

    /** {rise over the crest's, share of the way, the crest's share of the way}; nothing where the crest hardly rises. */
    private static double[] shape(Bend bend, Bend.Stretch stretch, double placeMm, double radiusMm) {
        double from = bend.spotMm()[stretch.firstSpot()];
        double to = bend.spotMm()[stretch.lastSpot()];
        double middle = bend.spotMm()[stretch.firstSpot() + 1];
        double start = stretch.placed().outline().startRadius().mm();
        double end = stretch.placed().outline().endRadius().mm();
        double along = (placeMm - from) / (to - from);
        double crest = (middle - from) / (to - from);
        double crestMm =
                stretch.placed().outline().radiusAt(Length.ofMm(middle)).mm();
        double rise = crestMm - mixed(start, end, crest);
        return Math.abs(rise) < LEAST_RISE_MM
                ? new double[0]
                : new double[] {(radiusMm - mixed(start, end, along)) / rise, along, crest};
    }

    /** Puts every point where these figures put it. */
    void bend(double[] figures) {
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            x[i] = link.placeMm + mixed(figures[link.shift], figures[link.shift + 1], link.share);
            r[i] = link.radiusMm + link.grown(figures);
        }
    }

    private static double mixed(double one, double other, double share) {
        return one + share * (other - one);
    }

    /** The nearest point to a station; {@code off} is above anything that counts where none is within reach. */
    Nearest nearest(double placeMm, double radiusMm) {
        double best = Double.POSITIVE_INFINITY;
        int at = 0;
        double share = 0;
        for (int i = Math.max(0, first(placeMm - REACH_MM) - 1); i + 1 < x.length && x[i] <= placeMm + REACH_MM; i++) {
            double dx = x[i + 1] - x[i];
            double dr = r[i + 1] - r[i];
            double square = dx * dx + dr * dr;
            double t = square > 0
                    ? Math.max(0, Math.min(1, ((placeMm - x[i]) * dx + (radiusMm - r[i]) * dr) / square))
                    : 0;
            double off = Math.hypot(x[i] + t * dx - placeMm, r[i] + t * dr - radiusMm);
            if (off < best) {
                best = off;
                at = i;
                share = t;
            }
        }
        return at(at, share, placeMm, radiusMm);
    }

    private Nearest at(int i, double share, double placeMm, double radiusMm) {
        double dx = x[i + 1] - x[i];
        double dr = r[i + 1] - r[i];
        double toX = placeMm - mixed(x[i], x[i + 1], share);
        double toR = radiusMm - mixed(r[i], r[i + 1], share);
        double off = Math.hypot(toX, toR);
        double chain = Math.hypot(dx, dr);
        boolean level = links.get(i + 1).placeMm - links.get(i).placeMm > 0;
        boolean corner = share <= 0 || share >= 1;
        if (off > 1e-9 && (corner || chain == 0)) {
            return new Nearest(off, toX / off, toR / off, i, share, level);
        }
        if (chain == 0) {
            return new Nearest(0, 0, 1, i, share, level);
        }
        double along = -dr / chain;
        double across = dx / chain;
        return new Nearest(toX * along + toR * across, along, across, i, share, level);
    }

    /** The first point at that place or beyond: bent points still rise, but for a hair. */
    private int first(double placeMm) {
        int low = 0;
        int high = x.length - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (x[middle] < placeMm) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Adds to {@code row} what the offset of a station changes by as each figure grows, with its sign turned. */
    void slopes(Nearest nearest, double[] row) {
        slopes(links.get(nearest.link()), nearest, 1 - nearest.share(), row);
        slopes(links.get(nearest.link() + 1), nearest, nearest.share(), row);
    }

    private static void slopes(Link link, Nearest nearest, double part, double[] row) {
        row[link.shift] += part * nearest.along() * (1 - link.share);
        row[link.shift + 1] += part * nearest.along() * link.share;
        for (int k = 0; k < link.growths.length; k++) {
            row[link.growths[k]] += part * nearest.across() * link.times[k];
        }
    }

    /** Whether the nearest point lies on a side left square, whose picture tells nothing of its thickness. */
    boolean isSquare(Nearest nearest) {
        return nearest.level() && links.get(nearest.link()).square;
    }

    /** Whether it lies on a chamfer: no caliper is laid there, and whoever measures the end means the thickness behind it. */
    boolean isChamfer(Nearest nearest) {
        return nearest.level() && links.get(nearest.link()).chamfer;
    }

    /**
     * The radius where the bent outline is cut at a place, and by {@code row} what it changes by as each figure grows.
     *
     * @param row is added to
     */
    double radius(double placeMm, double[] row) {
        int i = Math.max(0, Math.min(x.length - 2, first(placeMm) - 1));
        double dx = x[i + 1] - x[i];
        double share = dx > 0 ? Math.max(0, Math.min(1, (placeMm - x[i]) / dx)) : 0;
        double slope = dx > 0 ? (r[i + 1] - r[i]) / dx : 0;
        // What moves along by s shows, at a place that stays, a radius lower by slope times s.
        slopes(new Nearest(0, -slope, 1, i, share, true), row);
        return mixed(r[i], r[i + 1], share);
    }

    /** The radius of the outline as it is bent now, at a place. */
    double radius(double placeMm) {
        int i = Math.max(0, Math.min(x.length - 2, first(placeMm) - 1));
        double dx = x[i + 1] - x[i];
        double share = dx > 0 ? Math.max(0, Math.min(1, (placeMm - x[i]) / dx)) : 0;
        return mixed(r[i], r[i + 1], share);
    }
}
