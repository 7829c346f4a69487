package turnalike.photo;

import boofcv.struct.image.GrayU8;
import java.util.Arrays;

/** A patch about the line that halves it, and how far its sides are mirror images about that. */
final class MirroredPatch {
    private static final double NONE = -1e3;

    private final byte[] patch;

    private final int width;

    private final int height;

    private double x;

    private double y;

    private double angle;

    private int from;

    /** Half widths to either side at each place along the axis. */
    private double[][] sides = new double[2][0];

    /**
     * Halves a patch.
     *
     * @param patch 1 where it is, row by row
     * @param width how long a row is
     * @param blob its measures
     */
    MirroredPatch(byte[] patch, int width, Blob blob) {
        this.patch = patch;
        this.width = width;
        height = patch.length / width;
        x = blob.x();
        y = blob.y();
        angle = blob.angle();
        measure();
        for (int round = 0; round < 3; round++) {
            straighten();
            measure();
        }
    }

    double angle() {
        return angle;
    }

    /** A place in the picture, by that along the axis and across it. */
    double pointX(double along, double across) {
        return x + along * Math.cos(angle) - across * Math.sin(angle);
    }

    double pointY(double along, double across) {
        return y + along * Math.sin(angle) + across * Math.cos(angle);
    }

    /** The pixel at a place, or -1 outside the picture. */
    int pixel(double along, double across) {
        int px = (int) Math.floor(pointX(along, across));
        int py = (int) Math.floor(pointY(along, across));
        return px < 0 || py < 0 || px >= width || py >= height ? -1 : py * width + px;
    }

    /** Where it begins along the axis, from {@link #pointX} of 0 and 0. */
    double from() {
        return from;
    }

    double to() {
        return from + sides[0].length;
    }

    /** Half its width at a place along. */
    double half(double along) {
        int t = (int) Math.max(0, Math.min(sides[0].length - 1, Math.floor(along - from)));
        return Math.max(0, (sides[0][t] + sides[1][t]) / 2);
    }

    double widest() {
        double widest = 0;
        for (int t = 0; t < sides[0].length; t++) {
            widest = Math.max(widest, (sides[0][t] + sides[1][t]) / 2);
        }
        return widest;
    }

    /** How much of it is in it too when turned over about the axis, 0 to 1. */
    double share() {
        int area = 0;
        int both = 0;
        for (int i = 0; i < patch.length; i++) {
            if (patch[i] > 0) {
                int turned = turned(i);
                area++;
                both += turned >= 0 ? patch[turned] : 0;
            }
        }
        return (double) both / Math.max(1, area);
    }

    /** What of it is in it too when turned over about the axis, or hardly beside it. */
    byte[] mirrored() {
        GrayU8 whole = new GrayU8(width, height);
        whole.data = patch;
        byte[] wide = GrownMask.dilated(whole, 1).data;
        byte[] both = new byte[patch.length];
        for (int i = 0; i < patch.length; i++) {
            int turned = patch[i] > 0 ? turned(i) : -1;
            both[i] = turned >= 0 ? wide[turned] : 0;
        }
        return both;
    }

    /** The pixel that one comes to when turned over about the axis, or -1. */
    private int turned(int pixel) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double right = pixel % width + 0.5 - x;
        double down = row(pixel) + 0.5 - y;
        return pixel(right * cos + down * sin, right * sin - down * cos);
    }

    private int row(int pixel) {
        return pixel / width;
    }

    /** As a body in a picture of which each pixel here is so many wide and high. */
    BodyFinder.Body body(byte[] mask, int factor) {
        return new BodyFinder.Body(
                mask, factor * x, factor * y, angle, factor * from(), factor * to(), factor * widest());
    }

    private void measure() {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < patch.length; i++) {
            if (patch[i] > 0) {
                double along = (i % width + 0.5 - x) * cos + (row(i) + 0.5 - y) * sin;
                least = Math.min(least, along);
                most = Math.max(most, along);
            }
        }
        from = (int) Math.floor(least);
        sides = new double[2][(int) Math.floor(most) - from + 1];
        for (double[] side : sides) {
            Arrays.fill(side, NONE);
        }
        for (int i = 0; i < patch.length; i++) {
            if (patch[i] > 0) {
                double right = i % width + 0.5 - x;
                double down = row(i) + 0.5 - y;
                int t = (int) Math.floor(right * cos + down * sin) - from;
                double across = down * cos - right * sin;
                if (t >= 0 && t < sides[0].length) {
                    sides[0][t] = Math.max(sides[0][t], across + 0.5);
                    sides[1][t] = Math.max(sides[1][t], 0.5 - across);
                }
            }
        }
    }

    /** Moves the axis midway between the sides; where one of them has something beside the piece that counts little. */
    private void straighten() {
        StraightLine middle = new StraightLine();
        for (int t = 0; t < sides[0].length; t++) {
            if (sides[0][t] > NONE) {
                middle.add(from + t + 0.5, (sides[0][t] - sides[1][t]) / 2);
            }
        }
        double[] line = middle.solved();
        x -= line[0] * Math.sin(angle);
        y += line[0] * Math.cos(angle);
        angle += Math.atan(line[1]);
    }
}
