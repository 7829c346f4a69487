package turnalike.photo;

import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.HammingDictionary;
import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;

/**
 * The numbered squares of the sheet that is laid under or beside a piece for its picture: which stand on which page, where, and what is
 * black in them. A page holds three along its upper long side and two along its lower; between the two rows a band stays blank for the piece.
 * The places are the same on every paper, from the middle of the page.
 *
 * <p>The patterns are those of a published family of 100 squares of 5 × 5 bits, which differ in 7 bits at least however they are turned, as BoofCV
 * brings them. Source: S. Garrido-Jurado and others,
 * Generation of fiducial marker dictionaries using mixed integer linear programming, Pattern Recognition, 2016; from memory.
 */
public final class SheetSquares {
    /** The side of a square, its black border included. */
    public static final Length SIDE = Length.ofMm(28);

    /** From the page's middle to the middle of the outer squares, along its long side. */
    public static final Length COLUMN = Length.ofMm(112);

    /** From the page's middle to the middle of the squares, along its short side. */
    public static final Length ROW = Length.ofMm(78);

    /** Squares on a page. */
    public static final int ON_PAGE = 5;

    /** So many pages differ. */
    public static final int MOST_PAGES = 20;

    /** Cells along a side, the border's two included. */
    public static final int CELLS = 7;

    private static final int BITS = CELLS - 2;

    /** The paper may be white beyond the squares so far from the page's middle, along its long side and its short side: half an A4 or Letter. */
    static final double[] HALF_PAPER_MM = {148.5, 108};

    private static final double[][] MIDDLES = {{-1, -1}, {0, -1}, {1, -1}, {-1, 1}, {1, 1}};

    private SheetSquares() {}

    /**
     * One square on its page.
     *
     * @param number from 0
     * @param right from the page's middle to its own, to the right of one who reads the page
     * @param down the same, downward
     */
    public record Place(int number, Length right, Length down) {}

    /**
     * The squares of a page.
     *
     * @param page from 1 to {@link #MOST_PAGES}
     * @return in the order of their numbers
     */
    public static List<Place> ofPage(int page) {
        if (page < 1 || page > MOST_PAGES) {
            throw new IllegalArgumentException("a page is from 1 to %d, was %d".formatted(MOST_PAGES, page));
        }
        List<Place> squares = new ArrayList<>();
        for (int k = 0; k < ON_PAGE; k++) {
            squares.add(new Place((page - 1) * ON_PAGE + k, COLUMN.times(MIDDLES[k][0]), ROW.times(MIDDLES[k][1])));
        }
        return squares;
    }

    /** The page that a square stands on, from 1. */
    static int page(int number) {
        return number / ON_PAGE + 1;
    }

    /**
     * {@return whether a cell is black}
     *
     * @param number of the square, from 0
     * @param row from its top, the border's row first
     * @param column from its left
     */
    public static boolean isBlack(int number, int row, int column) {
        boolean border = row == 0 || column == 0 || row == CELLS - 1 || column == CELLS - 1;
        return border || Patterns.FAMILY.encoding.get(number).pattern.get((row - 1) * BITS + column - 1) == 0;
    }

    /** What BoofCV looks for. */
    static ConfigHammingMarker family() {
        return Patterns.FAMILY;
    }

    /** Read when first asked for. */
    private static final class Patterns {
        private static final ConfigHammingMarker FAMILY =
                ConfigHammingMarker.loadDictionary(HammingDictionary.ARUCO_MIP_25h7);
    }
}
