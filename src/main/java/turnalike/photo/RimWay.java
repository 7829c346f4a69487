package turnalike.photo;

/**
 * One way to explain a piece's ends, and how ill all that is known and seen agrees with it: twice a negative log likelihood.
 *
 * @param view with both ends as they are in it
 * @param strays what the view strays by from all that was known of it, over what that is uncertain by, squared and added up
 * @param start what the start's points cost
 * @param end what the other end's do
 */
record RimWay(ViewFit.View view, double strays, double start, double end) {
    /** What an end that fits no rim at all costs, and what a chamfer or a rounding costs: the usual end of a piece is sawn off. Both by trying. */
    private static final double NO_RIM = 16;

    private static final double SELDOM = 5;

    /** What an end costs that is a ball as far as is seen, and a dome. By trying. */
    private static final double BALL = 6;

    private static final double DOME = 8;

    /** What one end can tell of the view at most. By trying. */
    private static final double MOST_TOLD = 24;

    /** Two views are one if their lean, in radians, and their focal length's log lie no farther apart, and their costs. */
    private static final double SAME = 0.002;

    private static final double SAME_COST = 0.2;

    /** What such an end costs of which so many points speak for themselves. */
    static double cost(EndCap cap, double points) {
        return form(cap) + 2 * points * cap.astray();
    }

    /** What its form costs beside a sawn end's, before the points are asked. */
    private static double form(EndCap cap) {
        if (cap.isBall()) {
            return BALL;
        }
        if (cap.isDome()) {
            return DOME;
        }
        return (cap.flat() ? 0 : NO_RIM) + (cap.edge().isSharp() ? 0 : SELDOM);
    }

    double cost() {
        return strays + start + end;
    }

    /** Whether either end has a chamfer or a rounding. */
    boolean isBroken() {
        return !view.start().edge().isSharp() || !view.end().edge().isSharp();
    }

    /** Whether the same of the ends are flat. */
    boolean hasSuchEnds(RimWay other) {
        return view.start().flat() == other.view.start().flat()
                && view.end().flat() == other.view.end().flat();
    }

    /** Whether both ends' rims are of the same kinds. */
    boolean hasSuchRims(RimWay other) {
        return view.start().edge().isLike(other.view.start().edge())
                && view.end().edge().isLike(other.view.end().edge());
    }

    /** Whether it is the same come to from another beginning, which counts once. */
    boolean isLike(RimWay other) {
        return Math.abs(other.view.logFocal() - view.logFocal()) < SAME
                && Math.abs(other.view.tilt() - view.tilt()) < SAME
                && hasSuchEnds(other)
                && Math.abs(other.cost() - cost()) < SAME_COST;
    }

    /** The same, no end of which explains its points worse than the best way does by more than a shade or a knot beside it may feign. */
    RimWay held(double leastStart, double leastEnd) {
        return new RimWay(view, strays, Math.min(start, leastStart + MOST_TOLD), Math.min(end, leastEnd + MOST_TOLD));
    }
}
