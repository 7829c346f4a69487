package turnalike.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A picture of cylinders end to end, each pixel's ray met with them in closed form, and its contour by the same: what the rims of its shoulders look
 * like in a known view. Invented.
 *
 * @param cylinders from where, to where and how thick each is, over the camera's distance, in order
 * @param view how it is seen
 * @param look what stands on the wood
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SteppedPiece(List<double[]> cylinders, Seen view, Look look) {
    static final int WIDTH = 900;

    static final int HEIGHT = 720;

    static final double FOCAL = 1000;

    private static final int PARTS = 3;

    /** Beyond this, across, no ray meets the wood. */
    private static final double WIDEST = 0.07;

    /**
     * A view.
     *
     * @param lean degrees
     * @param turn of the axis' picture, degrees
     * @param lens how the picture bends
     */
    record Seen(double lean, double turn, Lens lens) {
        Sight.AxisLine axis() {
            return new Sight.AxisLine(WIDTH / 2.0 + 4, HEIGHT / 2.0 - 3, Math.toRadians(turn));
        }

        Sight sight() {
            return new Sight(FOCAL, WIDTH, HEIGHT, axis(), Math.toRadians(lean));
        }
    }

    /**
     * What the wood is like.
     *
     * @param shade how much of the light is left in a shadow that lies slantwise over one of the shoulders; 1 for none
     * @param grain by what part lines along the wood are darker
     */
    record Look(double shade, double grain) {}

    /** The closed contour, straightened: points about a pixel apart, each strayed a little. */
    double[][] contour(double noise) {
        Sight sight = view.sight();
        double from = cylinders.get(0)[0] * 1.1;
        double to = cylinders.get(cylinders.size() - 1)[1] * 1.1;
        List<double[]> corners = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            for (double share = 0; share <= 1; share += 0.0001) {
                double along = side < 0 ? from + share * (to - from) : to - share * (to - from);
                double across = edge(along);
                if (across > 0) {
                    PixelPoint point = sight.pixel(along, side * across);
                    corners.add(new double[] {point.x(), point.y()});
                }
            }
        }
        double[][] round = HullContour.everyPixel(corners);
        SplittableRandom dice = new SplittableRandom(4);
        for (double[] line : round) {
            for (int i = 0; i < line.length; i++) {
                line[i] += noise * dice.nextGaussian();
            }
        }
        return round;
    }

    /** How far out the piece is seen at a place of the squared picture; 0 where it is not. */
    private double edge(double along) {
        double low = 0;
        double high = 0.3;
        if (light(along, 0) < 0) {
            return 0;
        }
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            if (light(along, middle) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The light that a ray of the squared picture meets the wood with, or below 0. */
    private double light(double along, double across) {
        if (Math.abs(across) > WIDEST) {
            return -1;
        }
        double squared = across * across;
        double nearest = Double.POSITIVE_INFINITY;
        double light = -1;
        for (int k = 0; k < cylinders.size(); k++) {
            double[] each = cylinders.get(k);
            double under = 1 - (1 + squared) * (1 - each[2] * each[2]);
            double depth = (1 - Math.sqrt(Math.max(0, under))) / (1 + squared);
            double place = along * depth;
            if (under >= 0 && depth < nearest && each[0] <= place && place <= each[1]) {
                nearest = depth;
                // From a lamp beside the camera.
                double round = ((1 - depth) + 0.4 * across * depth) / each[2];
                light = 0.1 + 0.6 * Math.max(0, round) * (1 - look.grain * Math.abs(Math.sin(900 * across * depth)));
                light *= along + 0.7 * across > 0.052 ? look.shade : 1;
            }
            for (int end = 0; end < 2; end++) {
                double flat = each[end] / along;
                double out = squared * flat * flat + (flat - 1) * (flat - 1);
                if (flat > 0 && flat < nearest && out <= each[2] * each[2]) {
                    nearest = flat;
                    light = 0.16;
                }
            }
        }
        return light;
    }

    /** As a camera would have taken it: each pixel is the mean of some rays, and noise. */
    Picture picture() throws IOException, Unsure {
        Sight sight = view.sight();
        SplittableRandom dice = new SplittableRandom(6);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double sum = 0;
                for (int part = 0; part < PARTS * PARTS; part++) {
                    int row = part / PARTS;
                    PixelPoint straight = view.lens.straight(x + (part % PARTS + 0.5) / PARTS, y + (row + 0.5) / PARTS);
                    double light = light(
                            sight.alongOf(straight.x(), straight.y()), sight.acrossOf(straight.x(), straight.y()));
                    sum += light < 0 ? 0.4 : light;
                }
                long code = Math.round(Gamma.code(sum / PARTS / PARTS) + 1.5 * dice.nextGaussian());
                int grey = (int) Math.max(0, Math.min(255, code));
                image.setRGB(x, y, grey << 16 | grey << 8 | grey);
            }
        }
        byte[] jpeg = PhotoRender.jpeg(image, 0.92f);
        return Picture.decode(jpeg, PictureFile.read(jpeg), 1);
    }
}
