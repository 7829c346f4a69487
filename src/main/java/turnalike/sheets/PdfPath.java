package turnalike.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import turnalike.drawing.svg.Path;

/** Takes a path's steps into a page's content; keeps where the pen stands, which an arc needs. */
final class PdfPath implements Path.StepCases<Boolean> {
    /**
     * PDF has no arcs. Each is cut into eighths of a turn or less, and each piece drawn as the cubic that agrees with it at both ends and
     * in the middle, control arm 4/3 tan(angle/4). Error at an eighth: 4·10⁻⁶ of the half axis (Goldapp, CAGD 8 (1991) 227–238; from
     * memory; checked in the tests), so 0.2 µm at 50 mm.
     */
    private static final double LARGEST_PIECE = Math.PI / 4;

    private final PDPageContentStream stream;
    private final PdfPainter painter;
    private double atX;
    private double atY;
    private double startX;
    private double startY;

    PdfPath(PDPageContentStream stream, PdfPainter painter) {
        this.stream = stream;
        this.painter = painter;
    }

    void take(Path.Step step) {
        step.match(this);
    }

    @Override
    public Boolean move(Path.Move move) {
        startX = move.xMm();
        startY = move.yMm();
        return step(() -> stream.moveTo(painter.x(move.xMm()), painter.y(move.yMm())), move.xMm(), move.yMm());
    }

    @Override
    public Boolean straight(Path.Straight line) {
        return step(() -> stream.lineTo(painter.x(line.xMm()), painter.y(line.yMm())), line.xMm(), line.yMm());
    }

    @Override
    public Boolean cubic(Path.Cubic c) {
        return curve(c.x1Mm(), c.y1Mm(), c.x2Mm(), c.y2Mm(), c.xMm(), c.yMm());
    }

    @Override
    public Boolean close(Path.Close close) {
        return step(stream::closePath, startX, startY);
    }

    /**
     * From the two ends to the centre: SVG 1.1, appendix F.6.5 (from memory), with no turn of the axes and the smaller way round. In a
     * space where the ellipse is the unit circle, the chord's middle and the distance from it to the centre follow from Pythagoras; half
     * axes too small for the chord are widened until the centre lies on it, as F.6.6 asks.
     */
    @Override
    public Boolean arc(Path.Arc arc) {
        double chordX = (arc.xMm() - atX) / arc.rxMm();
        double chordY = (arc.yMm() - atY) / arc.ryMm();
        double half = Math.hypot(chordX, chordY) / 2;
        if (half == 0) {
            return true;
        }
        double widen = Math.max(1, half);
        double rx = arc.rxMm() * widen;
        double ry = arc.ryMm() * widen;
        double sine = Math.min(1, half / widen);
        double turn = 2 * Math.asin(sine) * (arc.clockwise() ? 1 : -1);
        double inward = Math.sqrt(1 - sine * sine) / (2 * half) * widen * (arc.clockwise() ? 1 : -1);
        double centreX = atX + arc.rxMm() * (chordX / 2 - chordY * inward);
        double centreY = atY + arc.ryMm() * (chordY / 2 + chordX * inward);
        double from = Math.atan2((atY - centreY) / ry, (atX - centreX) / rx);
        int pieces = (int) Math.ceil(Math.abs(turn) / LARGEST_PIECE - 1e-9);
        double angle = turn / pieces;
        double arm = 4.0 / 3 * Math.tan(angle / 4);
        for (int i = 0; i < pieces; i++) {
            double a = from + i * angle;
            double b = a + angle;
            boolean last = i == pieces - 1;
            curve(
                    centreX + rx * (Math.cos(a) - arm * Math.sin(a)),
                    centreY + ry * (Math.sin(a) + arm * Math.cos(a)),
                    centreX + rx * (Math.cos(b) + arm * Math.sin(b)),
                    centreY + ry * (Math.sin(b) - arm * Math.cos(b)),
                    last ? arc.xMm() : centreX + rx * Math.cos(b),
                    last ? arc.yMm() : centreY + ry * Math.sin(b));
        }
        return true;
    }

    private Boolean curve(double x1, double y1, double x2, double y2, double x, double y) {
        return step(
                () -> stream.curveTo(
                        painter.x(x1), painter.y(y1), painter.x(x2), painter.y(y2), painter.x(x), painter.y(y)),
                x,
                y);
    }

    private interface Write {
        void run() throws IOException;
    }

    private boolean step(Write write, double toX, double toY) {
        try {
            write.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        atX = toX;
        atY = toY;
        return true;
    }
}
