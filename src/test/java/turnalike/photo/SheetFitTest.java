package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The camera before the sheet, from corners worked out for a known one. */
class SheetFitTest {
    private static final int WIDTH = 4000;

    private static final int HEIGHT = 3000;

    private static final double FOCAL = 3100;

    private static final Lens LENS = new Lens(0.03, -0.008, WIDTH / 2.0, HEIGHT / 2.0);

    /** Where a page lies: right, down, turned by radians. */
    private record Laid(int page, double right, double down, double angle) {}

    private static final List<Laid> THREE =
            List.of(new Laid(1, -297, 0, 0), new Laid(2, 0, 0, 0), new Laid(3, 298, 1.5, 0.004));

    /** Corners as a camera sees them that hangs 900 mm above, leans and is turned by half a turn. */
    private static List<SeenSquare> seen(List<Laid> pages, double bow) {
        double a = 0.15;
        double b = -0.1;
        List<SeenSquare> squares = new ArrayList<>();
        for (Laid laid : pages) {
            for (SheetSquares.Place place : SheetSquares.ofPage(laid.page())) {
                double[] u = new double[4];
                double[] v = new double[4];
                for (int k = 0; k < 4; k++) {
                    double x = place.right().mm() + (k == 0 || k == 3 ? -14 : 14);
                    double y = place.down().mm() + (k < 2 ? -14 : 14);
                    double px = laid.right() + Math.cos(laid.angle()) * x - Math.sin(laid.angle()) * y;
                    double py = laid.down() + Math.sin(laid.angle()) * x + Math.cos(laid.angle()) * y;
                    double high = bow * (1 - Math.pow(x / 148, 2));
                    double cx = -px;
                    double cy = -(py * Math.cos(a) + high * Math.sin(a));
                    double cz = 900 + py * Math.sin(a) - high * Math.cos(a);
                    double sx = cx * Math.cos(b) + (cz - 900) * Math.sin(b);
                    double sz = 900 + (cz - 900) * Math.cos(b) - cx * Math.sin(b);
                    PixelPoint bent =
                            LENS.bent(WIDTH / 2.0 + FOCAL * (sx + 30) / sz, HEIGHT / 2.0 + FOCAL * (cy - 20) / sz);
                    u[k] = bent.x();
                    v[k] = bent.y();
                }
                squares.add(new SeenSquare(place.number(), u, v));
            }
        }
        return squares;
    }

    private static SheetView fit(List<SeenSquare> squares) {
        return new SheetFit(squares, WIDTH, HEIGHT, new FocalGuess(1.03 * FOCAL, 0.03, "a test"), 1).fit();
    }

    @Test
    void camera_lens_and_the_pages_mutual_places_come_from_the_corners() {
        SheetView view = fit(seen(THREE, 0));
        assertThat(view.missPixels()).isLessThan(0.02);
        assertThat(view.focal() / FOCAL).isCloseTo(1, within(0.002));
        for (double r : new double[] {300, 1200, 2300}) {
            PixelPoint one = LENS.straight(2000 + 0.8 * r, 1500 - 0.6 * r);
            PixelPoint same = view.lens().straight(2000 + 0.8 * r, 1500 - 0.6 * r);
            assertThat(Math.hypot(one.x() - same.x(), one.y() - same.y())).isLessThan(0.004 * r);
        }
        assertThat(view.squares()).isEqualTo(15);
        SheetView.Page first = view.pages().get(0);
        assertThat(first.number()).isEqualTo(1);
        SheetView.Page third = view.pages().get(2);
        assertThat(third.right()).isCloseTo(595, within(0.1));
        assertThat(third.down()).isCloseTo(1.5, within(0.1));
        assertThat(third.angle()).isCloseTo(0.004, within(0.0003));
    }

    @Test
    void a_pixel_leads_back_to_its_place_on_the_sheet() {
        List<SeenSquare> squares = seen(THREE, 0);
        SheetView view = fit(squares);
        SheetSquares.Place place = SheetSquares.ofPage(1).get(0);
        double[] on = view.onSheet(squares.get(0).x()[0], squares.get(0).y()[0]);
        assertThat(on[0]).isCloseTo(place.right().mm() - 14, within(0.05));
        assertThat(on[1]).isCloseTo(place.down().mm() - 14, within(0.05));
    }

    @Test
    void a_bowed_sheet_leaves_corners_off() {
        SheetView view = fit(seen(THREE.subList(1, 2), 12));
        assertThat(view.missPixels()).isGreaterThan(1);
    }
}
