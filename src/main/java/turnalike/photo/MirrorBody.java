package turnalike.photo;

import boofcv.struct.image.GrayU8;

/**
 * A body found by its colours, mended where its two edges are not mirror images of one another: a ground of like colour lets a shadow be taken for
 * the piece, or part of the piece for the ground. About the axis that the sharpest mirrored edges have, the piece is what lies between them; it ends
 * where they do, at an edge that runs across, and beyond which nothing looks like it.
 */
final class MirrorBody {
    /** An axis no farther than this from the body's, in coarse pixels, is the same. */
    private static final double SAME = 1.5;

    /** An end's bow by its half width: none, as of a rim far off; more, as of one seen aslant; a ball's. */
    private static final double[] BOWS = {0, 0.15, 0.3, 0.45, 0.7, 1};

    /** The least from the middle to an end, in coarse pixels. */
    private static final int SHORTEST = 10;

    /** What a whole cross section's colour counts beside a pair of edges, and what that of each pixel does. */
    private static final double COLOUR = 3;

    private static final double PIXEL = 0.1;

    /** What lies outside the picture is as unlike the piece as any colour. */
    private static final float OUTSIDE = -2.5f;

    /** From here to there beyond an end, in coarse pixels, nothing may look like the piece by more than this, on the scale of {@link Strip#likelihood}. */
    private static final int BEYOND = 3;

    private static final int FAR_BEYOND = 15;

    private static final double MOST_LIKE = 0.3;

    private final MirroredEdges edges;

    private final MirroredEdges.Axis axis;

    private final Strip strip;

    private final int[] widths;

    /** How much each place's cross section looks like the piece; 0 where no colours were learnt. */
    private final double[] likes;

    /** What edges and colours gain from the strip's beginning to before each place. */
    private final double[] gains;

    private MirrorBody(MirroredEdges edges, MirroredEdges.Axis axis, Strip strip, int[] widths, double[] likes) {
        this.edges = edges;
        this.axis = axis;
        this.strip = strip;
        this.widths = widths;
        this.likes = likes;
        gains = new double[widths.length + 1];
        for (int t = 0; t < widths.length; t++) {
            gains[t + 1] = gains[t] + edges.gain(axis, t, widths[t]) + COLOUR * likes[t];
        }
    }

    /** The body mended, or as it is where its edges mirror one another as well as any, or where it is not plain where the mended one ends. */
    static BodyFinder.Body of(CoarsePicture picture, BodyFinder.Body body) {
        MirroredEdges edges = new MirroredEdges(picture, body);
        MirroredEdges.Axis axis = edges.best();
        if (Math.abs(axis.aside()) + Math.abs(axis.turned()) <= SAME) {
            return body;
        }
        Strip strip = edges.along(axis, body.angle());
        int[] widths = edges.halfWidths(axis, new float[0][]);
        MirrorBody byEdges = new MirrorBody(edges, axis, strip, widths, new double[widths.length]);
        MirrorBody mirror = byEdges.withColours(picture);
        HalfWidths run = mirror.run();
        if (mirror.goesOn(run.first(), -1) || mirror.goesOn(run.last(), 1)) {
            return body;
        }
        return new BodyFinder.Body(
                run.painted(picture.width(), picture.height()),
                strip.pointX(0, 0),
                strip.pointY(0, 0),
                strip.angle(),
                run.from(),
                run.to(),
                run.widest());
    }

    /** Whether what lies beyond an end looks like the piece. */
    private boolean goesOn(int end, int way) {
        double sum = 0;
        int count = 0;
        for (int k = BEYOND; k < FAR_BEYOND; k++) {
            int t = end + way * k;
            if (t >= 0 && t < likes.length) {
                sum += likes[t];
                count++;
            }
        }
        return sum > MOST_LIKE * count;
    }

    /** The same with the colours counted too, as learnt within the edges and beside them, any shadow there among the ground's. */
    private MirrorBody withColours(CoarsePicture picture) {
        float[] likely = Strip.likelihood(picture, known(picture));
        float[][] regions = new float[widths.length][edges.widest() + 1];
        for (int t = 0; t < widths.length; t++) {
            for (int half = 1; half < regions[t].length; half++) {
                double across = half / 2.0 - 0.25;
                float both = at(picture, likely, t, across) + at(picture, likely, t, -across);
                regions[t][half] = regions[t][half - 1] + (float) PIXEL * both / 2;
            }
        }
        int[] found = edges.halfWidths(axis, regions);
        double[] looks = new double[found.length];
        for (int t = 0; t < found.length; t++) {
            for (int across = -found[t]; across <= found[t]; across++) {
                looks[t] += at(picture, likely, t, across / 2.0) / (2 * found[t] + 1);
            }
        }
        return new MirrorBody(edges, axis, strip, found, looks);
    }

    private float at(CoarsePicture picture, float[] likely, int t, double across) {
        int pixel = strip.pixel(t, across, picture.width(), picture.height());
        return pixel < 0 ? OUTSIDE : likely[pixel];
    }

    /** 1 within the piece, -1 well beside it. */
    private byte[] known(CoarsePicture picture) {
        int w = picture.width();
        int h = picture.height();
        HalfWidths run = run();
        GrayU8 own = new GrayU8(w, h);
        own.data = run.painted(w, h);
        byte[] inner = GrownMask.eroded(own, 1).data;
        byte[] outer = GrownMask.dilated(own, 2).data;
        byte[] known = new byte[w * h];
        int reach = 2 * strip.reach() + 6;
        for (int t = run.first(); t <= run.last(); t++) {
            for (int across = -2 * reach; across <= 2 * reach; across++) {
                int pixel = strip.pixel(t, across / 2.0, w, h);
                if (pixel >= 0) {
                    known[pixel] = (byte) (inner[pixel] > 0 ? 1 : outer[pixel] == 0 ? -1 : 0);
                }
            }
        }
        return known;
    }

    /** The piece from end to end, in whole pixels. */
    private HalfWidths run() {
        int middle = -strip.from();
        End start = end(middle, -1);
        End end = end(middle, 1);
        int[] whole = new int[widths.length];
        for (int t = start.place(); t <= end.place(); t++) {
            whole[t] = Math.max(1, (widths[t] + 1) / 2);
        }
        start.bow(whole, -1);
        end.bow(whole, 1);
        return HalfWidths.of(strip, whole);
    }

    /**
     * An end of the piece.
     *
     * @param place where it meets the sides
     * @param half its half width, half pixels
     * @param bow how far it stands out in the middle, coarse pixels
     */
    private record End(int place, int half, double bow) {
        /** Adds to half widths in whole pixels what stands out. */
        void bow(int[] to, int way) {
            for (int k = 1; k <= bow; k++) {
                int at = place + way * k;
                if (at >= 0 && at < to.length) {
                    double share = k / bow;
                    to[at] = (int) Math.max(1, Math.round(half / 2.0 * Math.sqrt(1 - share * share)));
                }
            }
        }
    }

    /** Where what lies before it gains most and it is itself sharp: as much more than any other cross section, as it is wide. */
    private End end(int middle, int way) {
        double chance = 0;
        int asked = 0;
        for (int t = middle; t >= 0 && t < widths.length; t += way) {
            chance += edges.end(axis, t, widths[t], way * BOWS[1] * widths[t] / 2);
            asked++;
        }
        chance /= asked;
        End best = new End(middle, widths[middle], 0);
        double most = Double.NEGATIVE_INFINITY;
        for (int t = middle + SHORTEST * way; t >= 0 && t < widths.length; t += way) {
            int half = widths[t - 2 * way];
            for (double bow : BOWS) {
                double stands = bow * half / 2;
                double sharp = edges.end(axis, t, half, way * stands) - chance;
                double score = way * (gains[t] - gains[middle]) + half / 2.0 * sharp;
                if (score > most) {
                    most = score;
                    best = new End(t, half, stands);
                }
            }
        }
        return best;
    }
}
