package turnalike.photo;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/**
 * A form that a piece's end may have, and how likely it is before it is looked at, beside an end sawn off with a sharp rim.
 *
 * @param edge what was done to its rim
 * @param kind what it is called
 * @param likely so many times as likely; of a kind of many widths, this one
 */
record EndForm(EndEdge edge, Kind kind, double likely) {
    /** Chamfers and roundings are tried in such steps of the radius right behind the end, up to so many. */
    private static final double CHAMFER_STEP = 0.03;

    private static final int CHAMFERS = 14;

    /** Sandpaper takes the corners off chamfers up to so many steps wide; wider ones would pass for roundings. */
    private static final int EASED_CHAMFERS = 10;

    private static final double ROUND_STEP = 0.05;

    private static final int ROUNDS = 20;

    /** A chamfer's corners are taken off by one of these. */
    private static final double[] EASED = {0.25, 0.55};

    /** How likely the kinds are beside a sharp rim, all widths together: rims are broken more often than not. Common practice, no source. */
    private static final double ALL_CHAMFERS = 3;

    private static final double ALL_ROUNDS = 2;

    private static final double STEEP = 0.1;

    private static final double DOMED = 0.05;

    private static final double NO_RIM = Math.exp(-8);

    /** Whatever an end may be. */
    static final List<EndForm> ALL = all();

    /** What an end is called. */
    enum Kind {
        SHARP,
        STEEP,
        CHAMFERED,
        EASED,
        WELL_EASED,
        ROUNDED,
        /** Rounded over so far that hardly a face is left. */
        BALL,
        DOME,
        /** Nothing that any of these would look like. */
        NONE;

        /** Whether such an end has a face, so that it is known where it stands. */
        boolean hasFace() {
            return compareTo(BALL) < 0;
        }
    }

    private static List<EndForm> all() {
        List<EndForm> all = new ArrayList<>(List.of(
                new EndForm(EndEdge.SHARP, Kind.SHARP, 1),
                new EndForm(EndEdge.SHARP, Kind.NONE, NO_RIM),
                new EndForm(EndEdge.DOME, Kind.DOME, DOMED),
                new EndForm(EndEdge.STEEP, Kind.STEEP, STEEP)));
        double each = ALL_CHAMFERS / (CHAMFERS + EASED_CHAMFERS * EASED.length);
        add(all, EndEdge::chamfered, CHAMFER_STEP, CHAMFERS, Kind.CHAMFERED, each);
        add(all, share -> EndEdge.eased(share, EASED[0]), CHAMFER_STEP, EASED_CHAMFERS, Kind.EASED, each);
        add(all, share -> EndEdge.eased(share, EASED[1]), CHAMFER_STEP, EASED_CHAMFERS, Kind.WELL_EASED, each);
        add(all, EndEdge::rounded, ROUND_STEP, ROUNDS, Kind.ROUNDED, ALL_ROUNDS / ROUNDS);
        return List.copyOf(all);
    }

    private static void add(
            List<EndForm> all, DoubleFunction<EndEdge> edge, double step, int count, Kind kind, double likely) {
        for (int k = 1; k <= count; k++) {
            EndEdge made = edge.apply(Math.min(1, step * k));
            all.add(new EndForm(made, made.isBall() ? Kind.BALL : kind, likely));
        }
    }

    /** Whether it is of a kind that comes in many widths. */
    boolean isWide() {
        return edge.width() > 0;
    }

    /** Whether it is the same but for its width. */
    boolean isLike(EndForm other) {
        return edge.round() > 0 == other.edge.round() > 0
                && edge.chamfer() > 0 == other.edge.chamfer() > 0
                && edge.eased() == other.edge.eased();
    }

    /** How likely each kind is, from how likely each form is. */
    static Map<Kind, Double> byKind(double[] likely) {
        Map<Kind, Double> kinds = new EnumMap<>(Kind.class);
        for (int k = 0; k < likely.length; k++) {
            kinds.merge(ALL.get(k).kind, likely[k], Double::sum);
        }
        return kinds;
    }

    /** A form of that kind, as wide as all of it are in the mean. */
    static EndEdge mean(Kind kind, double[] likely) {
        double width = 0;
        double sum = 0;
        EndEdge any = EndEdge.SHARP;
        for (int k = 0; k < likely.length; k++) {
            if (ALL.get(k).kind == kind) {
                any = ALL.get(k).edge;
                sum += likely[k];
                width += likely[k] * any.width();
            }
        }
        return width > 0 ? any.asWide(width / sum) : any;
    }

    /** The likeliest kind of those that have a face, or of those that have none. */
    static Kind likeliest(Map<Kind, Double> kinds, boolean hasFace) {
        return kinds.entrySet().stream()
                .filter(kind -> kind.getKey().hasFace() == hasFace)
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }
}
