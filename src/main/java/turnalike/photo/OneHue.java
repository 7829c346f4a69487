package turnalike.photo;

import java.util.Arrays;

/** A body without what is of another hue at its ends and thinner than it is there: a lathe's centres. */
final class OneHue {
    /** Shares of red and blue in the light of a cross section stray less than this in one piece of wood. */
    private static final double HUE = 0.05;

    /** So far a shine takes wood from its own hue towards white at most. */
    private static final double SHINE = 0.5;

    /** What is nearer to white than so is steel, if the wood is not nearly white itself. */
    private static final double STEEL = 0.75;

    private static final double NEARLY_WHITE = 0.05;

    /** A lathe's centre is taken to be no wider than this share of the piece's end; wider, it is the piece. */
    private static final double MOST_CENTRE = 0.75;

    private final double[][] sides;

    private final double[][] hue;

    /**
     * Takes cross sections.
     *
     * @param sides how far each reaches to either side
     * @param hue red's and blue's shares of the light of each
     */
    OneHue(double[][] sides, double[][] hue) {
        this.sides = sides;
        this.hue = hue;
    }

    /**
     * A body without its centres.
     *
     * @param picture that it was found in
     */
    static BodyFinder.Body of(CoarsePicture picture, BodyFinder.Body body) {
        int from = (int) Math.ceil(body.from());
        int count = (int) Math.floor(body.to()) - from + 1;
        if (count < 1) {
            return body;
        }
        Strip strip =
                new Strip(body.x(), body.y(), body.angle(), from, from + count - 1, (int) Math.ceil(body.widest()) + 2);
        CrossSections sections = CrossSections.of(picture, body.mask(), strip);
        int[] within = new OneHue(sections.sides(), sections.hue()).within(0, count - 1);
        return within[0] == 0 && within[1] == count - 1
                ? body
                : cut(picture, body, strip, from + within[0], from + within[1]);
    }

    private static BodyFinder.Body cut(CoarsePicture picture, BodyFinder.Body body, Strip strip, int from, int to) {
        byte[] mask = new byte[body.mask().length];
        double widest = 0;
        for (int t = from; t <= to; t++) {
            for (int h = -2 * strip.reach(); h <= 2 * strip.reach(); h++) {
                int pixel = strip.pixel(t - strip.from(), h / 2.0, picture.width(), picture.height());
                if (pixel >= 0 && body.mask()[pixel] > 0) {
                    mask[pixel] = 1;
                    widest = Math.max(widest, Math.abs(h) / 2.0);
                }
            }
        }
        return new BodyFinder.Body(mask, body.x(), body.y(), body.angle(), from, to, widest);
    }

    /** The first and the last cross section of what is left between two of them. */
    int[] within(int first, int last) {
        int middleFrom = first + (last - first) / 5;
        int middleTo = last - (last - first) / 5;
        double[] usual = new double[2];
        for (int c = 0; c < 2; c++) {
            double[] core = Arrays.copyOfRange(hue[c], middleFrom, middleTo + 1);
            Arrays.sort(core);
            usual[c] = core[core.length / 2];
        }
        int start = first;
        while (start < middleFrom && differs(start, usual)) {
            start++;
        }
        int end = last;
        while (end > middleTo && differs(end, usual)) {
            end--;
        }
        return new int[] {isCentre(start, -1, start - first) ? start : first, isCentre(end, 1, last - end) ? end : last
        };
    }

    /** Whether what lies so long beyond an end is thin as a centre is there, and not the piece itself with a shine on it. */
    private boolean isCentre(int end, int way, int length) {
        int near = Math.min(length, 4);
        double beyond = 0;
        double within = 0;
        for (int k = 1; k <= near; k++) {
            beyond += sides[0][end + way * k] + sides[1][end + way * k];
            within += sides[0][end - way * k] + sides[1][end - way * k];
        }
        return beyond < MOST_CENTRE * within;
    }

    /** Whether a cross section is of another hue. Wood with a shine on it goes some way from its own hue towards white, as steel does wholly. */
    private boolean differs(int t, double[] usual) {
        double[] off = {hue[0][t] - usual[0], hue[1][t] - usual[1]};
        double[] white = {1 / 3.0 - usual[0], 1 / 3.0 - usual[1]};
        double square = white[0] * white[0] + white[1] * white[1];
        double share = square == 0 ? 1 : (off[0] * white[0] + off[1] * white[1]) / square;
        if (share > STEEL && square > NEARLY_WHITE * NEARLY_WHITE) {
            return true;
        }
        double shine = Math.max(0, Math.min(SHINE, share));
        return Math.abs(off[0] - shine * white[0]) > HUE || Math.abs(off[1] - shine * white[1]) > HUE;
    }
}
