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
            shows[i] = (byte) (on.length > 0 && isNear(on[0], on[1], 0, RIM_MM) ? 0 : 1);
        }
        return shows;
    }

    private double[] onSheet(int pixel) {
        double x = (pixel % coarse.width() + 0.5) * coarse.block();
        double y = (pixel / coarse.width() + 0.5) * coarse.block();
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
                near += Math.abs(own[0]) < SheetSquares.HALF_PAPER_MM[0] + RIM_MM ? 1 : 0;
            }
        }
        return near > 1;
    }

    private boolean isNear(double x, double y, double along, double across) {
        for (SheetView.Page page : sheet.pages()) {
            double[] own = page.own(x, y);
            if (Math.abs(own[0]) < SheetSquares.HALF_PAPER_MM[0] + RIM_MM + along
                    && Math.abs(own[1]) < SheetSquares.HALF_PAPER_MM[1] + across) {
                return true;
            }
        }
        return false;
    }

    /** Whether a body comes to the rim of what shows, or beyond. */
    boolean reachesOut(byte[] shows, byte[] body) {
        int width = coarse.width();
        for (int i = width + 1; i < body.length - width - 1; i++) {
            if (body[i] > 0 && (shows[i - 1] & shows[i + 1] & shows[i - width] & shows[i + width] & shows[i]) == 0) {
                return true;
            }
        }
        return false;
    }
}
