package turnalike.photo;

import java.util.List;

/**
 * Where the sheet lies before the camera. Its own places are millimetres from the middle of the page most seen: right and down for one who reads
 * it, the third into the paper.
 *
 * @param turn the sheet's axes, in columns, as the camera has them: right, down, forward
 * @param place the sheet's middle as the camera has it, mm
 * @param focal the focal length in pixels
 * @param focalUncertainty of its logarithm
 * @param lens how it bends
 * @param missPixels what a corner is off by in one direction, root mean square
 * @param squares how many were seen
 * @param pages where each page lies
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SheetView(
        double[][] turn,
        double[] place,
        double focal,
        double focalUncertainty,
        Lens lens,
        double missPixels,
        int squares,
        List<Page> pages) {
    SheetView {
        pages = List.copyOf(pages);
    }

    /**
     * One page on the plane of all.
     *
     * @param number from 1
     * @param right of its middle, mm
     * @param down of its middle, mm
     * @param angle how it is turned, radians
     * @param size true lengths over those that were meant
     */
    record Page(int number, double right, double down, double angle, double size) {
        /** A place of the plane as this page has it, in the lengths that were meant: right and down of its middle. */
        double[] own(double x, double y) {
            double dx = x - right;
            double dy = y - down;
            return new double[] {
                (Math.cos(angle) * dx + Math.sin(angle) * dy) / size,
                (-Math.sin(angle) * dx + Math.cos(angle) * dy) / size
            };
        }
    }

    /** How high the camera stands above the sheet, mm. */
    double cameraMm() {
        return turn[0][2] * place[0] + turn[1][2] * place[1] + turn[2][2] * place[2];
    }

    /** The direction from the sheet towards its reader, as the camera has it. */
    double[] up() {
        return new double[] {-turn[0][2], -turn[1][2], -turn[2][2]};
    }

    /** How much of the sheet one pixel shows, about, mm. */
    double mmPerPixel() {
        return place[2] / focal;
    }

    /** Where a pixel's ray meets the sheet's plane, mm; none where it does not. */
    double[] onSheet(double u, double v) {
        PixelPoint straight = lens.straight(u, v);
        double[] ray = {(straight.x() - lens.middleX()) / focal, (straight.y() - lens.middleY()) / focal, 1};
        double fall = turn[0][2] * ray[0] + turn[1][2] * ray[1] + turn[2][2] * ray[2];
        double depth = cameraMm() / fall;
        if (!(depth > 0)) {
            return new double[0];
        }
        double[] on = new double[2];
        for (int i = 0; i < 3; i++) {
            double d = depth * ray[i] - place[i];
            on[0] += turn[i][0] * d;
            on[1] += turn[i][1] * d;
        }
        return on;
    }

    /** Where a place of the sheet's plane shows in the picture. */
    PixelPoint pixel(double x, double y) {
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            seen[i] = turn[i][0] * x + turn[i][1] * y + place[i];
        }
        return lens.bent(lens.middleX() + focal * seen[0] / seen[2], lens.middleY() + focal * seen[1] / seen[2]);
    }
}
