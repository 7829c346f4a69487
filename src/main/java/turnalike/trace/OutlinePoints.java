package turnalike.trace;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.trace.Profile.Station;
import turnalike.units.Length;

/**
 * An original's outline as points close together. Where the source told radii along the whole piece, these, with points between on straight
 * lines; where it told some places only, the outline of the members that explain them.
 */
final class OutlinePoints {
    /** Points are no further apart. */
    private static final double STEP_MM = 0.5;
    /** Stations further apart than this were set at places of the measurer's choice. */
    private static final double SWEPT_MM = 1.5;

    private OutlinePoints() {}

    static List<Station> of(Original original, TracedRun run) {
        List<Station> stations = original.profile().stations();
        double spacing = original.profile().length().mm() / (stations.size() - 1);
        return spacing <= SWEPT_MM ? between(stations) : along(run);
    }

    private static List<Station> between(List<Station> stations) {
        List<Station> out = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            Station here = stations.get(i);
            if (i > 0) {
                Station last = stations.get(i - 1);
                int parts = (int) Math.ceil(here.place().minus(last.place()).mm() / STEP_MM - 1e-9);
                for (int k = 1; k < parts; k++) {
                    out.add(mixed(last, here, (double) k / parts));
                }
            }
            out.add(here);
        }
        return out;
    }

    private static Station mixed(Station one, Station other, double share) {
        return new Station(
                mixed(one.place(), other.place(), share),
                mixed(one.radius(), other.radius(), share),
                one.uncertainty().compareTo(other.uncertainty()) > 0 ? one.uncertainty() : other.uncertainty());
    }

    private static Length mixed(Length one, Length other, double share) {
        return one.times(1 - share).plus(other.times(share));
    }

    private static List<Station> along(TracedRun run) {
        Outline outline = run.outline();
        List<Station> out = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            double length = segment.curve().length().mm();
            int parts = (int) Math.max(1, Math.ceil(length / STEP_MM - 1e-9));
            for (int k = 0; k <= parts; k++) {
                double x = length * k / parts;
                Length radius = Length.ofMm(segment.curve().radiusMm(x));
                Station next = new Station(segment.start().plus(Length.ofMm(x)), radius, run.scatter());
                if (k > 0 || out.isEmpty() || !isAt(out.get(out.size() - 1), next)) {
                    out.add(next);
                }
            }
        }
        return out;
    }

    private static boolean isAt(Station one, Station other) {
        return Math.abs(one.radius().minus(other.radius()).mm()) < 1e-6;
    }
}
