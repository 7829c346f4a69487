package turnalike.photo;

import java.util.Arrays;

/** Walks once round the piece along the line where a pixel would be half piece, between pixels, and gives points on it about a pixel apart. */
final class ContourWalk {
    private static final int[] DX = {1, 0, -1, 0};

    private static final int[] DY = {0, 1, 0, -1};

    private final LocalColours colours;

    private final float[] colour = new float[3];

    private double[] x = new double[1024];

    private double[] y = new double[1024];

    private int count;

    ContourWalk(LocalColours colours) {
        this.colours = colours;
    }

    /** Whether the pixel's middle is in the piece. */
    private boolean in(int px, int py) {
        return value(px, py) >= 0.5;
    }

    private double value(int px, int py) {
        return colours.share(px, py, colour);
    }

    /**
     * Walks from a pixel outward to the edge and once round.
     *
     * @param startX a pixel within the piece
     * @param startY its row
     * @param stepX from there outward, one of -1, 0, 1
     * @param stepY likewise, not both 0
     * @param most how many steps at most
     * @return the closed line's points, x then y; none when the walk did not come back
     */
    double[][] around(int startX, int startY, int stepX, int stepY, int most) {
        int px = startX;
        int py = startY;
        for (int k = 0; k < most && in(px + stepX, py + stepY); k++) {
            px += stepX;
            py += stepY;
        }
        int heading = stepX > 0 ? 0 : stepY > 0 ? 1 : stepX < 0 ? 2 : 3;
        // Keeps the piece's pixel at hand and its neighbour outside in view: turning round the pixel, then on to the
        // next.
        int firstX = px;
        int firstY = py;
        int look = heading;
        for (int step = 0; step < most; step++) {
            int ox = px + DX[look];
            int oy = py + DY[look];
            add(px, py, ox, oy);
            int side = (look + 1) % 4;
            int ax = px + DX[side];
            int ay = py + DY[side];
            int bx = ox + DX[side];
            int by = oy + DY[side];
            if (in(bx, by)) {
                // The outer corner is piece: on to it, looking back across.
                px = bx;
                py = by;
                look = (look + 3) % 4;
            } else if (in(ax, ay)) {
                px = ax;
                py = ay;
            } else {
                look = side;
            }
            if (px == firstX && py == firstY && look == heading) {
                return new double[][] {Arrays.copyOf(x, count), Arrays.copyOf(y, count)};
            }
        }
        return new double[2][0];
    }

    private void add(int px, int py, int ox, int oy) {
        double inside = value(px, py);
        double outside = value(ox, oy);
        double part = Math.max(0, Math.min(1, (inside - 0.5) / Math.max(1e-9, inside - outside)));
        if (count == x.length) {
            x = Arrays.copyOf(x, 2 * count);
            y = Arrays.copyOf(y, 2 * count);
        }
        x[count] = px + 0.5 + part * (ox - px);
        y[count] = py + 0.5 + part * (oy - py);
        count++;
    }
}
