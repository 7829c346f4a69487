package turnalike.photo;

import boofcv.struct.image.GrayU8;
import java.util.Arrays;

/** The body about a patch by the colours there and beside it, learnt anew a few times as it comes out better: whole cross sections, both sides alike. */
final class LearntBody {
    private final CoarsePicture picture;

    private final int width;

    private final int height;

    private LearntBody(CoarsePicture picture) {
        this.picture = picture;
        width = picture.width();
        height = picture.height();
    }

    /**
     * The body.
     *
     * @param picture the coarse picture
     * @param blob the patch's measures
     * @param patch 1 where it is, row by row
     */
    static BodyFinder.Body of(CoarsePicture picture, Blob blob, byte[] patch) throws Unsure {
        LearntBody learnt = new LearntBody(picture);
        GrayU8 own = new GrayU8(learnt.width, learnt.height);
        own.data = patch;
        return learnt.refined(blob, own);
    }

    private BodyFinder.Body refined(Blob blob, GrayU8 own) throws Unsure {
        byte[] known = new byte[width * height];
        double x = blob.x();
        double y = blob.y();
        double angle = blob.angle();
        double from = blob.from();
        double to = blob.to();
        double middle = (from + to) / 2;
        double half = Math.max(4, Math.sqrt(12) * blob.deviation() / 2);
        HalfWidths run = HalfWidths.of(new Strip(x, y, angle, from, to, 4), new int[0]);
        for (int round = 0; round < 4; round++) {
            double margin = Math.max(10, 0.06 * (to - from));
            int reach = (int) Math.ceil(Math.max(8, 2.2 * half) + 6);
            Strip strip = new Strip(x, y, angle, from - margin, to + margin, reach);
            mark(known, strip, own, round == 0 ? 0.8 : 0.9, middle, to - from);
            float[] likely = Strip.likelihood(picture, known);
            run = HalfWidths.of(strip, strip.halfWidths(likely, width, height, 1.2));
            if (run.last() - run.first() < 20) {
                throw new Unsure(
                        PhotoTrace.Reason.NO_PIECE,
                        "the piece cannot be told from what lies around it",
                        "take it on a plain ground of another colour");
            }
            from = run.from();
            to = run.to();
            own.data = run.painted(width, height);
            double[] line = midline(likely, run);
            // The line is given across the strip: shift the axis to it.
            double shift = line[0];
            double turn = Math.atan(line[1]);
            x = strip.pointX(0, shift);
            y = strip.pointY(0, shift);
            angle += turn;
            half = run.widest();
            middle = (from + to) / 2;
        }
        BodyFinder.Body body = new BodyFinder.Body(own.data, x, y, angle, from, to, half);
        BodyFinder.Body wood = OneHue.of(picture, MirrorBody.of(picture, body));
        BodyFinder.checkRim(wood.mask(), width, height);
        return wood;
    }

    /** Marks what is surely piece and surely not: the patch without its rim, less its outer tenths, and the strip beyond its rim. */
    private void mark(byte[] known, Strip strip, GrayU8 own, double core, double middle, double length) {
        Arrays.fill(known, (byte) 0);
        GrayU8 inner = GrownMask.eroded(own, 2);
        GrayU8 outer = GrownMask.dilated(own, 4);
        for (int t = 0; t < strip.count(); t++) {
            boolean within = Math.abs(strip.from() + t - middle) < core * length / 2;
            for (int h = -2 * strip.reach(); h <= 2 * strip.reach(); h++) {
                int pixel = strip.pixel(t, h, width, height);
                if (pixel >= 0) {
                    known[pixel] = (byte) (inner.data[pixel] > 0 && within ? 1 : outer.data[pixel] == 0 ? -1 : 0);
                }
            }
        }
    }

    /** Where the middle of the likely pixels lies across the strip, as a straight line over the place along: at 0 and its slope. */
    private double[] midline(float[] likely, HalfWidths run) {
        Strip strip = run.strip();
        int[] widths = run.widths();
        StraightLine middle = new StraightLine();
        for (int t = run.first(); t <= run.last(); t++) {
            // Each side's own best edge near the common one.
            double[] edge = new double[2];
            for (int side = 0; side < 2; side++) {
                double best = Double.POSITIVE_INFINITY;
                double sum = 0;
                int low = Math.max(0, widths[t] - 8);
                for (int h = low; h < Math.min(strip.reach(), widths[t] + 8); h++) {
                    int pixel = strip.pixel(t, side == 0 ? h + 0.5 : -h - 0.5, width, height);
                    sum -= pixel < 0 ? -1 : likely[pixel];
                    if (sum < best) {
                        best = sum;
                        edge[side] = h + 1;
                    }
                }
                if (best >= 0) {
                    edge[side] = low;
                }
            }
            middle.add(strip.from() + t, (edge[0] - edge[1]) / 2);
        }
        return middle.solved();
    }
}
