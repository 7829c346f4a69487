package turnalike.photo;

import boofcv.abst.fiducial.FiducialDetector;
import boofcv.abst.fiducial.SquareHamming_to_FiducialDetector;
import boofcv.alg.fiducial.square.DetectFiducialSquareHamming;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.shape.FactoryShapeDetector;
import boofcv.struct.image.GrayU8;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Finds the sheet's squares: BoofCV in the picture made small enough, the corners then in the whole one. */
final class SquareFinder {
    private SquareFinder() {}

    /**
     * Looks for them.
     *
     * @param picture the picture
     * @param grey the same in shades of grey, made small
     * @return the squares found, in the order of their numbers; one that is found twice is not taken
     */
    static List<SeenSquare> find(Picture picture, GreyLines grey) {
        int block = grey.block();
        FiducialDetector<GrayU8> detector = detector();
        detector.detect(grey.picture());
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

    /** BoofCV's usual one, but for what tells dark from light. */
    private static FiducialDetector<GrayU8> detector() {
        ConfigFiducialHammingDetector usual = new ConfigFiducialHammingDetector();
        // Besides checking it says that a square has four sides.
        usual.checkValidity();
        DetectFiducialSquareHamming<GrayU8> squares = new DetectFiducialSquareHamming<>(
                SheetSquares.family(),
                usual.minimumBlackBorderFraction,
                new LocalMean((int) usual.configThreshold.width.length, (float) usual.configThreshold.scale),
                FactoryShapeDetector.polygon(usual.squareDetector, GrayU8.class),
                GrayU8.class);
        squares.setAmbiguousPenaltyFrac(usual.ambiguousPenaltyFrac);
        return new SquareHamming_to_FiducialDetector<>(squares);
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
}
