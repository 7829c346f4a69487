package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Turns contour and view into the answer: radii with their uncertainty, what was hidden, and what to know before relying on it. */
final class TraceReport {
    private final Picture picture;

    private final FocalGuess focal;

    private final ViewFit fit;

    private final ViewFit.View view;

    private final double lengthMm;

    private final EdgeFit.Fitted contour;

    TraceReport(
            Picture picture, FocalGuess focal, ViewFit fit, ViewFit.View view, Length span, EdgeFit.Fitted contour) {
        this.picture = picture;
        this.focal = focal;
        this.fit = fit;
        this.view = view;
        lengthMm = span.mm();
        this.contour = contour;
    }

    PhotoTrace answer() throws Unsure {
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), lengthMm);
        RoundOutline farther = other(view.focalUncertainty(), 0);
        RoundOutline tilted = other(0, view.tiltUncertainty());
        List<Profile.Station> stations = new ArrayList<>();
        for (int k = 0; k < outline.count(); k++) {
            double byFocal = farther.radiusMm(k) - outline.radiusMm(k);
            double byTilt = tilted.radiusMm(k) - outline.radiusMm(k);
            double byEdge = edgeMm(outline, k);
            stations.add(new Profile.Station(
                    Length.ofMm(outline.placeMm(k)),
                    Length.ofMm(outline.radiusMm(k)),
                    Length.ofMm(Math.sqrt(byFocal * byFocal + byTilt * byTilt + byEdge * byEdge))));
        }
        List<Profile.Stretch> hidden = outline.hiddenStretches(Math.max(0.4, outline.mmPerPixel()));
        return new PhotoTrace.Traced(
                new Profile(Length.ofMm(lengthMm), stations, hidden),
                outline.mmPerPixel(),
                "the overall length that was given",
                focal.from(),
                overlay(),
                List.of());
    }

    /** The outline for another focal length or tilt, the axis straightened for it. */
    private RoundOutline other(double logFocal, double tilt) throws Unsure {
        double f = view.logFocal() + logFocal;
        double t = view.tilt() + tilt;
        SquaredContour seen = fit.contour(fit.straightened(view.axis(), f, t), f, t);
        return RoundOutline.of(seen, EndCap.of(seen, true), EndCap.of(seen, false), lengthMm);
    }

    /** What the edges themselves leave open: how they differ nearby, their noise, and how steep the outline runs. */
    private static double edgeMm(RoundOutline outline, int k) {
        int reach = 6;
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, k - reach); i <= Math.min(outline.count() - 1, k + reach); i++) {
            sum += outline.apartMm(i) * outline.apartMm(i) / 4;
            count++;
        }
        double pixel = outline.mmPerPixel();
        int before = Math.max(0, k - 1);
        int after = Math.min(outline.count() - 1, k + 1);
        double slope = (outline.radiusMm(after) - outline.radiusMm(before))
                / Math.max(1e-9, outline.placeMm(after) - outline.placeMm(before));
        double noise = pixel * (0.06 + 0.5 * outline.noisePixels());
        double place = 0.15 * pixel * Math.min(6, Math.abs(slope));
        return Math.sqrt(sum / count / 2 + noise * noise + place * place);
    }

    private PhotoTrace.Overlay overlay() {
        Sight sight = view.contour().sight();
        double[][] left = view.contour().points(true, 0);
        double[][] right = view.contour().points(false, 0);
        return new PhotoTrace.Overlay(
                picture.width(),
                picture.height(),
                sight.pixel(left[0][0], 0),
                sight.pixel(left[0][left[0].length - 1], 0),
                pixels(sight, left),
                pixels(sight, right));
    }

    private static List<PixelPoint> pixels(Sight sight, double[][] edge) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < edge[0].length; i++) {
            points.add(sight.pixel(edge[0][i], edge[1][i]));
        }
        return points;
    }
}
