package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One edge as radii along the piece. No ray on the contour runs through the piece, so at every place each ray bounds the radius, and where the
 * surface was seen the least bound is met: the profile is the lower envelope of the rays. Behind a
 * hollow corner of the contour nothing was seen: the radius there is bounded, not measured, and all of it by the few rays that touch the
 * thicker part before it and run on through the corner.
 */
final class SideProfile {
    /** By so many points to either side is judged how sure an edge is at a place. */
    private static final int NEAR = 6;

    /** A few neighbouring rays: so many more than one. */
    private static final int FEW = 2;

    private final double[] radius;

    private final double[] doubts;

    /** Which of the edge's rays bounds each step. */
    private final int[] rays;

    private final EdgeChain chain;

    private final Steps steps;

    /** Worked out when first asked for: of most views only the radii are. */
    private Optional<boolean[]> hidden = Optional.empty();

    private SideProfile(double[] radius, double[] doubts, int[] rays, EdgeChain chain, Steps steps) {
        this.doubts = doubts;
        this.rays = rays;
        this.radius = radius;
        this.chain = chain;
        this.steps = steps;
    }

    /**
     * Takes the radii from one edge.
     *
     * @param chain the edge
     * @param doubts what each of its points is uncertain by, pixels
     * @param start its start end
     * @param end its other end
     * @param from where the piece begins along the axis
     * @param to where it ends
     * @param count at how many even steps, both ends included
     * @param focal pixels to one unit
     */
    static SideProfile of(
            EdgeChain chain,
            double[] doubts,
            EndCap start,
            EndCap end,
            double from,
            double to,
            int count,
            double focal) {
        double widest = 1.1 * chain.widest();
        boolean[] out = new boolean[chain.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = inMark(chain, i, start, true) || inMark(chain, i, end, false);
        }
        Steps steps = new Steps(from, to, count);
        int[] rays = new int[count];
        double[] radius = envelope(chain, out, widest, steps, focal, rays);
        double[] atSteps = new double[count];
        for (int k = 0; k < count; k++) {
            atSteps[k] = near(doubts, rays[k]);
        }
        return new SideProfile(radius, atSteps, rays, chain, steps);
    }

    /** What the points around one are uncertain by, root mean square. */
    private static double near(double[] doubts, int i) {
        int from = Math.max(0, i - NEAR);
        int to = Math.min(doubts.length - 1, i + NEAR);
        double squares = 0;
        for (int k = from; k <= to; k++) {
            squares += doubts[k] * doubts[k];
        }
        return Math.sqrt(squares / Math.max(1, to - from + 1));
    }

    /** Works out where nothing was seen, which else is done when it is first asked. */
    void follow() {
        hidden();
    }

    private boolean[] hidden() {
        boolean[] found = hidden.orElseGet(this::unseen);
        hidden = Optional.of(found);
        return found;
    }

    private boolean[] unseen() {
        double step = (steps.to() - steps.from()) / (steps.count() - 1);
        boolean[] unseen = new boolean[steps.count()];
        List<EdgeChain.Gap> gaps = new ArrayList<>(chain.leaps());
        gaps.addAll(chain.steps());
        for (EdgeChain.Gap gap : gaps) {
            markBehind(gap, unseen, step);
        }
        markShadows(unseen, step);
        return unseen;
    }

    /** Marks what the rays at a corner bound. Where they touch tells but roughly what that is: on a steep flank the noise moves it far. */
    private void markBehind(EdgeChain.Gap gap, boolean[] unseen, double step) {
        int first = (int) Math.max(0, Math.ceil((gap.before() - steps.from()) / step));
        int last = (int) Math.min(unseen.length - 1, Math.floor((gap.after() - steps.from()) / step));
        // What hides the rest is thickest, and from there on a step that a ray farther off bounds was seen, but for
        // the last one.
        int thickest = first;
        int behind = first;
        for (int k = first; k <= last; k++) {
            thickest = radius[k] > radius[thickest] ? k : thickest;
            behind = gap.off(rays[k]) < gap.off(rays[behind]) ? k : behind;
        }
        while (thickest < behind
                && first + 1 < behind
                && rays[first + 1] < gap.firstRay()
                && chain.isEven(rays[first + 1])) {
            first++;
        }
        while (thickest > behind
                && last - 1 > behind
                && rays[last - 1] > gap.lastRay()
                && chain.isEven(rays[last - 1])) {
            last--;
        }
        // A flank that rounds over is bounded by its own rays one after the other: it was seen.
        while (first <= last && !gap.isBeside(rays[first])) {
            first++;
        }
        while (last >= first && !gap.isBeside(rays[last])) {
            last--;
        }
        if (first <= last && chain.skips(rays[first], rays[last], step * (last - first))) {
            Arrays.fill(unseen, first, last + 1, true);
        }
    }

    /** Marks what a few neighbouring rays alone bound, farther than their noise lets one of them bound what is in sight. */
    private void markShadows(boolean[] unseen, double step) {
        for (int k = 0; k < rays.length; k++) {
            int end = k;
            while (end + 1 < rays.length && Math.abs(rays[end + 1] - rays[k]) <= FEW) {
                end++;
            }
            if (step * (end - k) > chain.mostBound(rays[k], radius[k])) {
                Arrays.fill(unseen, k, end + 1, true);
            }
        }
    }

    /** Even steps along the axis. */
    private record Steps(double from, double to, int count) {
        double place(int k) {
            return from + (to - from) * k / (count - 1);
        }

        /** The first step not before a place, one too early at most for rounding. */
        int first(double place) {
            return (int) Math.max(0, Math.ceil((place - from) / (to - from) * (count - 1)) - 1);
        }

        int last(double place) {
            return (int) Math.min(count - 1, Math.floor((place - from) / (to - from) * (count - 1)) + 1);
        }
    }

    /** The least that any ray passes each step by. A ray is asked only about the steps that it passes by less than the piece is wide. */
    private static double[] envelope(
            EdgeChain chain, boolean[] out, double widest, Steps steps, double focal, int[] rays) {
        double[] places = new double[steps.count()];
        for (int k = 0; k < places.length; k++) {
            places[k] = steps.place(k);
        }
        // Squared until the end.
        double[] least = new double[places.length];
        Arrays.fill(least, widest * widest);
        for (int i = 0; i < out.length; i++) {
            if (out[i]) {
                continue;
            }
            TangentRay at = chain.ray(i);
            double one = at.along() * (1 - widest);
            double other = at.along() * (1 + widest);
            int end = steps.last(Math.max(one, other));
            for (int k = steps.first(Math.min(one, other)); k <= end; k++) {
                double passing = at.squaredPassing(places[k]);
                if (passing < least[k]) {
                    least[k] = passing;
                    rays[k] = i;
                }
            }
            // Between two neighbouring rays lie others; nearly square to the axis each passes only a hair's breadth of
            // it
            // closely.
            if (i + 1 < out.length && !out[i + 1]) {
                TangentRay next = chain.ray(i + 1);
                if (Math.abs(next.place() - at.place()) <= 3 / focal) {
                    int last = steps.last(Math.max(at.place(), next.place()));
                    for (int k = steps.first(Math.min(at.place(), next.place())); k <= last; k++) {
                        double between = between(at, next, places[k]);
                        if (between * between < least[k]) {
                            least[k] = between * between;
                            rays[k] = i;
                        }
                    }
                }
            }
        }
        for (int k = 0; k < least.length; k++) {
            least[k] = Math.sqrt(least[k]);
        }
        return least;
    }

    /** The radius where a ray between two neighbours touches at a place, if their own places enclose it; else without bound. */
    private static double between(TangentRay one, TangentRay other, double place) {
        double gap = other.place() - one.place();
        double share = (place - one.place()) / gap;
        return gap == 0 || share < 0 || share > 1
                ? Double.POSITIVE_INFINITY
                : one.radius() + share * (other.radius() - one.radius());
    }

    /** In the middle of a flat end, where a lathe's centre or its mark may stand. */
    private static boolean inMark(EdgeChain chain, int i, EndCap cap, boolean start) {
        if (!cap.flat() || (start ? i > chain.size() / 2 : i < chain.size() / 2)) {
            return false;
        }
        double inward = start ? chain.along(i) - cap.apex() : cap.apex() - chain.along(i);
        return Math.abs(chain.across(i)) < 0.4 * cap.radius() && inward < Math.abs(cap.apex()) * cap.radius();
    }

    /** The radius at a step. */
    double radius(int k) {
        return radius[k];
    }

    /** What the edge is uncertain by there, pixels. */
    double doubt(int k) {
        return doubts[k];
    }

    /** Whether a step lies where nothing was seen. */
    boolean isHidden(int k) {
        return hidden()[k];
    }

    /** Whether one does within so many steps. */
    boolean isHiddenNear(int k, int reach) {
        boolean[] all = hidden();
        for (int i = Math.max(0, k - reach); i <= Math.min(all.length - 1, k + reach); i++) {
            if (all[i]) {
                return true;
            }
        }
        return false;
    }
}
