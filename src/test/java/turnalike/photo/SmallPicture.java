package turnalike.photo;

import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;

/** A small picture of a spindle made ray by ray in Java, quick enough for every build; the ground is even, the light comes from the camera. */
public record SmallPicture(
        TurnedShape shape,
        double distance,
        double focal,
        int width,
        int height,
        double turn,
        double tilt,
        double offX,
        double offY) {
    private static final Map<SmallPicture, BufferedImage> MADE = new ConcurrentHashMap<>();

    public static SmallPicture of(TurnedShape shape) {
        return new SmallPicture(shape, 1.25 * shape.length(), 500, 480, 360, 0, 0, 0, 0);
    }

    public SmallPicture turned(double degrees) {
        return new SmallPicture(shape, distance, focal, width, height, degrees, tilt, offX, offY);
    }

    SmallPicture tilted(double degrees) {
        return new SmallPicture(shape, distance, focal, width, height, turn, degrees, offX, offY);
    }

    SmallPicture moved(double right, double down) {
        return new SmallPicture(shape, distance, focal, width, height, turn, tilt, right, down);
    }

    double viewDegrees() {
        return 2 * Math.toDegrees(Math.atan(width / 2.0 / focal));
    }

    /** A picture of its own, that may be drawn on; the rays of one asked for before are not sent again. */
    public BufferedImage image() {
        BufferedImage made = MADE.computeIfAbsent(
                this, each -> each.drawn(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), true));
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        copy.setData(made.getData());
        return copy;
    }

    /** Draws the piece over what is there, and mixed with that along its edge; over the ground, if wished. */
    BufferedImage drawn(BufferedImage image, boolean ground) {
        SplittableRandom dice = new SplittableRandom(5);
        Pose pose = pose();
        double[] table = new double[(int) (shape.length() * 10) + 1];
        for (int i = 0; i < table.length; i++) {
            table[i] = shape.at(i / 10.0);
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double inside = 0;
                double light = 0;
                double near = share(table, pose, x + 0.5, y + 0.5);
                int parts = Math.abs(near) > CLEAR ? 1 : 6;
                for (int j = 0; j < parts; j++) {
                    for (int i = 0; i < parts; i++) {
                        double deep =
                                -(parts == 1 ? near : share(table, pose, x + (i + 0.5) / parts, y + (j + 0.5) / parts));
                        if (deep > 0) {
                            inside += 1.0 / (parts * parts);
                            light += (0.25 + 0.75 * Math.min(1, Math.sqrt(deep / 12))) / (parts * parts);
                        }
                    }
                }
                if (inside == 0 && !ground) {
                    continue;
                }
                double[] wood = {0.40, 0.22, 0.10};
                double[] card = ground ? new double[] {0.55, 0.57, 0.60} : light(image.getRGB(x, y));
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    double value = light * wood[c] + (1 - inside) * card[c];
                    double code = 255 * (value <= 0.0031308 ? 12.92 * value : 1.055 * Math.pow(value, 1 / 2.4) - 0.055);
                    int noisy = (int) Math.round(code + dice.nextGaussian());
                    rgb = (rgb << 8) | Math.max(0, Math.min(255, noisy));
                }
                image.setRGB(x, y, rgb);
            }
        }
        return image;
    }

    private static double[] light(int rgb) {
        double[] light = new double[3];
        for (int c = 0; c < 3; c++) {
            double code = (rgb >> (16 - 8 * c) & 255) / 255.0;
            light[c] = code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
        }
        return light;
    }

    /** Farther from the piece than this, in pixels, and a pixel is all ground. */
    private static final double CLEAR = 4;

    /**
     * What {@link #share} is at least, from the ray's distance to the axis' line and from how far past an end it stays: most rays pass far
     * off, and need not be walked along.
     */
    private double least(Pose pose, double rayX, double rayY, double reach) {
        // Ray and axis as lines; c is square to both.
        double cx = rayY * pose.axisZ - pose.axisY;
        double cy = pose.axisX - rayX * pose.axisZ;
        double cz = rayX * pose.axisY - rayY * pose.axisX;
        double size = Math.sqrt(cx * cx + cy * cy + cz * cz);
        double apart = size > 1e-6 ? Math.abs(offX * cx + offY * cy + distance * cz) / size : 0;
        double aside = apart - pose.widest;
        double one = place(pose, rayX, rayY, distance - reach);
        double other = place(pose, rayX, rayY, distance + reach);
        double past = Math.max(-Math.max(one, other), Math.min(one, other) - pose.length);
        double far = Math.max(aside, past);
        return far > 0 ? far * focal / (distance + reach) : -1e9;
    }

    /** Where along the piece a point of a ray stands. */
    private double place(Pose pose, double rayX, double rayY, double t) {
        return (rayX * t - offX) * pose.axisX
                + (rayY * t - offY) * pose.axisY
                + (t - distance) * pose.axisZ
                + pose.length / 2;
    }

    /** How far a ray passes the piece, in pixels; below 0 if it meets it. */
    private double share(double[] table, Pose pose, double u, double v) {
        double rayX = (u - width / 2.0) / focal;
        double rayY = (v - height / 2.0) / focal;
        double best = 1e9;
        double reach = pose.widest + pose.lean;
        double clear = least(pose, rayX, rayY, reach + 0.5);
        if (clear > CLEAR + 0.01) {
            return clear;
        }
        double step = 0.5;
        for (double t = distance - reach; t <= distance + reach; t += step) {
            double x = rayX * t - offX;
            double y = rayY * t - offY;
            double z = t - distance;
            double along = x * pose.axisX + y * pose.axisY + z * pose.axisZ;
            double place = along + pose.length / 2;
            double across = Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along));
            double end = Math.max(-place, place - pose.length);
            double radius = end > 0 ? 0 : table[Math.min(table.length - 1, (int) (place * 10 + 0.5))];
            double far = end > 0 ? Math.max(end, across - pose.widest) : across - radius;
            best = Math.min(best, far * focal / t);
        }
        return best;
    }

    /** How the piece lies, worked out once for all rays. */
    private record Pose(double axisX, double axisY, double axisZ, double length, double widest, double lean) {}

    private Pose pose() {
        double flat = Math.cos(Math.toRadians(tilt));
        double deep = Math.sin(Math.toRadians(tilt));
        return new Pose(
                Math.cos(Math.toRadians(turn)) * flat,
                Math.sin(Math.toRadians(turn)) * flat,
                deep,
                shape.length(),
                shape.widest() + 3,
                Math.abs(deep) * shape.length() / 2);
    }
}
