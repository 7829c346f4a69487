package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One edge of the contour from the piece's start to its end, in squared coordinates, with some of the other edge beyond each end. Gives for each
 * of its points where on the piece the ray through it touches, from the contour's course nearby.
 */
final class EdgeChain {
    /** How far to each side a fit may look, in points of about a pixel; the longest that the noise lets pass is taken. */
    private static final int[] REACHES = {4, 7, 12, 20};

    /** How far beside a corner its two sides are judged, and by how many points. */
    private static final int CORNER = 2;

    private static final int SIDE = 6;

    private static final int LONGEST = REACHES[REACHES.length - 1];

    /** The least leap, in pixels, that is not noise. */
    private static final double LEAP = 2.5;

    /** Across by along, from where on a ray's touching place is the noise's: what is seen of it is no more than where it runs. */
    private static final double STEEP = 3;

    /** Of a hollow corner so many more rays to each side bound what it hides: it is as soft as the picture. */
    private static final int BESIDE = 3;

    /** Without noise so many pixels of a piece in sight are bounded by a few rays side by side, at most. */
    private static final double BOUND = 3;

    /** Rays whose places lie apart by more than so many times what their points do skip something between them. */
    private static final double EVEN = 3;

    private final double[] along;

    private final double[] across;

    /** What is laid through a few of its points, over and over. */
    private final EdgeParabola parabola;

    /** The edge proper: the points from here to before there. */
    private final int first;

    private final int end;

    private final double focal;

    private final TangentRay[] rays;

    /** Of each ray how far the fit looked, and to which sides: {@link #touching} numbers the ways. */
    private final byte[] reaches;

    private final byte[] ways;

    /** The usual distance of a point from a smooth course, in pixels. */
    private final double noise;

    private Optional<List<Gap>> leaps = Optional.empty();

    /**
     * Fits the contour at each point of the edge.
     *
     * @param along X of the points, start to end
     * @param across Y of them, either sign
     * @param first the first of the edge proper
     * @param end the one after its last
     * @param focal pixels to one unit
     */
    EdgeChain(double[] along, double[] across, int first, int end, double focal) {
        this(along, across, first, end, focal, 0);
        for (int i = first; i < end; i++) {
            rays[i - first] = touching(i);
        }
    }

    /**
     * Fits the same contour in another view of it, at each point as far as it was found to be smooth before.
     *
     * @param along likewise
     * @param across likewise
     * @param first likewise
     * @param end likewise
     * @param focal likewise
     * @param known the same edge
     * @param shift which of its points is this one's first
     */
    EdgeChain(double[] along, double[] across, int first, int end, double focal, EdgeChain known, int shift) {
        this(along, across, first, end, focal, known.noise);
        for (int i = first; i < end; i++) {
            int same = Math.max(0, Math.min(known.size() - 1, i - first + shift));
            rays[i - first] = touching(i, known.reaches[same], known.ways[same]);
        }
    }

    private EdgeChain(double[] along, double[] across, int first, int end, double focal, double knownNoise) {
        this.along = along;
        this.across = across;
        this.first = first;
        this.end = end;
        this.focal = focal;
        parabola = new EdgeParabola(along, across);
        rays = new TangentRay[end - first];
        reaches = new byte[end - first];
        ways = new byte[end - first];
        noise = knownNoise > 0 ? knownNoise : noise();
    }

    int size() {
        return end - first;
    }

    double along(int i) {
        return along[first + i];
    }

    double across(int i) {
        return across[first + i];
    }

    /** The ray through a point, smoothed by its neighbours, and where it touches. */
    TangentRay ray(int i) {
        return rays[i];
    }

    /** The largest distance of a point across the axis. */
    double widest() {
        double most = 0;
        for (int i = first; i < end; i++) {
            most = Math.max(most, Math.abs(across[i]));
        }
        return most;
    }

    /** The usual distance of a point from a smooth course, in pixels. */
    double noisePixels() {
        return noise;
    }

    private double noise() {
        double[] all = new double[Math.max(1, (end - first) / 5)];
        int count = 0;
        for (int i = first; i < end && count < all.length; i += 5) {
            parabola.fit(i, Math.max(0, i - 6), Math.min(along.length - 1, i + 6));
            all[count++] = focal * parabola.left();
        }
        Arrays.sort(all, 0, count);
        return Math.max(0.02, count == 0 ? 0 : all[count / 2]);
    }

    /**
     * Where the contour has a hollow corner: on its two sides the rays touch at places apart, and what lies between stands behind the thicker
     * part. Judged a little beside the corner, which the picture's softness rounds.
     */
    List<Gap> leaps() {
        List<Gap> found = leaps.orElseGet(this::followLeaps);
        leaps = Optional.of(found);
        return found;
    }

    /**
     * Between two points of the edge the rays skip part of the piece.
     *
     * @param before the last place seen before it, as far as the rays beside it tell
     * @param after the first seen after it
     * @param firstRay the first of the rays at the corner itself, or along the shoulder
     * @param lastRay the last of them
     */
    record Gap(double before, double after, int firstRay, int lastRay) {
        /** How many rays one is off the corner's middle. */
        int off(int ray) {
            return Math.abs(ray - (firstRay + lastRay) / 2);
        }

        /** Whether it is one of those rays or near them, as far as the picture's softness rounds the corner. */
        boolean isBeside(int ray) {
            return off(ray) <= (lastRay - firstRay + 1) / 2 + BESIDE;
        }
    }

    /** Whether the rays around one touch one beside the other, as they do where all of the surface is seen. */
    boolean isEven(int i) {
        int before = Math.max(0, i - CORNER);
        int after = Math.min(rays.length - 1, i + CORNER);
        double apart = Math.abs(along[first + after] - along[first + before]);
        return Math.abs(rays[after].place() - rays[before].place()) <= EVEN * apart;
    }

    /** Whether rays bound by so much more of the axis than they lie apart themselves that it is not the noise's. */
    boolean skips(int one, int other, double bound) {
        return bound - Math.abs(along(other) - along(one)) > 1 / focal;
    }

    /**
     * How far along the axis a few rays side by side bound a piece that is in sight, at most: one that the noise put too near to the axis bounds its
     * neighbours' places too.
     *
     * @param i one of them
     * @param radius the piece's there
     */
    double mostBound(int i, double radius) {
        // A ray passes a place z off where it touches, in its own length, by z²/2r farther out.
        double aside = Math.abs(along(i)) * Math.sqrt(2 * radius * 2 * noise / focal);
        return 2 * aside + BOUND / focal;
    }

    private List<Gap> followLeaps() {
        double[] leap = new double[along.length];
        double[][] sides = new double[along.length][];
        for (int i = Math.max(first, CORNER + SIDE); i < Math.min(end, along.length - CORNER - SIDE); i++) {
            parabola.fit(i - CORNER, i - CORNER - SIDE, i - CORNER);
            double before = parabola.ray().place();
            parabola.fit(i + CORNER, i + CORNER, i + CORNER + SIDE);
            double after = parabola.ray().place();
            sides[i] = new double[] {before, after};
            leap[i] = after - before - Math.abs(along[i + CORNER] - along[i - CORNER]);
        }
        List<Gap> found = new ArrayList<>();
        for (int i = first; i < end; i++) {
            // A slope that is off by noise moves the touching place the farther, the more aslant the ray.
            double unsure = 4 * noise * along[i] * along[i] * Math.abs(across[i]);
            boolean most = leap[i] > LEAP / focal + unsure;
            for (int k = Math.max(0, i - SIDE); most && k <= Math.min(leap.length - 1, i + SIDE); k++) {
                most = k == i || leap[k] < leap[i] || (leap[k] == leap[i] && k > i);
            }
            if (most) {
                found.add(new Gap(sides[i][0], sides[i][1], i - CORNER - first, i + CORNER - first));
            }
        }
        return found;
    }

    /**
     * Where the contour steps: of rays that run along a shoulder nobody knows where they touch, so between the last ray before it and the first
     * one after it nothing was seen, be it a pixel only.
     */
    List<Gap> steps() {
        List<Gap> steps = new ArrayList<>();
        int i = first + 1;
        // What begins or ends with the edge itself is the piece's end.
        while (i < end - 1 && isSteep(i)) {
            i++;
        }
        while (i < end - 1) {
            int from = i;
            while (i < end - 1 && isSteep(i)) {
                i++;
            }
            boolean high = Math.abs(across[i] - across[from - 1]) > LEAP / focal;
            if (i > from && i < end - 1 && high) {
                steps.add(new Gap(middlePlace(from - 2), middlePlace(i + 1), from - 1 - first, i - first));
            }
            i = Math.max(i, from + 1);
        }
        return steps;
    }

    /** The middle one of three neighbours' touching places: right beside a corner a single one may be the noise's. */
    private double middlePlace(int i) {
        int at = Math.max(1, Math.min(rays.length - 2, i - first));
        double[] places = {rays[at - 1].place(), rays[at].place(), rays[at + 1].place()};
        Arrays.sort(places);
        return places[1];
    }

    private boolean isSteep(int i) {
        return Math.abs(across[i + 1] - across[i - 1]) > STEEP * (along[i + 1] - along[i - 1]);
    }

    private TangentRay touching(int i) {
        TangentRay best = parabola.level(i);
        double least = Double.POSITIVE_INFINITY;
        for (int reach : REACHES) {
            boolean passed = false;
            for (int way = 0; way < 3; way++) {
                // What one side can score at best is known beforehand.
                if (way > 0 && least < -reach && (passed || reach == LONGEST)) {
                    break;
                }
                if (!looked(i, reach, way)) {
                    continue;
                }
                // A window that sees both sides counts for more points than one that sees one side; a longer one that
                // passes beats all.
                double left = focal * parabola.left();
                boolean passes = left <= 1.3 * noise;
                double score = passes ? left / noise * 0.01 - reach - (way == 0 ? 2.5 * reach : 0) : 10 + left / noise;
                if ((passes || reach == REACHES[0]) && score < least) {
                    least = score;
                    best = parabola.ray();
                    reaches[i - first] = (byte) reach;
                    ways[i - first] = (byte) way;
                }
                passed |= passes;
            }
            if (!passed) {
                break;
            }
        }
        return best;
    }

    private TangentRay touching(int i, int reach, int way) {
        return looked(i, reach, way) ? parabola.ray() : parabola.level(i);
    }

    /** Fits so far to both sides of a point, way 0, or to those before it alone, 1, or after it, 2, if there are enough. */
    private boolean looked(int i, int reach, int way) {
        int from = Math.max(0, way == 2 ? i : i - reach);
        int to = Math.min(along.length - 1, way == 1 ? i : i + reach);
        if (to - from < 4) {
            return false;
        }
        parabola.fit(i, from, to);
        return true;
    }
}
