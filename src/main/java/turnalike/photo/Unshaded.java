package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import java.util.Optional;

/**
 * A body without the shadow that was found with it: what lies within it and is nearer to the hue of the ground beside it than to that of its own
 * core. For one that was not traced as it was found; where piece and ground are of one hue nothing is told.
 */
final class Unshaded {
    /** The core: so much of the length about its middle, and of the half width there. */
    private static final double LONG = 0.7;

    private static final double WIDE = 0.4;

    /** From here to there outside the body, in coarse pixels, is ground. */
    private static final int NEAR = 3;

    private static final int FAR = 9;

    /** Shares of red and blue in the light that lie no farther apart are of one hue. */
    private static final double ONE_HUE = 0.03;

    /** On the way from the ground's hue to the core's, what is past this is piece. */
    private static final double PIECE = 0.5;

    /** What is left must be so much of the body, and less than all but so much, or nothing was gained. */
    private static final double LEAST_LEFT = 0.35;

    private static final double MOST_LEFT = 0.985;

    private final CoarsePicture picture;

    private final BodyFinder.Body body;

    private final int width;

    private final int height;

    private Unshaded(CoarsePicture picture, BodyFinder.Body body) {
        this.picture = picture;
        this.body = body;
        width = picture.width();
        height = picture.height();
    }

    static Optional<BodyFinder.Body> of(CoarsePicture picture, BodyFinder.Body body) {
        return new Unshaded(picture, body).left();
    }

    private Optional<BodyFinder.Body> left() {
        GrayU8 mask = new GrayU8(width, height);
        mask.data = body.mask().clone();
        double[] core = middle(core(mask));
        double[] ground = middle(around(mask));
        double[] way = {core[0] - ground[0], core[1] - ground[1]};
        double size = way[0] * way[0] + way[1] * way[1];
        if (!(size > ONE_HUE * ONE_HUE)) {
            return Optional.empty();
        }
        GrayU8 kept = new GrayU8(width, height);
        double[] hue = new double[2];
        for (int i = 0; i < kept.data.length; i++) {
            if (mask.data[i] > 0) {
                put(i, hue);
                double share = ((hue[0] - ground[0]) * way[0] + (hue[1] - ground[1]) * way[1]) / size;
                kept.data[i] = (byte) (share > PIECE ? 1 : 0);
            }
        }
        GrayU8 opened = GrownMask.dilated(GrownMask.eroded(kept, 1), 1);
        GrayU8 solid = new GrayU8(width, height);
        solid.data = PatchBody.solid(opened);
        GrayS32 labels = new GrayS32(width, height);
        int count = BinaryImageOps.contour(solid, ConnectRule.EIGHT, labels).size();
        Optional<Blob> largest = Optional.empty();
        for (Blob blob : Blob.of(labels.data, count, width, height)) {
            largest = largest.filter(other -> other.area() >= blob.area()).or(() -> Optional.of(blob));
        }
        int before = 0;
        for (byte each : mask.data) {
            before += each;
        }
        int whole = before;
        return largest.filter(blob -> blob.area() > LEAST_LEFT * whole && blob.area() < MOST_LEFT * whole)
                .flatMap(blob -> PatchBody.find(picture, blob.mask(labels.data), blob));
    }

    /** Near the axis and away from the ends. */
    private GrayU8 core(GrayU8 mask) {
        GrayU8 core = new GrayU8(width, height);
        double middle = (body.from() + body.to()) / 2;
        double cos = Math.cos(body.angle());
        double sin = Math.sin(body.angle());
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double along = (x + 0.5 - body.x()) * cos + (y + 0.5 - body.y()) * sin - middle;
                double across = -(x + 0.5 - body.x()) * sin + (y + 0.5 - body.y()) * cos;
                boolean inside = Math.abs(along) < LONG * (body.to() - body.from()) / 2
                        && Math.abs(across) < WIDE * body.widest();
                core.data[y * width + x] = (byte) (inside && mask.data[y * width + x] > 0 ? 1 : 0);
            }
        }
        return core;
    }

    private static GrayU8 around(GrayU8 mask) {
        GrayU8 near = GrownMask.dilated(mask, NEAR);
        GrayU8 far = GrownMask.dilated(near, FAR - NEAR);
        for (int i = 0; i < far.data.length; i++) {
            far.data[i] = near.data[i] > 0 ? 0 : far.data[i];
        }
        return far;
    }

    /** The middle one of the hues of a region: red's and blue's shares of the light. */
    private double[] middle(GrayU8 region) {
        float[][] hues = new float[2][region.data.length];
        double[] hue = new double[2];
        int count = 0;
        for (int i = 0; i < region.data.length; i++) {
            if (region.data[i] > 0) {
                put(i, hue);
                hues[0][count] = (float) hue[0];
                hues[1][count++] = (float) hue[1];
            }
        }
        return count == 0
                ? new double[] {Double.NaN, Double.NaN}
                : new double[] {Ranked.of(hues[0], count, count / 2), Ranked.of(hues[1], count, count / 2)};
    }

    private void put(int pixel, double[] hue) {
        double[] light = new double[3];
        picture.addLight(pixel, light);
        double whole = Math.max(1e-9, light[0] + light[1] + light[2]);
        hue[0] = light[0] / whole;
        hue[1] = light[2] / whole;
    }
}
