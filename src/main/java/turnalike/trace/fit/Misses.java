package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.trace.TracedMember;
import turnalike.units.Length;

/** How far stations lie off an outline, square to it: at a shoulder's wall or an upright arc a radius alone says nothing. */
final class Misses {
    private static final double STEP_MM = 0.1;
    /** Nothing further along than this is nearer. */
    private static final double REACH_MM = 6;

    private final List<double[]> line = new ArrayList<>();

    Misses(Outline outline) {
        for (Segment segment : outline.segments()) {
            double start = segment.start().mm();
            double length = segment.curve().length().mm();
            int parts = (int) Math.min(4000, Math.max(8, Math.ceil(length / STEP_MM)));
            for (int i = 0; i <= parts; i++) {
                // Closer together towards both ends, where arcs stand upright.
                double x = length * (1 - Math.cos(Math.PI * i / parts)) / 2;
                line.add(new double[] {start + x, segment.curve().radiusMm(x)});
            }
        }
    }

    double of(double xMm, double radiusMm) {
        int low = 0;
        int high = line.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (line.get(middle)[0] < xMm - REACH_MM) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = Math.max(0, low - 1); i + 1 < line.size() && line.get(i)[0] <= xMm + REACH_MM; i++) {
            least = Math.min(least, distance(line.get(i), line.get(i + 1), xMm, radiusMm));
        }
        return least;
    }

    private static double distance(double[] a, double[] b, double x, double y) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double square = dx * dx + dy * dy;
        double t = square > 0 ? Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / square)) : 0;
        return Math.hypot(a[0] + t * dx - x, a[1] + t * dy - y);
    }

    /** Of the stations between two places. */
    TracedMember.Miss between(Data data, double fromMm, double toMm) {
        double squares = 0;
        double worst = 0;
        double at = fromMm;
        int count = 0;
        for (int i = 0; i < data.size(); i++) {
            if (data.x[i] >= fromMm && data.x[i] <= toMm) {
                double miss = of(data.x[i], data.r[i]);
                squares += miss * miss;
                count++;
                if (miss > worst) {
                    worst = miss;
                    at = data.x[i];
                }
            }
        }
        double rms = count == 0 ? 0 : Math.sqrt(squares / count);
        return new TracedMember.Miss(Length.ofMm(rms), Length.ofMm(worst), Length.ofMm(at), count);
    }
}
