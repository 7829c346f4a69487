package turnalike.drawing.frame;

import turnalike.drawing.svg.Svg;
import turnalike.job.set.FrameFit;
import turnalike.job.set.LegsFit;
import turnalike.job.set.RowFit;
import turnalike.job.set.WheelFit;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * Any frame as it will stand, before any piece is turned.
 *
 * @param pattern of each piece
 * @param widthMm room for it, 80 mm or more
 * @param tallestMm a wheel or a row may be, 80 mm or more
 */
public record FrameElevation(Pattern pattern, double widthMm, double tallestMm) implements FrameFit.Cases<Svg> {
    private static final double TALLEST_MM = 150;

    /**
     * As tall as a page has room for beside its words, most of the time.
     *
     * @param pattern of each piece
     * @param widthMm room for it, 80 mm or more
     */
    public FrameElevation(Pattern pattern, double widthMm) {
        this(pattern, widthMm, TALLEST_MM);
    }

    @Override
    public Svg wheel(WheelFit fit) {
        return new WheelElevation(pattern, fit).svg(Length.ofMm(Math.min(widthMm, tallestMm)));
    }

    @Override
    public Svg row(RowFit fit) {
        return new RowElevation(pattern, fit).svg(Length.ofMm(widthMm), Length.ofMm(tallestMm));
    }

    @Override
    public Svg legs(LegsFit fit) {
        return new LegsElevation(fit).svg(Length.ofMm(widthMm));
    }
}
