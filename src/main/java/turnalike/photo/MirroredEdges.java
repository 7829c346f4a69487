package turnalike.photo;

/**
 * The axis about which two sharp edges are mirror images of one another all along, as a round piece's are and those of no shadow and no grain. What a
 * shadow on the ground beside the piece ends with is softer than the piece's own edge, and runs otherwise; no ground's grain runs on both sides alike.
 */
final class MirroredEdges {
    /** What a change of the half width by half a pixel from place to place costs: the edges at a place give some 1 to 4. */
    private static final float UNSTEADY = 0.25f;

    /** No half width is smaller, in half pixels. */
    private static final int LEAST_HALF = 4;

    /** How far beside the body's axis the piece's may lie, by its largest half width, and how far either end may, in half pixels. */
    private static final double MOST_ASIDE = 0.8;

    private static final int MOST_TURNED = 8;

    /** No half width is larger, by the body's. */
    private static final double MOST_HALF = 1.15;

    /** So much of its length may stand beyond either end of the body, by that. */
    private static final double MOST_LEFT_OUT = 0.6;

    private final Strip strip;

    /** Where along it the body is. */
    private final int first;

    private final int last;

    private final double half;

    /** Where along the strip the axis turns, and how far its ends are from there. */
    private final double middle;

    private final double toEnd;

    private final Sharpness sharpness;

    /** What edges that belong to nothing add up to by place, known once the best axis was looked for. */
    private double byChance;

    /**
     * Lays the picture straight along a body's axis.
     *
     * @param picture the coarse picture
     * @param body as found by its colours, perhaps with its shadow
     */
    MirroredEdges(CoarsePicture picture, BodyFinder.Body body) {
        half = body.widest();
        double length = body.to() - body.from();
        int wide = (int) Math.ceil((MOST_HALF + MOST_ASIDE) * half + 8);
        strip = new Strip(
                body.x(),
                body.y(),
                body.angle(),
                body.from() - MOST_LEFT_OUT * length,
                body.to() + MOST_LEFT_OUT * length,
                wide);
        // Whole, so that a strip along another axis has the same places.
        middle = Math.round((body.from() + body.to()) / 2) - strip.from();
        toEnd = length / 2;
        first = (int) Math.max(0, body.from() - strip.from());
        last = (int) Math.min(strip.count() - 1, body.to() - strip.from());
        sharpness = new Sharpness(picture, strip, half);
    }

    /**
     * An axis, as it lies in the strip.
     *
     * @param aside how far beside the body's at its middle, coarse pixels
     * @param turned how far farther beside it at its end, coarse pixels
     * @param score what the edges mirrored about it add up to
     */
    record Axis(double aside, double turned, double score) {}

    /** The axis about which the edges mirror one another best; the body's own where none is better. */
    Axis best() {
        int far = (int) (2 * MOST_ASIDE * half);
        Axis best = new Axis(0, 0, score(0, 0, 2));
        double[] scores = new double[(far + 1) * (MOST_TURNED + 1)];
        Cores.parts(scores.length, (from, end) -> {
            for (int k = from; k < end; k++) {
                scores[k] = score(2 * (k / (MOST_TURNED + 1)) - far, 2 * (k % (MOST_TURNED + 1)) - MOST_TURNED, 2);
            }
        });
        float[] all = new float[scores.length];
        for (int k = 0; k < scores.length; k++) {
            double aside = (2 * (k / (MOST_TURNED + 1)) - far) / 2.0;
            double turned = (2 * (k % (MOST_TURNED + 1)) - MOST_TURNED) / 2.0;
            best = scores[k] > best.score ? new Axis(aside, turned, scores[k]) : best;
            all[k] = (float) scores[k];
        }
        byChance = Ranked.of(all, all.length, all.length / 2);
        int aside = (int) Math.round(2 * best.aside);
        int turned = (int) Math.round(2 * best.turned);
        best = new Axis(best.aside, best.turned, score(aside, turned, 1));
        for (int a = aside - 1; a <= aside + 1; a++) {
            for (int t = turned - 1; t <= turned + 1; t++) {
                best = better(best, a, t, 1);
            }
        }
        return best;
    }

    private Axis better(Axis than, int aside, int turned, int step) {
        double score = score(aside, turned, step);
        return score > than.score ? new Axis(aside / 2.0, turned / 2.0, score) : than;
    }

    /** What the best pair of edges mirrored about an axis adds up to, by place; each so manieth place is asked. */
    private double score(int aside, int turned, int step) {
        float[] best = new float[widest() + 1];
        for (int t = first; t <= last; t += step) {
            steady(best, UNSTEADY);
            addPairs(t, axisAt(aside, turned, t), best);
        }
        float most = 0;
        for (float each : best) {
            most = Math.max(most, each);
        }
        return most * step / (last - first + 1);
    }

    /** The largest half width, in half pixels. */
    int widest() {
        return (int) (2 * MOST_HALF * half);
    }

    private int axisAt(double aside, double turned, int t) {
        return (int) Math.round(sharpness.reach() + aside + turned * (t - middle) / toEnd);
    }

    /** Adds to each half width how sharp the less sharp of the two edges is there. */
    private void addPairs(int t, int axis, float[] to) {
        float[] row = sharpness.across(t);
        int most = Math.min(to.length - 1, Math.min(axis, row.length - 1 - axis));
        for (int h = LEAST_HALF; h <= most; h++) {
            to[h] += Math.min(row[axis + h], row[axis - h]);
        }
    }

    /** Lets each half width be reached from its neighbours, at a price. */
    private static void steady(float[] best, float price) {
        for (int h = 1; h < best.length; h++) {
            best[h] = Math.max(best[h], best[h - 1] - price);
        }
        for (int h = best.length - 2; h >= 0; h--) {
            best[h] = Math.max(best[h], best[h + 1] - price);
        }
    }

    /**
     * The half widths at which the edges mirrored about an axis are sharpest, steady from place to place.
     *
     * @param gains what each half width gains besides, by place; may be none
     * @return for each place along the strip in half pixels
     */
    int[] halfWidths(Axis axis, float[][] gains) {
        float[] best = new float[widest() + 1];
        float[][] reached = new float[strip.count()][];
        for (int t = 0; t < strip.count(); t++) {
            steady(best, UNSTEADY);
            addPairs(t, axisAt(2 * axis.aside, 2 * axis.turned, t), best);
            for (int h = 0; gains.length > 0 && h < best.length; h++) {
                best[h] += gains[t][h];
            }
            reached[t] = best.clone();
        }
        int[] widths = new int[strip.count()];
        int at = 0;
        for (int t = widths.length - 1; t >= 0; t--) {
            int here = at;
            for (int h = 0; h < best.length; h++) {
                float price = t == widths.length - 1 ? 0 : UNSTEADY * Math.abs(h - at);
                float least = t == widths.length - 1 ? 0 : UNSTEADY * Math.abs(here - at);
                here = reached[t][h] - price > reached[t][here] - least ? h : here;
            }
            widths[t] = here;
            at = here;
        }
        return widths;
    }

    /** How much sharper the less sharp of two edges mirrored about an axis is than chance makes the sharpest, at one place. */
    double gain(Axis axis, int t, int half) {
        int at = axisAt(2 * axis.aside, 2 * axis.turned, t);
        float[] row = sharpness.across(t);
        return at - half < 0 || at + half >= row.length
                ? -byChance
                : Math.min(row[at + half], row[at - half]) - byChance;
    }

    /**
     * How sharp an end is that bows outward as a round rim does in perspective, or a rounded end.
     *
     * @param axis the axis
     * @param t where the end meets the sides
     * @param half its half width, half pixels
     * @param bow how far it stands out in the middle, coarse pixels; negative towards the strip's beginning
     * @return the mean over its width
     */
    double end(Axis axis, int t, int half, double bow) {
        int at = axisAt(2 * axis.aside, 2 * axis.turned, t);
        int most = (int) (0.9 * half);
        double sum = 0;
        for (int h = -most; h <= most; h++) {
            double share = (double) h / half;
            int place = (int) Math.round(t + bow * Math.sqrt(1 - share * share));
            boolean seen = place >= 0 && place < strip.count() && at + h >= 0 && at + h <= 2 * sharpness.reach();
            sum += seen ? sharpness.along(place)[at + h] : 0;
        }
        return sum / (2 * most + 1);
    }

    /** The strip along an axis. */
    Strip along(Axis axis, double angle) {
        double x = strip.pointX(strip.from() + middle, axis.aside);
        double y = strip.pointY(strip.from() + middle, axis.aside);
        return new Strip(x, y, angle + Math.atan(axis.turned / toEnd), -middle, strip.count() - 1 - middle, (int)
                (MOST_HALF * half));
    }
}
