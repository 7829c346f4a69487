package turnalike.drawing.piece;

import java.util.List;
import turnalike.drawing.svg.Backdrop;
import turnalike.job.kept.KeptPhoto;

/**
 * The photograph that a pattern was copied from, to lie behind its drawing: moved, turned and sized so that the axes lie on one another, and
 * no more, so that what a camera sees larger because it is nearer stands a little out of the drawing.
 *
 * @param address where the page has it
 * @param photo as it is kept
 */
public record PhotoBehind(String address, KeptPhoto photo) {
    /** Laid behind a piece drawn from {@code startMm} on along {@code axisMm}, to that scale. */
    Backdrop at(double startMm, double axisMm, double paperOverWood) {
        KeptPhoto.Axis axis = photo.axis();
        double right = axis.endX() - axis.startX();
        double down = axis.endY() - axis.startY();
        double px = Math.hypot(right, down);
        double scale = paperOverWood * axis.length().mm() / px;
        double cos = scale * right / px;
        double sin = scale * down / px;
        return new Backdrop(
                address,
                photo.widthPx(),
                photo.heightPx(),
                List.of(
                        cos,
                        -sin,
                        sin,
                        cos,
                        startMm - cos * axis.startX() - sin * axis.startY(),
                        axisMm + sin * axis.startX() - cos * axis.startY()));
    }
}
