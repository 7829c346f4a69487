package turnalike.frame;

import java.util.Comparator;
import java.util.PriorityQueue;
import turnalike.outline.Outline;
import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * The opening between two upright bodies of a row, or between one and a post, with a rail below and above: the largest ball that passes is the
 * largest circle in the plane of the axes that touches neither body, rail nor post.
 *
 * <p>Places are told from where the left one's axis meets the lower rail's face. The circle's radius at a place is the distance to whatever is
 * nearest. Over a box of places no circle is larger than the mean of the distances to any two parts of what bounds the opening, and these are
 * convex, so greatest at a corner; boxes are halved, the most hopeful first, until none can hold a circle larger than the one found. Between
 * bodies that stand level the two are mirror images, so a largest circle stands half-way. Derived here.
 */
public final class RowOpening {
    /** How much larger a circle there may be than the one found, in radius. */
    private static final double WITHIN_MM = 1e-6;

    /** How finely distances are told inside a box, as a share of its size. */
    private static final double FINE_SHARE = 1e-3;

    /** What a search may take at most; ordinary openings take some hundred. */
    private static final int MOST_BOXES = 400_000;

    /** What bounds the opening on one side. */
    public enum Side {
        /** A body like its neighbour. */
        PIECE,
        /** A post's upright face. */
        POST
    }

    private final Silhouette onLeft;
    private final Silhouette onRight;
    private final Side left;
    private final Side right;
    private final double apart;
    private final double height;
    private final double slope;
    private final double cos;
    private final double slopeAbove;
    private final double cosAbove;

    /**
     * An opening as it stands.
     *
     * @param body the exposed part of a piece, from its lower shoulder up; a square counts with half its side
     * @param left what stands on the left
     * @param right on the right; not a post on both sides
     * @param apart from the left axis or post's face to the right one, level; above zero
     * @param height between the rails, measured upright; above zero
     * @param rake by how much the rails rise to the right; below zero where they fall; between -90° and 90°
     */
    public RowOpening(Outline body, Side left, Side right, Length apart, Length height, Angle rake) {
        this(new Silhouette(body), left, right, apart.mm(), height.mm(), Math.tan(rake.radians()));
    }

    private RowOpening(Silhouette body, Side left, Side right, double apart, double height, double slope) {
        this(body, body, left, right, apart, height, slope, slope);
    }

    private RowOpening(
            Silhouette onLeft,
            Silhouette onRight,
            Side left,
            Side right,
            double apart,
            double height,
            double slope,
            double slopeAbove) {
        this.onLeft = onLeft;
        this.onRight = onRight;
        this.left = left;
        this.right = right;
        this.apart = apart;
        this.height = height;
        this.slope = slope;
        this.cos = 1 / Math.hypot(1, slope);
        this.slopeAbove = slopeAbove;
        this.cosAbove = 1 / Math.hypot(1, slopeAbove);
    }

    /**
     * {@return the opening between two pieces that differ} What they stand on, and the rail above, run straight from the one axis to the other.
     *
     * @param left the exposed part of the left one, from its lower shoulder up; a square counts with half its side
     * @param right of the right one
     * @param apart from axis to axis, level; above zero
     * @param height from the left one's lower shoulder up to the rail, on its axis; above zero
     * @param rise how much higher the right one's lower shoulder lies; below zero where it lies lower
     * @param railRise how much higher the upper rail is at the right axis than at the left one
     */
    public static RowOpening ofTwo(
            Outline left, Outline right, Length apart, Length height, Length rise, Length railRise) {
        return new RowOpening(
                new Silhouette(left),
                new Silhouette(right),
                Side.PIECE,
                Side.PIECE,
                apart.mm(),
                height.mm(),
                rise.mm() / apart.mm(),
                railRise.mm() / apart.mm());
    }

    /**
     * {@return the same with its sides elsewhere} What was found out about the outline is kept.
     *
     * @param other from the left to the right, above zero
     */
    public RowOpening withApart(Length other) {
        return new RowOpening(onLeft, onRight, left, right, other.mm(), height, slope, slopeAbove);
    }

    /**
     * {@return the same with other things on its sides} What was found out about the outline is kept.
     *
     * @param toLeft what stands on the left
     * @param toRight on the right; not a post on both sides
     */
    public RowOpening between(Side toLeft, Side toRight) {
        return new RowOpening(onLeft, onRight, toLeft, toRight, apart, height, slope, slopeAbove);
    }

    /**
     * The largest ball.
     *
     * @param diameter of the one found, which passes; zero where there is no way through
     * @param atMost no larger one than this passes
     * @param aside where its middle stands, from the left axis or post's face
     * @param up likewise, from where the lower rail's face meets that
     */
    public record Ball(Length diameter, Length atMost, Length aside, Length up) {}

    /** {@return the largest ball that passes, within two millionths of a millimetre} */
    public Ball widest() {
        return new Search(Double.POSITIVE_INFINITY).run();
    }

    /**
     * {@return whether a larger ball than this passes} Quick where one does by far; within two millionths of a millimetre.
     *
     * @param diameter of the ball
     */
    public boolean passesMoreThan(Length diameter) {
        double enough = diameter.mm() / 2 + WITHIN_MM;
        return new Search(enough).run().diameter().mm() / 2 > enough;
    }

    private final class Search {
        private final double enough;
        private final PriorityQueue<Box> open =
                new PriorityQueue<>(Comparator.comparingDouble(Box::atMost).reversed());
        private double best;
        private double bestX;
        private double bestY;
        private int made;

        /** @param enough a radius above which the search may stop */
        Search(double enough) {
            this.enough = enough;
        }

        Ball run() {
            double rise = apart * slope;
            double railRise = apart * slopeAbove;
            boolean alike = onLeft == onRight && left == Side.PIECE && right == Side.PIECE;
            boolean mirrored = alike && slope == 0 && slopeAbove == 0;
            add(
                    mirrored ? apart / 2 : 0,
                    mirrored ? apart / 2 : apart,
                    Math.min(0, rise),
                    height + Math.max(0, railRise));
            double unsearched = 0;
            while (!open.isEmpty() && best <= enough) {
                Box box = open.poll();
                boolean decided = Double.isFinite(enough) && box.atMost <= enough;
                if (decided || box.atMost <= best + WITHIN_MM || made > MOST_BOXES) {
                    unsearched = box.atMost;
                    break;
                }
                if (box.toX - box.fromX > box.toY - box.fromY) {
                    double middle = (box.fromX + box.toX) / 2;
                    add(box.fromX, middle, box.fromY, box.toY);
                    add(middle, box.toX, box.fromY, box.toY);
                } else {
                    double middle = (box.fromY + box.toY) / 2;
                    add(box.fromX, box.toX, box.fromY, middle);
                    add(box.fromX, box.toX, middle, box.toY);
                }
            }
            // Boxes were left out that could hold one larger by no more than that.
            double atMost = Math.max(best + WITHIN_MM, unsearched);
            return new Ball(Length.ofMm(2 * best), Length.ofMm(2 * atMost), Length.ofMm(bestX), Length.ofMm(bestY));
        }

        private void add(double fromX, double toX, double fromY, double toY) {
            made++;
            double x = (fromX + toX) / 2;
            double y = (fromY + toY) / 2;
            double reach = Math.hypot(toX - x, toY - y);
            double within = Math.max(Silhouette.FINEST_MM, reach * FINE_SHARE);
            Bounds bounds = new Bounds(x, y, within);
            double here = bounds.radius();
            if (here > best) {
                best = here;
                bestX = x;
                bestY = y;
            }
            double atMost = Math.min(here + reach + within, bounds.atMost(fromX, toX, fromY, toY));
            if (atMost > best + WITHIN_MM) {
                open.add(new Box(fromX, toX, fromY, toY, atMost));
            }
        }
    }

    private record Box(double fromX, double toX, double fromY, double toY, double atMost) {}

    /** What bounds a circle about a place: the nearest part of each side, and both rails. */
    private final class Bounds {
        private static final int SIDES = 4;

        private final double x;
        private final double y;
        private final Silhouette.Near nearLeft;
        private final Silhouette.Near nearRight;

        Bounds(double x, double y, double within) {
            this.x = x;
            this.y = y;
            Silhouette.Near face = new Silhouette.Near(0, 0, 0, 0, 0); // never asked for of a post
            this.nearLeft = left == Side.POST ? face : onLeft.nearest(x, y, within);
            this.nearRight = right == Side.POST ? face : onRight.nearest(apart - x, y - apart * slope, within);
        }

        double radius() {
            double toLeft = left == Side.POST ? x : nearLeft.distanceMm();
            double toRight = right == Side.POST ? apart - x : nearRight.distanceMm();
            double rails = Math.min(lower(x, y), upper(x, y));
            return Math.max(0, Math.min(rails, Math.min(toLeft, toRight)));
        }

        private double lower(double atX, double atY) {
            return (atY - atX * slope) * cos;
        }

        private double upper(double atX, double atY) {
            return (height + atX * slopeAbove - atY) * cosAbove;
        }

        private double[] distances(double atX, double atY) {
            return new double[] {
                left == Side.POST ? atX : nearLeft.to(atX, atY),
                right == Side.POST ? apart - atX : nearRight.to(apart - atX, atY - apart * slope),
                lower(atX, atY),
                upper(atX, atY)
            };
        }

        /** The least, over any two of the four, of the mean of their distances at that corner where it is greatest. */
        double atMost(double fromX, double toX, double fromY, double toY) {
            double[][] corners = {
                distances(fromX, fromY), distances(fromX, toY), distances(toX, fromY), distances(toX, toY)
            };
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < SIDES; i++) {
                for (int k = i; k < SIDES; k++) {
                    double most = Double.NEGATIVE_INFINITY;
                    for (double[] corner : corners) {
                        most = Math.max(most, (corner[i] + corner[k]) / 2);
                    }
                    least = Math.min(least, most);
                }
            }
            return least;
        }
    }
}
