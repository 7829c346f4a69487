package turnalike.frame;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Segment;

/**
 * One side of an upright body as seen from the front: everything from its axis, and from beyond it, to the outline. Places are told by how
 * far they lie aside of the axis and how far up from the body's start, both in millimetres.
 *
 * <p>The outline is cut into pieces between a chord and the curve, finer only where someone asks: the chord is known to miss the curve by no
 * more than the piece's sag, found where the curve runs as the chord does. A straight stretch is one piece without a sag. Distances come out
 * no more than what was asked for too small and never too large. Derived here.
 */
final class Silhouette {
    /** A curve's piece is cut no further once its sag is this small. */
    static final double FINEST_MM = 1e-8;

    private final List<Piece> pieces = new ArrayList<>();

    Silhouette(Outline body) {
        double start = body.start().mm();
        for (Segment segment : body.segments()) {
            double from = segment.start().mm() - start;
            Curve curve = segment.curve();
            double last = 0;
            for (double x : curve.levelPlacesMm()) {
                pieces.add(new Piece(curve, from, last, x));
                last = x;
            }
            pieces.add(new Piece(curve, from, last, curve.length().mm()));
        }
    }

    /**
     * A part of the body that comes as near as any: all that lies inward of a straight line between two heights.
     *
     * @param distanceMm from the place asked for to the body
     */
    record Near(double distanceMm, double fromUp, double fromAside, double toUp, double toAside) {
        /** How far a place is from this part, and so from the body at most; 0 inside. Convex in the place. */
        double to(double aside, double up) {
            return inward(aside, up, fromUp, fromAside, toUp, toAside);
        }
    }

    /**
     * The nearest part.
     *
     * @param within how much too small its distance may be told; never finer than {@link #FINEST_MM}
     */
    Near nearest(double aside, double up, double within) {
        int first = at(up);
        Search search = new Search(aside, up, within, pieces.get(first));
        search.look(pieces.get(first));
        for (int i = first - 1; i >= 0 && up - pieces.get(i).toUp < search.best; i--) {
            search.look(pieces.get(i));
        }
        for (int i = first + 1; i < pieces.size() && pieces.get(i).fromUp - up < search.best; i++) {
            search.look(pieces.get(i));
        }
        return search.near();
    }

    private int at(double up) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (pieces.get(middle).toUp >= up) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** From a place to all that lies inward of the line between two others, at their heights. */
    private static double inward(double aside, double up, double up1, double aside1, double up2, double aside2) {
        double below = up1 - up;
        double above = up - up2;
        if (below >= 0 && aside <= aside1) {
            return below;
        }
        if (above >= 0 && aside <= aside2) {
            return above;
        }
        double along = up2 - up1;
        double across = aside2 - aside1;
        double squared = along * along + across * across;
        double u = squared > 0 ? ((up - up1) * along + (aside - aside1) * across) / squared : 0;
        double clamped = Math.max(0, Math.min(1, u));
        if (below < 0 && above < 0 && aside <= aside1 + (up - up1) / along * across) {
            return 0;
        }
        return Math.hypot(aside - aside1 - clamped * across, up - up1 - clamped * along);
    }

    /** Looks for the nearest piece, cutting those that might hold it. */
    private static final class Search {
        private final double aside;
        private final double up;
        private final double within;
        private final Deque<Piece> open = new ArrayDeque<>();
        private double best = Double.POSITIVE_INFINITY;
        private Piece nearest;

        Search(double aside, double up, double within, Piece first) {
            this.aside = aside;
            this.up = up;
            this.within = Math.max(within, FINEST_MM);
            this.nearest = first;
        }

        void look(Piece start) {
            open.push(start);
            while (!open.isEmpty()) {
                Piece piece = open.pop();
                double least = piece.atLeast(aside, up);
                if (least >= best) {
                    continue;
                }
                if (piece.isFine(within)) {
                    best = least;
                    nearest = piece;
                } else {
                    boolean lowerFirst =
                            piece.lower().atLeast(aside, up) <= piece.upper().atLeast(aside, up);
                    open.push(lowerFirst ? piece.upper() : piece.lower());
                    open.push(lowerFirst ? piece.lower() : piece.upper());
                }
            }
        }

        Near near() {
            return nearest.near(best, aside, up);
        }
    }

    /** A stretch of a curve on which the radius only rises or only falls. */
    private static final class Piece {
        private final Curve curve;
        private final double curveUp;
        private final double fromUp;
        private final double fromAside;
        private final double toUp;
        private final double toAside;
        private final double sag;
        private List<Piece> halves = List.of();

        Piece(Curve curve, double curveUp, double fromX, double toX) {
            this.curve = curve;
            this.curveUp = curveUp;
            this.fromUp = curveUp + fromX;
            this.toUp = curveUp + toX;
            this.fromAside = curve.radiusMm(fromX);
            this.toAside = curve.radiusMm(toX);
            this.sag = curve instanceof Line ? 0 : sag(curve, fromX, toX);
        }

        /** The furthest that the curve leaves the chord, square to it; the foot lies on the chord, since the radius only rises or falls. */
        private static double sag(Curve curve, double fromX, double toX) {
            double from = curve.radiusMm(fromX);
            double slope = (curve.radiusMm(toX) - from) / (toX - fromX);
            if (!Double.isFinite(slope)) {
                return 0;
            }
            double most = 0;
            for (double x : curve.placesOfSlopeMm(slope)) {
                if (fromX < x && x < toX) {
                    most = Math.max(most, Math.abs(curve.radiusMm(x) - from - slope * (x - fromX)));
                }
            }
            return most / Math.hypot(1, slope);
        }

        double atLeast(double aside, double up) {
            return Math.max(0, inward(aside, up, fromUp, fromAside, toUp, toAside) - sag);
        }

        boolean isFine(double within) {
            return sag <= within || toUp - fromUp < 1e-11;
        }

        Piece lower() {
            return halves().get(0);
        }

        Piece upper() {
            return halves().get(1);
        }

        private List<Piece> halves() {
            if (halves.isEmpty()) {
                double from = fromUp - curveUp;
                double to = toUp - curveUp;
                double middle = (from + to) / 2;
                halves = List.of(new Piece(curve, curveUp, from, middle), new Piece(curve, curveUp, middle, to));
            }
            return halves;
        }

        /** A straight stretch is all of it a part of the body; of a curve, only the level line that ends at the curve itself is sure to be. */
        Near near(double distance, double aside, double up) {
            if (curve instanceof Line) {
                return new Near(distance, fromUp, fromAside, toUp, toAside);
            }
            double along = toUp - fromUp;
            double across = toAside - fromAside;
            double u = ((up - fromUp) * along + (aside - fromAside) * across) / (along * along + across * across);
            double at = fromUp + Math.max(0, Math.min(1, u)) * along;
            double radius = curve.radiusMm(at - curveUp);
            return new Near(distance, at, radius, at, radius);
        }
    }
}
