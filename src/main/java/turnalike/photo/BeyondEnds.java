package turnalike.photo;

/**
 * Whether a body found is but part of the piece: what lies in line with it beyond an end is then of the piece's hue rather than of that which lies
 * beside it there. A lathe's centre is not, nor is a shadow.
 */
final class BeyondEnds {
    /** From here to there beyond an end, in coarse pixels, is asked, and as much of the body within it. */
    private static final int NEAR = 3;

    private static final int FAR = 15;

    /** Nearer to the piece's hue than this, by how far the ground's is from it, it is the piece's. */
    private static final double LIKE = 0.5;

    private final CoarsePicture picture;

    private final BodyFinder.Body body;

    private BeyondEnds(CoarsePicture picture, BodyFinder.Body body) {
        this.picture = picture;
        this.body = body;
    }

    static boolean lookLike(CoarsePicture picture, BodyFinder.Body body) {
        BeyondEnds ends = new BeyondEnds(picture, body);
        return ends.goesOn(body.from(), -1) || ends.goesOn(body.to(), 1);
    }

    private boolean goesOn(double end, int way) {
        int half = halfWidth(end - NEAR * way);
        double[] own = hue(end, -way, 0, half / 2);
        double[] beyond = hue(end, way, 0, half / 2);
        double[] beside = hue(end, way, half + NEAR, half + FAR);
        return Math.hypot(beyond[0] - own[0], beyond[1] - own[1])
                < LIKE * Math.hypot(beside[0] - own[0], beside[1] - own[1]);
    }

    private int halfWidth(double along) {
        int half = 0;
        while (isBody(along, half + 1) || isBody(along, -half - 1)) {
            half++;
        }
        return half;
    }

    private boolean isBody(double along, int across) {
        int pixel = pixel(along, across);
        return pixel >= 0 && body.mask()[pixel] > 0;
    }

    /** Red's and blue's shares of the light from near to far beyond a place, so far from the axis on both sides. */
    private double[] hue(double end, int way, int least, int most) {
        double[] light = new double[3];
        for (int k = NEAR; k < FAR; k++) {
            for (int h = -most; h <= most; h++) {
                int pixel = Math.abs(h) < least ? -1 : pixel(end + k * way, h);
                if (pixel >= 0) {
                    picture.addLight(pixel, light);
                }
            }
        }
        double whole = Math.max(1e-9, light[0] + light[1] + light[2]);
        return new double[] {light[0] / whole, light[2] / whole};
    }

    /** The coarse pixel at a place, or -1 outside the picture. */
    private int pixel(double along, double across) {
        int x = (int) Math.floor(body.x() + along * Math.cos(body.angle()) - across * Math.sin(body.angle()));
        int y = (int) Math.floor(body.y() + along * Math.sin(body.angle()) + across * Math.cos(body.angle()));
        return x < 0 || y < 0 || x >= picture.width() || y >= picture.height() ? -1 : y * picture.width() + x;
    }
}
