package turnalike.photo;

/**
 * Brings a square's corners to a small part of a pixel: along each side the place half way from black to white is looked for in linear light,
 * where softness moves it nowhere; a line through these places, and where neighbours' lines meet.
 */
final class SquareCorners {
    private static final double STEP = 0.25;

    /** A side is looked at between these parts of it: nearer to a corner the softness of both sides mixes. */
    private static final double FROM = 0.12;

    private final Picture picture;

    SquareCorners(Picture picture) {
        this.picture = picture;
    }

    /**
     * The corners, found better.
     *
     * @param rough four corners in order round the square, x and y each, known to about two pixels
     * @return the same, or none where a side does not part black from white
     */
    double[][] fine(double[][] rough) {
        double[][] corners = rough;
        for (int round = 0; round < 2; round++) {
            double[][] lines = new double[4][];
            double middleX = 0;
            double middleY = 0;
            for (double[] corner : corners) {
                middleX += corner[0] / 4;
                middleY += corner[1] / 4;
            }
            for (int side = 0; side < 4; side++) {
                lines[side] = line(corners[side], corners[(side + 1) % 4], middleX, middleY);
                if (lines[side].length == 0) {
                    return new double[0][];
                }
            }
            double[][] next = new double[4][];
            for (int k = 0; k < 4; k++) {
                next[k] = meeting(lines[(k + 3) % 4], lines[k]);
            }
            corners = next;
        }
        return corners;
    }

    /** The line a·x + b·y = c along one side, (a, b) of length 1; none if it is no edge. */
    private double[] line(double[] from, double[] to, double middleX, double middleY) {
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double length = Math.hypot(dx, dy);
        dx /= length;
        dy /= length;
        double outX = dy;
        double outY = -dx;
        if ((from[0] - middleX) * outX + (from[1] - middleY) * outY < 0) {
            outX = -outX;
            outY = -outY;
        }
        double reach = Math.max(1.5, Math.min(5, 0.7 * length / SheetSquares.CELLS));
        int count = (int) Math.max(8, length * (1 - 2 * FROM));
        double[] at = new double[count];
        double[] off = new double[count];
        int found = 0;
        for (int k = 0; k < count; k++) {
            double along = length * (FROM + (1 - 2 * FROM) * k / (count - 1));
            double crossing = crossing(from[0] + along * dx, from[1] + along * dy, outX, outY, reach);
            if (!Double.isNaN(crossing)) {
                at[found] = along;
                off[found++] = crossing;
            }
        }
        if (found < count * 2 / 3) {
            return new double[0];
        }
        double[] fit = robust(at, off, found);
        double x = from[0] + fit[0] * outX;
        double y = from[1] + fit[0] * outY;
        double turnX = dx + fit[1] * outX;
        double turnY = dy + fit[1] * outY;
        double size = Math.hypot(turnX, turnY);
        double a = turnY / size;
        double b = -turnX / size;
        return new double[] {a, b, a * x + b * y};
    }

    /** How far out it is half way from black to white; not a number where it is no such step. */
    private double crossing(double x, double y, double outX, double outY, double reach) {
        int count = (int) (2 * reach / STEP) + 1;
        double[] light = new double[count];
        for (int k = 0; k < count; k++) {
            double d = -reach + k * STEP;
            light[k] = picture.lightBetween(x + d * outX, y + d * outY);
        }
        int rim = Math.max(2, count / 6);
        double black = 0;
        double white = 0;
        for (int k = 0; k < rim; k++) {
            black += light[k] / rim;
            white += light[count - 1 - k] / rim;
        }
        if (!(white > 1.5 * black + 0.01)) {
            return Double.NaN;
        }
        double half = (black + white) / 2;
        double best = Double.NaN;
        for (int k = 0; k + 1 < count; k++) {
            if (light[k] <= half && light[k + 1] > half) {
                double d = -reach + (k + (half - light[k]) / (light[k + 1] - light[k])) * STEP;
                if (Double.isNaN(best) || Math.abs(d) < Math.abs(best)) {
                    best = d;
                }
            }
        }
        return best;
    }

    /** Offset and slope, places that stand off counting little. */
    private static double[] robust(double[] at, double[] off, int count) {
        double[] line = {0, 0};
        for (int round = 0; round < 6; round++) {
            double scale = round == 0 ? 1e9 : round == 1 ? 1 : 0.25;
            double[][] rows = new double[2][3];
            for (int k = 0; k < count; k++) {
                double miss = off[k] - line[0] - line[1] * at[k];
                double weight = 1 / Math.pow(1 + miss * miss / (scale * scale), 2);
                rows[0][0] += weight;
                rows[0][1] += weight * at[k];
                rows[1][1] += weight * at[k] * at[k];
                rows[0][2] += weight * off[k];
                rows[1][2] += weight * off[k] * at[k];
            }
            rows[1][0] = rows[0][1];
            line = LeastSquares.solve(rows);
        }
        return line;
    }

    private static double[] meeting(double[] one, double[] other) {
        double determinant = one[0] * other[1] - one[1] * other[0];
        return new double[] {
            (one[2] * other[1] - one[1] * other[2]) / determinant, (one[0] * other[2] - one[2] * other[0]) / determinant
        };
    }
}
