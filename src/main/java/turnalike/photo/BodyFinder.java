package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.GThresholdImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayF32;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the one turned piece in the coarse picture: first by what is not ground, then by its colours and its two like sides. */
final class BodyFinder {
    /** What a ground of many colours is mistaken for where one colour is looked for. */
    private static final Set<PhotoTrace.Reason> OF_THE_GROUND =
            EnumSet.of(PhotoTrace.Reason.NO_PIECE, PhotoTrace.Reason.TWO_PIECES, PhotoTrace.Reason.CUT_OFF);

    /** The root of linear light: 0.1 is a hundredth of full light, code 25 of 255. */
    private static final double DARK = 0.11;

    private final CoarsePicture picture;

    private final int width;

    private final int height;

    private final Optional<PointedPlace> pointed;

    private BodyFinder(CoarsePicture picture, Optional<PointedPlace> pointed) {
        this.picture = picture;
        this.pointed = pointed;
        width = picture.width();
        height = picture.height();
    }

    /**
     * The piece as found, in coarse pixels.
     *
     * @param mask 1 where the piece is, row by row
     * @param x a point of its axis
     * @param y of it
     * @param angle the axis' direction
     * @param from where it begins, from that point
     * @param to where it ends
     * @param widest the largest half width
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Body(byte[] mask, double x, double y, double angle, double from, double to, double widest) {
        /**
         * Whether it comes to the rim of what shows, or beyond.
         *
         * @param shows 1 where the picture does, row by row
         * @param width how long a row is
         */
        boolean reachesOut(byte[] shows, int width) {
            for (int i = width + 1; i < mask.length - width - 1; i++) {
                if (mask[i] > 0
                        && (shows[i - 1] & shows[i + 1] & shows[i - width] & shows[i + width] & shows[i]) == 0) {
                    return true;
                }
            }
            return false;
        }
    }

    /** @param pointed where the piece lies, if somebody pointed at it: what else is in the picture is then passed over */
    static Body find(CoarsePicture picture, Optional<PointedPlace> pointed) throws Unsure {
        return new BodyFinder(picture, pointed).find();
    }

    /** The piece by light where hue is taken first, and by hue where light is: something beside it may be of its hue, or of its light. */
    static Body otherwise(CoarsePicture picture) throws Unsure {
        return new BodyFinder(picture, Optional.empty()).onEvenGround(true);
    }

    /** A piece that is about where a mask is 1, by the colours there and beside it. */
    static Body near(CoarsePicture picture, byte[] mask) throws Unsure {
        return LearntBody.of(picture, Blob.of(mask, picture.width()), mask.clone());
    }

    private Body find() throws Unsure {
        checkLight();
        try {
            return onEvenGround(false);
        } catch (Unsure why) {
            if (!OF_THE_GROUND.contains(why.answer().reason())) {
                throw why;
            }
            try {
                return byRim();
            } catch (Unsure neither) {
                throw why;
            }
        }
    }

    /** On a ground of any colours, as long as the picture's rim shows them. */
    private Body byRim() throws Unsure {
        Body body = bodyOf(patches(RimHues.timesSeen(picture)), In.RIM_HUE);
        // What the rim shows of a piece that runs out there counts as the ground's.
        if (BeyondEnds.lookLike(picture, body)) {
            throw cutOff();
        }
        return body;
    }

    /** On a ground of one colour, changing smoothly. */
    private Body onEvenGround(boolean otherwise) throws Unsure {
        // First by hue, which no shadow has of its own; else by light too.
        Ground.Distances ground = Ground.distances(picture);
        Cores.Work<Patches> inHue = Cores.begin(() -> patches(ground.byHue()));
        Patches byLight = patches(ground.byLight());
        Patches byHue = inHue.done();
        boolean hueSeesLess = !byHue.likely.isEmpty()
                && !byLight.likely.isEmpty()
                && byHue.likely.get(0).length() < 0.8 * byLight.likely.get(0).length();
        boolean taken = (!byHue.likely.isEmpty() && !hueSeesLess) != otherwise;
        return bodyOf(taken ? byHue : byLight, taken ? In.HUE : In.LIGHT);
    }

    /** What patches differ from the ground in; no shadow does in hue. */
    private enum In {
        LIGHT,
        HUE,
        RIM_HUE
    }

    private Body bodyOf(Patches found, In what) throws Unsure {
        List<Blob> likely = found.likely;
        if (likely.isEmpty()) {
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE,
                    pointed.isPresent()
                            ? "nothing between the ends pointed at looks like a turned piece"
                            : "nothing in the picture looks like a turned piece",
                    "take it whole and from the side, on a plain ground of another colour");
        }
        Blob best = likely.get(0);
        for (Blob other : likely.subList(1, likely.size())) {
            if (other.length() > 0.7 * best.length()
                    && other.area() > 0.4 * best.area()
                    && alike(best, other, found.labels)) {
                throw new Unsure(
                        PhotoTrace.Reason.TWO_PIECES,
                        "more than one piece lies in the picture",
                        "take one at a time, or cut the picture down to one");
            }
        }
        if (what != In.LIGHT) {
            byte[] own = what == In.HUE ? surely(best, found) : PatchBody.solid(grey(best.mask(found.labels.data)));
            Optional<Body> asItIs = PatchBody.find(picture, own, best);
            if (asItIs.isPresent()) {
                checkRim(asItIs.orElseThrow().mask(), width, height);
                return asItIs.orElseThrow();
            }
        }
        return LearntBody.of(picture, best, best.mask(found.labels.data));
    }

    /** Of a patch what is as far from the ground as most of it, and no stain of the ground that touches it. */
    private byte[] surely(Blob blob, Patches patches) {
        byte[] own = blob.mask(patches.labels.data);
        float[] far = new float[blob.area()];
        int count = 0;
        for (int i = 0; i < own.length && count < far.length; i++) {
            if (own[i] > 0) {
                far[count++] = patches.distance[i];
            }
        }
        float middle = Ranked.of(far, count, count / 2);
        for (int i = 0; i < own.length; i++) {
            own[i] = (byte) (own[i] > 0 && patches.distance[i] > 0.25 * middle ? 1 : 0);
        }
        return own;
    }

    /** A mask as BoofCV has it. */
    private GrayU8 grey(byte[] mask) {
        GrayU8 own = new GrayU8(width, height);
        own.data = mask;
        return own;
    }

    /** That it runs out of the picture nowhere. */
    static void checkRim(byte[] mask, int width, int height) throws Unsure {
        for (int y = 0; y < height; y++) {
            boolean touches = mask[y * width] > 0 || mask[y * width + width - 1] > 0;
            for (int x = 0; x < width && (y == 0 || y == height - 1); x++) {
                touches |= mask[y * width + x] > 0;
            }
            if (touches) {
                throw cutOff();
            }
        }
    }

    private static Unsure cutOff() {
        return new Unsure(
                PhotoTrace.Reason.CUT_OFF,
                "the piece runs out of the picture",
                "take it again, whole, with some ground all round it");
    }

    /** What is not ground, in patches, and those that could be the piece, the likeliest first. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    private record Patches(float[] distance, GrayS32 labels, List<Blob> likely) {}

    private Patches patches(float[] distance) {
        GrayF32 far = new GrayF32(width, height);
        for (int i = 0; i < distance.length; i++) {
            far.data[i] = (float) QuickLog.of(1.0 + Math.min(distance[i], 60));
        }
        BlurImageOps.gaussian(far, far, 1.0, 2, null);
        double threshold = Math.max(Math.log1p(2.6), GThresholdImageOps.computeOtsu(far, 0, 4.2));
        GrayU8 mask = new GrayU8(width, height);
        for (int i = 0; i < distance.length; i++) {
            mask.data[i] = (byte) (far.data[i] > threshold ? 1 : 0);
        }
        GrayU8 opened = GrownMask.dilated(GrownMask.eroded(mask, 1), 1);
        GrayS32 labels = new GrayS32(width, height);
        int count = BinaryImageOps.contour(opened, ConnectRule.EIGHT, labels).size();
        List<Blob> likely = Arrays.stream(Blob.of(labels.data, count, width, height))
                .filter(blob -> blob.slenderness() >= 1.8
                        && blob.length() >= 0.15 * Math.min(width, height)
                        && blob.area() > 150
                        && (pointed.isEmpty() || pointed.get().isAt(blob)))
                .sorted(Comparator.comparingDouble(BodyFinder::weight).reversed())
                .toList();
        return new Patches(distance, labels, likely);
    }

    private static double weight(Blob blob) {
        return blob.area() * Math.min(8, blob.slenderness()) * (blob.atRim() > 0.3 * blob.length() ? 0.2 : 1);
    }

    private void checkLight() throws Unsure {
        float[] reds = picture.planes()[0];
        float[] greens = picture.planes()[1];
        float[] blues = picture.planes()[2];
        int dark = 0;
        for (int i = 0; i < reds.length; i++) {
            // Whatever its colour: on a red cloth green and blue may be black.
            dark += Math.max(reds[i], Math.max(greens[i], blues[i])) < DARK ? 1 : 0;
        }
        if (dark > (int) (0.98 * reds.length)) {
            throw new Unsure(
                    PhotoTrace.Reason.TOO_DARK,
                    "the picture is almost black",
                    "take it again with more light or a longer exposure");
        }
    }

    /** Whether two patches are of much the same colour. */
    private boolean alike(Blob one, Blob other, GrayS32 labels) {
        double[][] mean = new double[2][3];
        for (int i = 0; i < labels.data.length; i++) {
            int which = labels.data[i] == one.label() ? 0 : labels.data[i] == other.label() ? 1 : -1;
            for (int c = 0; c < 3 && which >= 0; c++) {
                mean[which][c] += picture.planes()[c][i] / (which == 0 ? one.area() : other.area());
            }
        }
        double far = 0;
        for (int c = 0; c < 3; c++) {
            far += Math.pow(mean[0][c] - mean[1][c], 2);
        }
        return Math.sqrt(far) < 0.16;
    }
}
