package turnalike.photo;

/** A patch of a picture and what lies round it: whether that is something else than the patch, and the patch neither a shadow nor flat. */
final class PatchSurroundings {
    /** From here to there beside a patch, in pixels, and from there on beyond its ends and within them. */
    private static final int NEAR = 2;

    private static final int FAR = 8;

    /** So far along, in pixels, goes what is looked at together, and to there beyond an end: past a cove or a shade that seems to be one. */
    private static final int STEP = 6;

    private static final int BEYOND = 26;

    /** As a share of how far what lies beside an end is from the patch's own colour: nearer to it, what lies beyond goes on with it. */
    private static final double LIKE = 0.4;

    /** No farther from its surroundings in hue than this, and with more than that share of their light, a darker patch may be a shadow. */
    private static final double SHADOW_HUE = 0.1;

    private static final double SHADOW = 0.15;

    /** Across a round body the root of the light changes by this share of itself at least, whatever the lamps; across a flat bar it does not. */
    private static final double ROUND = 0.08;

    /** So many places across it is looked at. */
    private static final int ACROSS = 9;

    private final Tints tints;

    private final MirroredPatch patch;

    PatchSurroundings(Tints tints, MirroredPatch patch) {
        this.tints = tints;
        this.patch = patch;
    }

    /** Whether the patch ends where it does, is no shadow, and shaded as what is round. */
    boolean letItBeRound() {
        return isRound() && !isShadow() && !goesOn(patch.from(), -1) && !goesOn(patch.to(), 1);
    }

    private boolean isRound() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int k = 0; k < ACROSS; k++) {
            Mean light = new Mean();
            double share = 0.85 * (2.0 * k / (ACROSS - 1) - 1);
            for (double along = patch.from() + NEAR; along < patch.to() - NEAR; along++) {
                light.add(patch.pixel(along, share * (patch.half(along) - 1)));
            }
            least = Math.min(least, light.value(2));
            most = Math.max(most, light.value(2));
        }
        return least < (1 - ROUND) * most;
    }

    /** Whether anywhere in line with the patch beyond an end it looks rather like the patch than like what lies beside that. */
    private boolean goesOn(double end, int way) {
        double inner = Math.max(1, patch.half(end - NEAR * way) / 2);
        double aside = patch.widest();
        Mean own = new Mean();
        own.add(end - way * NEAR, -way, 0, inner);
        for (int from = NEAR; from < BEYOND; from += STEP) {
            Mean beyond = new Mean();
            beyond.add(end + way * from, way, 0, inner);
            Mean beside = new Mean();
            beside.add(end + way * from, way, aside + NEAR, aside + FAR);
            if (beyond.count > 0 && beyond.apart(own) < LIKE * beside.apart(own)) {
                return true;
            }
        }
        return false;
    }

    private boolean isShadow() {
        Mean own = new Mean();
        Mean around = new Mean();
        for (double along = patch.from() + NEAR; along < patch.to() - NEAR; along++) {
            double half = patch.half(along);
            own.add(along, 0, half - 1);
            around.add(along, half + NEAR, half + FAR);
        }
        double light = Math.pow(own.value(2) / Math.max(1e-9, around.value(2)), 2);
        double hue = Math.hypot(own.value(0) - around.value(0), own.value(1) - around.value(1));
        return light < 1 && light > SHADOW && hue < SHADOW_HUE;
    }

    /** Of hue and light, where some of the picture is. */
    private final class Mean {
        private final double[] sums = new double[3];

        private int count;

        void add(double from, int way, double least, double most) {
            for (int k = 0; k < STEP; k++) {
                add(from + k * way, least, most);
            }
        }

        /** Adds the pixels at one place along, so far from the axis on either side. */
        void add(double along, double least, double most) {
            for (double across = least; across <= most; across++) {
                add(patch.pixel(along, across));
                add(patch.pixel(along, -across));
            }
        }

        private void add(int pixel) {
            for (int c = 0; c < 3 && pixel >= 0; c++) {
                sums[c] += tints.values()[c][pixel];
            }
            count += pixel >= 0 ? 1 : 0;
        }

        double value(int c) {
            return sums[c] / Math.max(1, count);
        }

        double apart(Mean other) {
            double squares = 0;
            for (int c = 0; c < 3; c++) {
                squares += Math.pow(value(c) - other.value(c), 2);
            }
            return Math.sqrt(squares);
        }
    }
}
