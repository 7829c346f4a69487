package turnalike.photo;

/**
 * Takes the sheet out of the coarse picture, so that its squares and its paper's rim are not taken for a piece: either all but the blank band is
 * painted like the paper there, for a piece that lies on it, or the whole sheet is painted like what lies around it.
 */
final class SheetCover {
    /** From the page's middle to where the printed rows begin, less a margin, mm. */
    private static final double BAND_MM = SheetSquares.ROW.mm() - SheetSquares.SIDE.mm() / 2 - 3;

    /** Half of what every paper covers for sure, along and across, mm. */
    private static final double[] SURELY_PAPER_MM = {137.5, 103};

    private static final double RIM_MM = 4;

    /** Nearer than this to the middles of two pages, along both, lies the joint between them. */
    private static final double NEAR_MM = 176;

    /** How far to either side of a joint what lies below may show, and how far off it surely does not, mm. */
    private static final double JOINT_MM = 4;

    private static final double BESIDE_MM = 9;

    private final CoarsePicture coarse;

    private final SheetView sheet;

    SheetCover(CoarsePicture coarse, SheetView sheet) {
        this.coarse = coarse;
        this.sheet = sheet;
    }

    /** 1 where the blank band shows. */
    byte[] band() {
        byte[] shows = new byte[coarse.width() * coarse.height()];
        for (int i = 0; i < shows.length; i++) {
            double[] on = onSheet(i);
            shows[i] = (byte) (on.length > 0 && isBand(on[0], on[1]) ? 1 : 0);
        }
        return shows;
    }

    /** 1 where no paper lies. */
    byte[] beside() {
        byte[] shows = new byte[coarse.width() * coarse.height()];
        for (int i = 0; i < shows.length; i++) {
            double[] on = onSheet(i);
            shows[i] = (byte) (on.length > 0 && isPaper(on[0], on[1]) ? 0 : 1);
        }
        return shows;
    }

    private double[] onSheet(int pixel) {
        int row = pixel / coarse.width();
        double x = (pixel % coarse.width() + 0.5) * coarse.block();
        double y = (row + 0.5) * coarse.block();
        return sheet.onSheet(x, y);
    }

    /** On a page, or between two that lie side by side. */
    private boolean isBand(double x, double y) {
        int near = 0;
        for (SheetView.Page page : sheet.pages()) {
            double[] own = page.own(x, y);
            if (Math.abs(own[1]) < BAND_MM) {
                if (Math.abs(own[0]) < SURELY_PAPER_MM[0]) {
                    return true;
                }
                near += Math.abs(own[0]) < NEAR_MM ? 1 : 0;
            }
        }
        return near > 1;
    }

    private boolean isPaper(double x, double y) {
        for (SheetView.Page page : sheet.pages()) {
            double[] own = page.own(x, y);
            if (Math.abs(own[0]) < SheetSquares.HALF_PAPER_MM[0] + RIM_MM
                    && Math.abs(own[1]) < SheetSquares.HALF_PAPER_MM[1] + RIM_MM) {
                return true;
            }
        }
        return false;
    }

    /**
     * The coarse picture without the joints between pages, where what lies under the paper may show: there it is made like what stands on either
     * side, so that a piece across a joint stays whole and the joint is no arm of it.
     */
    CoarsePicture mended() {
        float[][] planes = {coarse.planes()[0].clone(), coarse.planes()[1].clone(), coarse.planes()[2].clone()};
        for (int i = 0; i < planes[0].length; i++) {
            double[] on = onSheet(i);
            int near = on.length == 0 ? -1 : joint(on[0], on[1]);
            if (near >= 0) {
                double angle = sheet.pages().get(near).angle();
                int one = pixel(on[0] - BESIDE_MM * Math.cos(angle), on[1] - BESIDE_MM * Math.sin(angle));
                int other = pixel(on[0] + BESIDE_MM * Math.cos(angle), on[1] + BESIDE_MM * Math.sin(angle));
                for (int c = 0; c < 3 && one >= 0 && other >= 0; c++) {
                    planes[c][i] = (coarse.planes()[c][one] + coarse.planes()[c][other]) / 2;
                }
            }
        }
        return coarse.with(planes);
    }

    /** The page at whose joint with another a place lies, by its rank; -1 if at none. */
    private int joint(double x, double y) {
        for (int k = 0; k < sheet.pages().size(); k++) {
            SheetView.Page page = sheet.pages().get(k);
            double[] own = page.own(x, y);
            for (SheetView.Page other : sheet.pages()) {
                double[] there = page.own(other.right(), other.down());
                boolean beside = Math.abs(there[0]) > 270 && Math.abs(there[0]) < 310 && Math.abs(there[1]) < 30;
                if (beside && Math.abs(own[0] - there[0] / 2) < JOINT_MM && Math.abs(own[1]) < BAND_MM) {
                    return k;
                }
            }
        }
        return -1;
    }

    private int pixel(double x, double y) {
        PixelPoint point = sheet.pixel(x, y);
        int px = (int) Math.floor(point.x() / coarse.block());
        int py = (int) Math.floor(point.y() / coarse.block());
        return px < 0 || py < 0 || px >= coarse.width() || py >= coarse.height() ? -1 : py * coarse.width() + px;
    }
}
