package turnalike.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import javax.imageio.ImageIO;
import turnalike.effort.Effort;
import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * A made picture of what lies on a grey ground, drawn by asking what light its rays meet.
 *
 * @param width pixels
 * @param height pixels
 * @param focal length, pixels
 * @param below how far below the picture's middle the piece is seen, pixels: a camera that looks above it sees it as one that looks at it does, on another plane
 * @param grain by how much the wood's lines differ in light, one standard deviation
 * @param noise of each pixel, the same, in codes of 255
 */
record AskedPoints(int width, int height, double focal, double below, double grain, double noise) {
    private static final double[] WOOD = {0.42, 0.24, 0.11};

    private static final double GROUND = 0.55;

    /** Of a pixel three by three points are asked. */
    private static final int PARTS = 3;

    /**
     * Traces it.
     *
     * @param length of the piece, mm
     * @param met the light that a ray meets along and across the axis, below zero where it meets nothing
     */
    PhotoTrace trace(double length, DoubleBinaryOperator met) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        SplittableRandom dice = new SplittableRandom(5);
        for (int v = 0; v < height; v++) {
            double line = 1 + grain * dice.nextGaussian();
            for (int u = 0; u < width; u++) {
                double inside = 0;
                double light = 0;
                for (int part = 0; part < PARTS * PARTS; part++) {
                    double seen = light(u, v, part, met);
                    inside += seen < 0 ? 0 : 1.0 / (PARTS * PARTS);
                    light += Math.max(0, seen) / (PARTS * PARTS);
                }
                int rgb = 0;
                for (double wood : WOOD) {
                    double value = wood * light * line + (1 - inside) * GROUND;
                    int code = (int) Math.round(Gamma.code(value) + noise * dice.nextGaussian());
                    rgb = (rgb << 8) | Math.max(0, Math.min(255, code));
                }
                image.setRGB(u, v, rgb);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        PhotoWish wish = new PhotoWish(
                Optional.of(Length.ofMm(length)),
                Optional.empty(),
                Optional.of(Angle.ofDegrees(Math.toDegrees(2 * Math.atan(width / 2.0 / focal)))));
        return PhotoTrace.of(bytes.toByteArray(), wish, Effort.unlimited());
    }

    private double light(int u, int v, int part, DoubleBinaryOperator met) {
        double aside = below / focal;
        double away = Math.sqrt(1 + aside * aside);
        double right = (u + (part % PARTS + 0.5) / PARTS - width / 2.0) / focal;
        double down = (v + (Math.floorDiv(part, PARTS) + 0.5) / PARTS - height / 2.0) / focal;
        double forward = (1 + aside * down) / away;
        return met.applyAsDouble(right / forward, (down - aside) / away / forward);
    }
}
