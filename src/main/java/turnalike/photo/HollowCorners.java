package turnalike.photo;

/**
 * Hollow corners of a contour made sharp again: the foot of a shoulder, the root of a bead, where a thicker part begins to hide a thinner one. Lens, pixels
 * and lines that see to both sides of a corner round it over two or three pixels, and that much of the thinner part then looks thicker than it is, by as
 * much as the shoulder is high. So the contour is followed on either side from where it is its own, and carried on to where both meet.
 */
final class HollowCorners {
    /** So far from a corner, in pixels along the contour, nothing of it is felt any more; softer pictures round it farther. */
    private static final double FELT = 2.2;

    /** How far a side is followed, and the least turn between the two that is a corner. */
    private static final double FOLLOWED = 7;

    private static final double LEAST_TURN = Math.toRadians(28);

    /** A corner farther from its rounded course than this, in pixels, is none. */
    private static final double MOST = 3;

    /** How far either side may stray from its own course, pixels, and how far one bends by itself: half of one over some twenty pixels. */
    private static final double MOST_LEFT = 0.4;

    private static final double USUAL_BEND = 0.025;

    private final double[] x;

    private final double[] y;

    private final int count;

    /** The way along the contour to each point, twice round. */
    private final double[] way;

    private HollowCorners(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        count = x.length;
        way = new double[2 * count + 1];
        for (int i = 0; i < 2 * count; i++) {
            int a = i % count;
            int b = (i + 1) % count;
            way[i + 1] = way[i] + Math.hypot(x[b] - x[a], y[b] - y[a]);
        }
    }

    /**
     * Moves the points beside hollow corners.
     *
     * @param x of a closed contour's points, which keeps the piece on its left hand as the picture's y runs down; changed
     * @param y of them; changed
     * @param doubts what each is uncertain by; grows by half of what it is moved
     * @param softness of the lens, pixels
     */
    static void sharpen(double[] x, double[] y, double[] doubts, double softness) {
        if (x.length < 40) {
            return;
        }
        HollowCorners corners = new HollowCorners(x.clone(), y.clone());
        double felt = FELT * Math.max(1, softness / 0.8);
        double[] turns = new double[x.length];
        for (int i = 0; i < turns.length; i++) {
            turns[i] = corners.turn(i, felt);
        }
        for (int i = 0; i < turns.length; i++) {
            if (turns[i] > LEAST_TURN && corners.isMost(turns, i, felt)) {
                corners.sharpen(i, felt, x, y, doubts);
            }
        }
    }

    /** A point that many points on, or back. */
    private int on(int i, int by) {
        return Math.floorMod(i + by, count);
    }

    /** The way from one point to another that so many points come later, or before it, below 0. */
    private double away(int i, int by) {
        return by >= 0 ? way[i + by] - way[i] : way[i + count + by] - way[i + count];
    }

    /** By how much the contour turns outward from one side of a point to the other, each judged a little beside it. */
    private double turn(int i, double felt) {
        double[] before = direction(i, -1, felt);
        double[] after = direction(i, 1, felt);
        double cross = before[0] * after[1] - before[1] * after[0];
        return Math.atan2(-cross, before[0] * after[0] + before[1] * after[1]);
    }

    /** Where the contour runs, forward, beside a point. */
    private double[] direction(int i, int to, double felt) {
        int near = reached(i, to, felt);
        int far = reached(i, to, felt + 0.7 * FOLLOWED);
        int a = on(i, near);
        int b = on(i, far);
        return new double[] {to * (x[b] - x[a]), to * (y[b] - y[a])};
    }

    /** How many points on, or back, the first is that lies so far away. */
    private int reached(int i, int to, double far) {
        int by = to;
        while (Math.abs(by) < count / 3 && Math.abs(away(i, by)) < far) {
            by += to;
        }
        return by;
    }

    private boolean isMost(double[] turns, int i, double felt) {
        for (int to = -1; to <= 1; to += 2) {
            for (int by = to; Math.abs(by) < count / 3 && Math.abs(away(i, by)) <= 1.5 * felt; by += to) {
                double other = turns[on(i, by)];
                if (other > turns[i] || (other == turns[i] && to > 0)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** One side carried on: n = bend·t² + rise·t + level in a frame whose t runs on towards the corner, and how far its points stray from that. */
    private record Side(double x, double y, double tx, double ty, double level, double rise, double bend, double left) {
        double atX(double t) {
            return x + t * tx - across(t) * ty;
        }

        double atY(double t) {
            return y + t * ty + across(t) * tx;
        }

        private double across(double t) {
            return level + t * (rise + t * bend);
        }

        /** The course through some points of this frame, which bends as freely as they were found to stray. */
        Side fitted(double[] along, double[] across) {
            double[][] rows = new double[3][4];
            rows[2][2] = left * left / (USUAL_BEND * USUAL_BEND);
            for (int p = 0; p < along.length; p++) {
                double[] terms = {1, along[p], along[p] * along[p]};
                for (int r = 0; r < 3; r++) {
                    for (int c = 0; c < 3; c++) {
                        rows[r][c] += terms[r] * terms[c];
                    }
                    rows[r][3] += terms[r] * across[p];
                }
            }
            double[] bent = LeastSquares.solve(rows);
            Side course = new Side(x, y, tx, ty, bent[0], bent[1], bent[2], 0);
            double squares = 0;
            for (int p = 0; p < along.length; p++) {
                double off = across[p] - course.across(along[p]);
                squares += off * off;
            }
            double strays = Math.max(0.03, Math.sqrt(squares / Math.max(1, along.length - 2)));
            return new Side(x, y, tx, ty, bent[0], bent[1], bent[2], strays);
        }
    }

    private Side side(int i, int to, double felt) {
        int near = reached(i, to, felt);
        int far = reached(i, to, felt + FOLLOWED);
        int a = on(i, near);
        int b = on(i, far);
        double size = Math.max(1e-9, Math.hypot(x[a] - x[b], y[a] - y[b]));
        double tx = (x[a] - x[b]) / size;
        double ty = (y[a] - y[b]) / size;
        double[] along = new double[Math.abs(far - near) + 1];
        double[] across = new double[along.length];
        for (int p = 0; p < along.length; p++) {
            int k = on(i, near + p * to);
            along[p] = (x[k] - x[a]) * tx + (y[k] - y[a]) * ty;
            across[p] = (y[k] - y[a]) * tx - (x[k] - x[a]) * ty;
        }
        Side side = new Side(x[a], y[a], tx, ty, 0, 0, 0, 0.1);
        // What a bend of its own costs hangs on how the points stray, which is known once one was fitted.
        for (int round = 0; round < 2; round++) {
            side = side.fitted(along, across);
        }
        return side;
    }

    private void sharpen(int i, double felt, double[] toX, double[] toY, double[] doubts) {
        Side before = side(i, -1, felt);
        Side after = side(i, 1, felt);
        if (before.left > MOST_LEFT || after.left > MOST_LEFT) {
            return;
        }
        double s = felt;
        double t = felt;
        for (int round = 0; round < 12; round++) {
            double offX = before.atX(s) - after.atX(t);
            double offY = before.atY(s) - after.atY(t);
            double step = 1e-4;
            double sx = (before.atX(s + step) - before.atX(s)) / step;
            double sy = (before.atY(s + step) - before.atY(s)) / step;
            double ux = -(after.atX(t + step) - after.atX(t)) / step;
            double uy = -(after.atY(t + step) - after.atY(t)) / step;
            double whole = sx * uy - sy * ux;
            if (Math.abs(whole) < 0.2) {
                return;
            }
            s -= Math.max(-1, Math.min(1, (offX * uy - offY * ux) / whole));
            t -= Math.max(-1, Math.min(1, (sx * offY - sy * offX) / whole));
        }
        double apart = Math.hypot(before.atX(s) - after.atX(t), before.atY(s) - after.atY(t));
        double moved = Math.hypot(before.atX(s) - x[i], before.atY(s) - y[i]);
        if (!(apart < 0.05) || !(moved < MOST) || s < 0.2 || t < 0.2) {
            return;
        }
        place(i, -1, felt, before, s, toX, toY, doubts);
        place(i, 1, felt, after, t, toX, toY, doubts);
    }

    /** Puts the points of one side that feel the corner on that side carried on, the last at the corner itself. */
    private void place(
            int i, int to, double felt, Side side, double whole, double[] toX, double[] toY, double[] doubts) {
        for (int by = to < 0 ? 0 : 1; Math.abs(away(i, by)) < felt; by += to) {
            int k = on(i, by);
            double t = whole * (1 - Math.abs(away(i, by)) / felt);
            toX[k] = side.atX(t);
            toY[k] = side.atY(t);
            doubts[k] = Math.hypot(doubts[k], 0.5 * Math.hypot(toX[k] - x[k], toY[k] - y[k]));
        }
    }
}
