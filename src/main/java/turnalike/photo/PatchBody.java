package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import java.util.Arrays;
import java.util.Optional;

/**
 * A patch of the coarse picture taken as the piece just as it is, where it already looks like one: filled, its two sides mirror images about a
 * straight line, and of one hue from end to end. Told apart from its ground by hue it is the better for not being looked at again: colours
 * learnt around it would count its own shadow in, which is of no colour seen elsewhere.
 */
final class PatchBody {
    /** How far the middle between the sides may stray from the axis, as a part of the largest half width, and in coarse pixels. */
    private static final double MOST_ASTRAY = 0.05;

    private static final double LEAST_ASTRAY = 1.2;

    /** Half the width of what is closed within a patch, coarse pixels. */
    private static final int PORES = 2;

    private final CoarsePicture picture;

    private final byte[] patch;

    private final int reach;

    private double x;

    private double y;

    private double angle;

    private Strip strip;

    private CrossSections sections;

    private PatchBody(CoarsePicture picture, byte[] patch, Blob blob) {
        this.picture = picture;
        this.patch = patch;
        x = blob.x();
        y = blob.y();
        angle = blob.angle();
        reach = (int) Math.ceil(4 * Math.sqrt(12) * blob.deviation() / 2) + 6;
        strip = strip(blob);
        sections = CrossSections.of(picture, patch, strip);
        for (int round = 0; round < 3; round++) {
            straighten();
            strip = strip(blob);
            sections = CrossSections.of(picture, patch, strip);
        }
    }

    /**
     * The body, if the patch is one.
     *
     * @param picture the coarse picture
     * @param patch 1 where the patch is
     * @param blob the patch's own measures
     */
    static Optional<BodyFinder.Body> find(CoarsePicture picture, byte[] patch, Blob blob) {
        return new PatchBody(picture, patch, blob).body();
    }

    /** A patch with its pores closed and its holes filled: grain and shine have many hues, some of them the ground's, and no piece has a hole. */
    static byte[] solid(GrayU8 patch) {
        int w = patch.width;
        int h = patch.height;
        GrayU8 closed = GrownMask.eroded(GrownMask.dilated(patch, PORES), PORES);
        GrayU8 open = BinaryImageOps.invert(closed, null);
        GrayS32 parts = new GrayS32(w, h);
        int count = BinaryImageOps.contour(open, ConnectRule.FOUR, parts).size();
        boolean[] outside = new boolean[count + 1];
        for (int x = 0; x < w; x++) {
            outside[parts.data[x]] = true;
            outside[parts.data[(h - 1) * w + x]] = true;
        }
        for (int y = 0; y < h; y++) {
            outside[parts.data[y * w]] = true;
            outside[parts.data[y * w + w - 1]] = true;
        }
        byte[] solid = new byte[w * h];
        for (int i = 0; i < solid.length; i++) {
            solid[i] = (byte) (open.data[i] > 0 && outside[parts.data[i]] ? 0 : 1);
        }
        return solid;
    }

    private Strip strip(Blob blob) {
        return new Strip(x, y, angle, Math.floor(blob.from()) - 2, Math.ceil(blob.to()) + 2, reach);
    }

    /** Moves the axis midway between the sides. */
    private void straighten() {
        double[][] sides = sections.sides();
        StraightLine middle = new StraightLine();
        for (int t = 0; t < strip.count(); t++) {
            if (sections.filled()[t] > 0) {
                middle.add(strip.from() + t, (sides[0][t] - sides[1][t]) / 2);
            }
        }
        double[] line = middle.solved();
        x -= line[0] * Math.sin(angle);
        y += line[0] * Math.cos(angle);
        angle += Math.atan(line[1]);
    }

    private Optional<BodyFinder.Body> body() {
        double[][] sides = sections.sides();
        double[] filled = sections.filled();
        int first = 0;
        int last = filled.length - 1;
        while (first < last && filled[first] == 0) {
            first++;
        }
        while (last > first && filled[last] == 0) {
            last--;
        }
        int[] within = new OneHue(sides, sections.hue()).within(first, last);
        int count = within[1] - within[0] + 1;
        if (count < 20) {
            return Optional.empty();
        }
        double widest = 0;
        double[] off = new double[count];
        double[] full = new double[count];
        for (int t = within[0]; t <= within[1]; t++) {
            off[t - within[0]] = Math.abs(sides[0][t] - sides[1][t]) / 2;
            full[t - within[0]] = filled[t];
            widest = Math.max(widest, (sides[0][t] + sides[1][t]) / 2);
        }
        Arrays.sort(off);
        Arrays.sort(full);
        boolean mirrored = off[count * 4 / 5] <= Math.max(LEAST_ASTRAY, MOST_ASTRAY * widest);
        boolean solid = full[count / 10] > 0.85 && full[0] > 0.3;
        if (!mirrored || !solid || count < 3 * widest) {
            return Optional.empty();
        }
        return Optional.of(new BodyFinder.Body(
                painted(within), x, y, angle, strip.from() + within[0], strip.from() + within[1], widest));
    }

    private byte[] painted(int[] within) {
        byte[] mask = new byte[patch.length];
        for (int t = within[0]; t <= within[1]; t++) {
            for (double h = -sections.sides()[1][t]; h <= sections.sides()[0][t]; h += 0.5) {
                int pixel = strip.pixel(t, h, picture.width(), picture.height());
                if (pixel >= 0) {
                    mask[pixel] = 1;
                }
            }
        }
        return mask;
    }
}
