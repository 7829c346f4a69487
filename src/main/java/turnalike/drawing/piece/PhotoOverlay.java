package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Backdrop;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.photo.PhotoTrace;
import turnalike.photo.PixelPoint;
import turnalike.units.Length;

/** A photograph with what was found in it: the piece's two edges, its axis, and a short line across at both ends. */
public final class PhotoOverlay {
    private static final double WIDTH_MM = 240;

    /** Of an edge of thousands of points, so many are drawn. */
    private static final int MOST_POINTS = 1_200;

    private static final double TICK_MM = 5;

    private final Backdrop picture;
    private final double mmPerPixel;

    private PhotoOverlay(Backdrop picture, double mmPerPixel) {
        this.picture = picture;
        this.mmPerPixel = mmPerPixel;
    }

    /**
     * {@return the picture}
     *
     * @param address where the page has the photograph
     * @param widthPx of the upright photograph as it was traced
     * @param heightPx of it
     * @param found what was found in it; without, the photograph alone
     */
    public static Svg svg(String address, int widthPx, int heightPx, Optional<PhotoTrace.Overlay> found) {
        double mm = WIDTH_MM / widthPx;
        Backdrop picture = new Backdrop(address, widthPx, heightPx, List.of(mm, 0.0, 0.0, mm, 0.0, 0.0));
        String title = found.isPresent()
                ? "The photograph with the piece's edges and axis as they were found"
                : "The photograph";
        return new PhotoOverlay(picture, mm).draw(title, found);
    }

    private Svg draw(String title, Optional<PhotoTrace.Overlay> found) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(picture);
        found.ifPresent(each -> {
            shapes.add(through(each.leftEdge()));
            shapes.add(through(each.rightEdge()));
            shapes.add(Path.line(
                    Pen.DASHED,
                    mm(each.start().x()),
                    mm(each.start().y()),
                    mm(each.end().x()),
                    mm(each.end().y())));
            shapes.add(across(each.start(), each));
            shapes.add(across(each.end(), each));
        });
        double height = Math.max(1, mm(picture.heightPx()));
        return new Svg(Length.ofMm(WIDTH_MM), Length.ofMm(height), title, shapes);
    }

    private double mm(double px) {
        return px * mmPerPixel;
    }

    private Path through(List<PixelPoint> edge) {
        int step = Math.max(1, edge.size() / MOST_POINTS);
        List<PixelPoint> some = new ArrayList<>();
        for (int i = 0; i < edge.size(); i += step) {
            some.add(edge.get(i));
        }
        some.add(edge.get(edge.size() - 1));
        double[] through = new double[2 * some.size()];
        for (int i = 0; i < some.size(); i++) {
            through[2 * i] = mm(some.get(i).x());
            through[2 * i + 1] = mm(some.get(i).y());
        }
        return Path.through(Pen.ACCENT, through);
    }

    private Path across(PixelPoint end, PhotoTrace.Overlay found) {
        double right = found.end().x() - found.start().x();
        double down = found.end().y() - found.start().y();
        double longPx = Math.max(1e-9, Math.hypot(right, down));
        double dx = TICK_MM * -down / longPx;
        double dy = TICK_MM * right / longPx;
        return Path.line(Pen.HEAVY, mm(end.x()) - dx, mm(end.y()) - dy, mm(end.x()) + dx, mm(end.y()) + dy);
    }
}
