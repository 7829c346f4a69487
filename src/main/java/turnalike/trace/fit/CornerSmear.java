package turnalike.trace.fit;

/** What a picture makes of an outline's corners. */
final class CornerSmear {
    /** So far to either side of a corner a picture smears it, pixels. */
    static final double PIXELS = 2.5;

    /** By how much, as a multiple of what the outline bends there, and at most in pixels. */
    private static final double SMEARED = 1.5;

    private static final double MOST = 1;
    /** No member but a shoulder runs so steeply over the whole of what is smeared. */
    private static final double STEEP = 2;

    private CornerSmear() {}

    /**
     * What a corner's smearing may come to at a station: at a shoulder anything between its foot and its edge, else little.
     *
     * @param x the stations' places
     * @param r their radii
     * @param pixelMm what a pixel shows
     */
    static double mostMm(double[] x, double[] r, int station, double pixelMm) {
        double soft = PIXELS * pixelMm;
        double rise = Math.abs(at(x, r, station, soft) - at(x, r, station, -soft));
        double bent = Math.min(MOST * pixelMm, SMEARED * bend(x, r, station, soft));
        return rise > STEEP * 2 * soft ? Math.max(bent, rise / 2) : bent;
    }

    /** By how much a station lies off the middle between what was read so far to either side of it. */
    private static double bend(double[] x, double[] r, int i, double reachMm) {
        return Math.abs((at(x, r, i, -reachMm) + at(x, r, i, reachMm)) / 2 - r[i]);
    }

    /** The radius so far from a station, on straight lines between stations. */
    private static double at(double[] x, double[] r, int i, double byMm) {
        int step = byMm < 0 ? -1 : 1;
        double to = x[i] + byMm;
        int k = i;
        while (k + step >= 0 && k + step < x.length && step * (to - x[k + step]) > 0) {
            k += step;
        }
        if (k + step < 0 || k + step >= x.length) {
            return r[k];
        }
        return r[k] + (r[k + step] - r[k]) * (to - x[k]) / (x[k + step] - x[k]);
    }
}
