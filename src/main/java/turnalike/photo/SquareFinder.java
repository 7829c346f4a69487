package turnalike.photo;

import boofcv.abst.fiducial.FiducialDetector;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Finds the sheet's squares: BoofCV in the picture made small enough, the corners then in the whole one. */
final class SquareFinder {
    /** Larger pictures are looked at in blocks: a square is large enough to be read so, and little memory is wanted. */
    private static final int LONGEST = 2200;

    private SquareFinder() {}

    /** {@return the squares found, in the order of their numbers; one that is found twice is not taken} */
    static List<SeenSquare> find(Picture picture) {
        int block = Math.max(1, (int) Math.ceil((double) Math.max(picture.width(), picture.height()) / LONGEST));
        FiducialDetector<GrayU8> detector =
                FactoryFiducial.squareHamming(SheetSquares.family(), new ConfigFiducialHammingDetector(), GrayU8.class);
        detector.detect(grey(picture, block));
        TreeMap<Integer, List<SeenSquare>> found = new TreeMap<>();
        SquareCorners corners = new SquareCorners(picture);
        for (int i = 0; i < detector.totalFound(); i++) {
            int number = (int) detector.getId(i);
            double[][] rough = rough(detector, i, block);
            double[][] fine = corners.fine(rough);
            if (number < SheetSquares.ON_PAGE * SheetSquares.MOST_PAGES && fine.length == 4) {
                found.computeIfAbsent(number, key -> new ArrayList<>()).add(square(number, fine));
            }
        }
        return found.values().stream()
                .filter(same -> same.size() == 1)
                .map(same -> same.get(0))
                .toList();
    }

    private static double[][] rough(FiducialDetector<GrayU8> detector, int which, int block) {
        Polygon2D_F64 bounds = new Polygon2D_F64();
        detector.getBounds(which, bounds);
        double[][] rough = new double[4][];
        for (int k = 0; k < 4; k++) {
            rough[k] = new double[] {bounds.get(k).x * block, bounds.get(k).y * block};
        }
        return rough;
    }

    /** BoofCV begins at the lower right corner of one who reads the pattern's bits row by row, and goes on to the lower left. */
    private static SeenSquare square(int number, double[][] corners) {
        double[] x = new double[4];
        double[] y = new double[4];
        for (int k = 0; k < 4; k++) {
            x[k] = corners[(k + 2) % 4][0];
            y[k] = corners[(k + 2) % 4][1];
        }
        return new SeenSquare(number, x, y);
    }

    /** The picture in shades of grey, each of a block of pixels. */
    static GrayU8 grey(Picture picture, int block) {
        GrayU8 grey = new GrayU8(picture.width() / block, picture.height() / block);
        boolean turned = picture.turned();
        int lines = turned ? grey.width : grey.height;
        int lineStep = turned ? 1 : grey.width;
        int step = turned ? grey.width : 1;
        int whole = 4 * block * block;
        // Dividing by multiplying: exact, as the sums are below 2^24 and so many parts of the whole.
        long share = (1L << 32) / whole + 1;
        Cores.parts(lines, (first, end) -> {
            int[] sums = new int[turned ? grey.height : grey.width];
            for (int line = first; line < end; line++) {
                picture.grey(line * block, block, sums);
                int to = line * lineStep;
                for (int sum : sums) {
                    grey.data[to] = (byte) (((sum + whole / 2) * share) >>> 32);
                    to += step;
                }
            }
        });
        return grey;
    }
}
