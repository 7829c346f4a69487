package turnalike.trace.fit;

/** What stations count with while joints stand at fixed places, up to half a spacing off where they belong: one over the variance. */
final class SeamWeights {
    private static final double COARSE = 0.1;

    final double[] alone;

    /** The same where the outline has a corner. */
    final double[] atCorner;

    SeamWeights(Data data) {
        this(weights(data, data.weight), weights(data, data.weightAtCorner));
    }

    SeamWeights(double[] alone, double[] atCorner) {
        this.alone = alone;
        this.atCorner = atCorner;
    }

    /**
     * A seam among fixed places stands up to half a spacing off the joint, and where the outline is steep that alone shifts radii: their
     * variance there is larger by the square of slope times spacing over twelve (that of an even spread).
     */
    private static double[] weights(Data data, double[] known) {
        double[] out = known.clone();
        // What a joint half a spacing off does to forms that are not steep, roughly: without it, what is drawn exactly
        // would be cut up to follow it.
        double coarse = data.swept ? COARSE * data.spacing() : 0;
        for (int i = 0; i < out.length; i++) {
            out[i] = 1 / (1 / out[i] + coarse * coarse);
        }
        for (int i = 2; data.swept && i + 2 < out.length; i++) {
            double run = data.x[i + 2] - data.x[i - 2];
            double rise = run > 0 ? (data.r[i + 2] - data.r[i - 2]) / 4 : 0;
            out[i] = 1 / (1 / out[i] + rise * rise / 12);
        }
        return out;
    }
}
