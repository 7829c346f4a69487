package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Radii from both edges at even steps along the piece, in millimetres, for one view of it. */
final class RoundOutline {
    private static final double STEP_MM = 0.5;

    /** What no point of an edge is better known than, pixels: all strays by so much that it does not know of. */
    private static final double LEAST_DOUBT = 0.03;

    private final double length;

    private final double mmPerUnit;

    private final double fromUnits;

    private final double focal;

    private final double[] radius;

    private final double[] apart;

    private final double[] open;

    final SideProfile left;

    final SideProfile right;

    /** A leap within so many steps of one on the other edge is the same. */
    private final int near;

    /** Worked out when first asked for: of the outlines that only tell the uncertainty nobody does. */
    private Optional<boolean[]> hidden = Optional.empty();

    private final double noise;

    private final EndsUnseen ends;

    /** Which ends of the contour it runs between. */
    private final List<EndCap> caps;

    private RoundOutline(
            double length,
            double mmPerUnit,
            double fromUnits,
            double focal,
            double[] radius,
            double[] apart,
            double[] open,
            SideProfile left,
            SideProfile right,
            int near,
            double noise,
            EndsUnseen ends,
            List<EndCap> caps) {
        this.length = length;
        this.mmPerUnit = mmPerUnit;
        this.fromUnits = fromUnits;
        this.focal = focal;
        this.radius = radius;
        this.apart = apart;
        this.open = open;
        this.left = left;
        this.right = right;
        this.near = near;
        this.noise = noise;
        this.ends = ends;
        this.caps = caps;
    }

    /**
     * Takes the radii from both edges.
     *
     * @param contour squared
     * @param start the start's end cap
     * @param end the end's
     * @param lengthMm the overall length
     */
    static RoundOutline of(SquaredContour contour, EndCap start, EndCap end, double lengthMm) throws Unsure {
        Optional<RoundOutline> same =
                contour.outline().filter(each -> each.length == lengthMm && each.caps.equals(List.of(start, end)));
        if (same.isPresent()) {
            return same.orElseThrow();
        }
        RoundOutline taken = taken(contour, start, end, lengthMm);
        contour.keep(taken);
        return taken;
    }

    private static RoundOutline taken(SquaredContour contour, EndCap start, EndCap end, double lengthMm) throws Unsure {
        EdgeChain left = contour.edge(true);
        EdgeChain right = contour.edge(false);
        Optional<RoundedEnd> first = RoundedEnd.of(contour, start, true);
        Optional<RoundedEnd> last = RoundedEnd.of(contour, end, false);
        double from = first.map(RoundedEnd::place).orElseGet(start::place);
        double to = last.map(RoundedEnd::place).orElseGet(end::place);
        double focal = contour.sight().focal();
        if (!(to > from)) {
            throw new Unsure(
                    PhotoTrace.Reason.NOT_ROUND,
                    "the piece's two edges could not be followed from end to end",
                    "take it again on a plain ground of another colour");
        }
        double mmPerUnit = lengthMm / (to - from);
        int count = (int) Math.ceil(lengthMm / STEP_MM) + 1;
        SideProfile[] sides = new SideProfile[2];
        Cores.each(
                2,
                side -> sides[side] = SideProfile.of(
                        side == 0 ? left : right, contour.doubts(side == 0), start, end, from, to, count, focal));
        SideProfile one = sides[0];
        SideProfile other = sides[1];
        double[] radius = new double[count];
        double[] apart = new double[count];
        double[] open = new double[count];
        for (int k = 0; k < count; k++) {
            double share = shareOf(one.doubt(k), other.doubt(k));
            double bound = share * one.radius(k) + (1 - share) * other.radius(k);
            double at = from + (to - from) * k / (count - 1);
            // Round a pole no ray touches: there the end's own form is what is known.
            double form = first.filter(pole -> at < pole.seen())
                    .or(() -> last.filter(pole -> at > pole.seen()))
                    .map(pole -> pole.radius(at))
                    .orElse(bound);
            radius[k] = mmPerUnit * Math.min(bound, form);
            apart[k] = mmPerUnit * (one.radius(k) - other.radius(k));
            open[k] = Math.sqrt(share * (1 - share)) * Math.abs(apart[k]);
        }
        return new RoundOutline(
                lengthMm,
                mmPerUnit,
                from,
                focal,
                radius,
                apart,
                open,
                one,
                other,
                (int) Math.ceil(4 / (focal * (to - from) / (count - 1))),
                Math.max(left.noisePixels(), right.noisePixels()),
                new EndsUnseen(mmPerUnit * unseen(start, first), mmPerUnit * unseen(end, last), lengthMm),
                List.of(start, end));
    }

    private static double unseen(EndCap cap, Optional<RoundedEnd> end) {
        return end.map(pole -> Math.abs(pole.place() - pole.back())).orElse(cap.open() / EndsUnseen.SPREAD);
    }

    /** What an edge counts by that is uncertain by so much, pixels, beside another: by one over the squares, as of independent measures. */
    private static double shareOf(double doubt, double other) {
        double one = 1 / ((doubt + LEAST_DOUBT) * (doubt + LEAST_DOUBT));
        double two = 1 / ((other + LEAST_DOUBT) * (other + LEAST_DOUBT));
        return one / (one + two);
    }

    private boolean[] hidden() {
        boolean[] found = hidden.orElseGet(this::unseen);
        hidden = Optional.of(found);
        return found;
    }

    private boolean[] unseen() {
        Cores.each(2, side -> (side == 0 ? left : right).follow());
        boolean[] unseen = new boolean[count()];
        for (int k = 0; k < unseen.length; k++) {
            // Both edges hide the same; a leap on one alone is noise or a shadow.
            unseen[k] = (left.isHidden(k) && right.isHiddenNear(k, near))
                    || (right.isHidden(k) && left.isHiddenNear(k, near));
        }
        return unseen;
    }

    int count() {
        return radius.length;
    }

    double placeMm(int k) {
        return length * k / (radius.length - 1);
    }

    double radiusMm(int k) {
        return radius[k];
    }

    /** The radius in units of the distance from the camera to the axis. */
    double radiusUnits(int k) {
        return radius[k] / mmPerUnit;
    }

    /** The place along the axis in those units, from the foot of the perpendicular out of the camera. */
    double alongUnits(int k) {
        return fromUnits + placeMm(k) / mmPerUnit;
    }

    /** X of the ray that touches the piece there, where it runs along the axis. */
    double ray(int k) {
        double r = radiusUnits(k);
        return alongUnits(k) / (1 - r * r);
    }

    double mmPerUnit() {
        return mmPerUnit;
    }

    EndsUnseen ends() {
        return ends;
    }

    /** Where a place in those units lies from the start end. */
    double ofUnitsMm(double along) {
        return (along - fromUnits) * mmPerUnit;
    }

    /** How much the left edge stands farther out than the right. */
    double apartMm(int k) {
        return apart[k];
    }

    double focalPx() {
        return focal;
    }

    /**
     * Half of what is seen across, both edges counting alike. A square's are no mirror images, so how sure each of them is must not move what is between:
     * on a strip of grain the two change places from step to step.
     */
    double acrossMm(int k) {
        return (leftMm(k) + rightMm(k)) / 2;
    }

    /** The same in units of the distance. */
    double acrossUnits(int k) {
        return acrossMm(k) / mmPerUnit;
    }

    /** How far the middle between the two edges is from the axis, to the left. */
    double asideUnits(int k) {
        return (left.radius(k) - right.radius(k)) / 2;
    }

    double leftMm(int k) {
        return mmPerUnit * left.radius(k);
    }

    double rightMm(int k) {
        return mmPerUnit * right.radius(k);
    }

    /** What that leaves open of the radius, one standard deviation: half of it where both edges are as sure, the less the surer one of them is. */
    double openMm(int k) {
        return open[k];
    }

    /** Over how much of the length one edge is by so much less sure than the other, from 0 to 1. */
    double oneSidedShare(double times) {
        int count = 0;
        for (int k = 0; k < radius.length; k++) {
            double less = Math.min(left.doubt(k), right.doubt(k)) + LEAST_DOUBT;
            count += worseDoubt(k) + LEAST_DOUBT > times * less ? 1 : 0;
        }
        return (double) count / radius.length;
    }

    /** What the less sure of the two edges is uncertain by, pixels. */
    double worseDoubt(int k) {
        return Math.max(left.doubt(k), right.doubt(k));
    }

    boolean isHidden(int k) {
        return hidden()[k];
    }

    /** Whether one edge takes it for hidden and the other does not. */
    boolean isHiddenByOne(int k) {
        hidden();
        return left.isHidden(k) != right.isHidden(k);
    }

    /** How far an edge point is from a smooth course, in pixels. */
    double noisePixels() {
        return noise;
    }

    /** Millimetres on the axis to a pixel. */
    double mmPerPixel() {
        return mmPerUnit / focal;
    }

    /** How much of the length was not seen, from 0 to 1. */
    double hiddenShare() {
        int dark = 0;
        for (boolean each : hidden()) {
            dark += each ? 1 : 0;
        }
        return (double) dark / radius.length;
    }

    /** The stretches in which nothing was seen, of at least so long. */
    List<Profile.Stretch> hiddenStretches(double leastMm) {
        return stretches(this::isHidden, leastMm);
    }

    /** Those that either edge takes for hidden, if it alone does too: there the other may be the noise's, or a shadow's that fills a hollow. */
    List<Profile.Stretch> hiddenByEither(double leastMm) {
        return stretches(k -> left.isHidden(k) || right.isHidden(k), leastMm);
    }

    private List<Profile.Stretch> stretches(IntPredicate hides, double leastMm) {
        List<Profile.Stretch> stretches = new ArrayList<>();
        int from = -1;
        for (int k = 0; k <= radius.length; k++) {
            boolean dark = k < radius.length && hides.test(k);
            if (dark && from < 0) {
                from = k;
            } else if (!dark && from >= 0) {
                double begin = placeMm(Math.max(0, from - 1));
                double finish = placeMm(k == radius.length ? k - 1 : k);
                if (finish - begin >= leastMm) {
                    stretches.add(new Profile.Stretch(Length.ofMm(begin), Length.ofMm(finish)));
                }
                from = -1;
            }
        }
        return stretches;
    }
}
