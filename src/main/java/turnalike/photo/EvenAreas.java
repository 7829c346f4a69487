package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayF32;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import georegression.fitting.polygon.ConvexHullAndrewMonotone_F64;
import georegression.struct.point.Point2D_F64;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.ddogleg.struct.FastArray;

/**
 * Large areas of one colour that a piece may lie on where the picture shows other ground too: a card on a bench, a cloth on a floor. Each is
 * what changes evenly and hangs together, with what stands within it.
 */
final class EvenAreas {
    /** Where roots of light change by more than this from pixel to pixel, after a blur, something ends. */
    private static final float EVEN = 0.012f;

    private static final double BLUR = 1.2;

    /** Of the picture, and of the hull of what hangs together: less is no card, more is the picture's own ground. */
    private static final double LEAST = 0.08;

    private static final double MOST = 0.93;

    private static final double LEAST_FILLED = 0.45;

    /** So many coarse pixels within its rim an area begins. */
    private static final int RIM = 3;

    private static final int MOST_AREAS = 3;

    private final CoarsePicture picture;

    private final int width;

    private final int height;

    private EvenAreas(CoarsePicture picture) {
        this.picture = picture;
        width = picture.width();
        height = picture.height();
    }

    /** For each area, the largest first, 1 where it shows, row by row. */
    static List<byte[]> of(CoarsePicture picture) {
        return new EvenAreas(picture).areas();
    }

    private List<byte[]> areas() {
        GrayU8 even = GrownMask.eroded(even(), 1);
        GrayS32 labels = new GrayS32(width, height);
        int count = BinaryImageOps.contour(even, ConnectRule.FOUR, labels).size();
        int[] sizes = new int[count + 1];
        for (int label : labels.data) {
            sizes[label]++;
        }
        List<Integer> largest = new ArrayList<>();
        for (int label = 1; label <= count; label++) {
            if (sizes[label] > LEAST * labels.data.length) {
                largest.add(label);
            }
        }
        largest.sort(Comparator.comparingInt((Integer label) -> sizes[label]).reversed());
        List<byte[]> out = new ArrayList<>();
        for (int label : largest.subList(0, Math.min(MOST_AREAS, largest.size()))) {
            GrayU8 whole = filled(hull(labels.data, label));
            int covered = count(whole);
            if (covered < MOST * labels.data.length && sizes[label] > LEAST_FILLED * covered) {
                out.add(GrownMask.eroded(whole, RIM).data);
            }
        }
        return out;
    }

    private static int count(GrayU8 mask) {
        int count = 0;
        for (byte each : mask.data) {
            count += each;
        }
        return count;
    }

    private GrayU8 even() {
        GrayU8 even = new GrayU8(width, height);
        Arrays.fill(even.data, (byte) 1);
        for (float[] plane : picture.planes()) {
            GrayF32 soft = new GrayF32(width, height);
            soft.data = plane.clone();
            BlurImageOps.gaussian(soft, soft, BLUR, 3, null);
            for (int y = 1; y + 1 < height; y++) {
                for (int x = 1; x + 1 < width; x++) {
                    int i = y * width + x;
                    float across = Math.abs(soft.data[i + 1] - soft.data[i - 1]) / 2;
                    float down = Math.abs(soft.data[i + width] - soft.data[i - width]) / 2;
                    if (Math.max(across, down) > EVEN) {
                        even.data[i] = 0;
                    }
                }
            }
        }
        return even;
    }

    /** Of the outermost pixels of every row. */
    private Polygon2D_F64 hull(int[] labels, int label) {
        FastArray<Point2D_F64> ends = new FastArray<>(Point2D_F64.class);
        for (int y = 0; y < height; y++) {
            int from = 0;
            while (from < width && labels[y * width + from] != label) {
                from++;
            }
            int to = width - 1;
            while (to > from && labels[y * width + to] != label) {
                to--;
            }
            if (from < width) {
                ends.add(new Point2D_F64(from, y));
                ends.add(new Point2D_F64(to, y));
            }
        }
        Polygon2D_F64 hull = new Polygon2D_F64();
        new ConvexHullAndrewMonotone_F64().process(ends, hull);
        return hull;
    }

    /** Row by row, from the hull's left side to its right one. */
    private GrayU8 filled(Polygon2D_F64 hull) {
        GrayU8 out = new GrayU8(width, height);
        for (int y = 0; y < height; y++) {
            double from = width;
            double to = -1;
            for (int k = 0; k < hull.size(); k++) {
                Point2D_F64 one = hull.get(k);
                Point2D_F64 other = hull.get((k + 1) % hull.size());
                if (Math.min(one.y, other.y) <= y && y <= Math.max(one.y, other.y)) {
                    double share = one.y == other.y ? 0 : (y - one.y) / (other.y - one.y);
                    double at = one.x + share * (other.x - one.x);
                    from = Math.min(from, one.y == other.y ? Math.min(one.x, other.x) : at);
                    to = Math.max(to, one.y == other.y ? Math.max(one.x, other.x) : at);
                }
            }
            for (int x = (int) Math.ceil(from); x <= to; x++) {
                out.data[y * width + x] = 1;
            }
        }
        return out;
    }
}
