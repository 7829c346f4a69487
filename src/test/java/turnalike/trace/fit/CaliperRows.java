package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import turnalike.outline.Outline;
import turnalike.pattern.Member;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.units.Length;

/** What somebody with calipers would write down of a run of members. */
final class CaliperRows {
    private final Random random;
    private final double sigmaMm;
    private final List<double[]> rows = new ArrayList<>();

    /** @param sigmaMm by how much a diameter strays */
    CaliperRows(long seed, double sigmaMm) {
        this.random = new Random(seed);
        this.sigmaMm = sigmaMm;
    }

    /** A row at each joint, two where it steps, and rows some millimetres apart between. */
    CaliperRows atJoints(List<Member> members, double apartMm) {
        double at = 0;
        for (Member member : members) {
            Outline outline = RandomRuns.outline(List.of(member));
            double length = member.length().mm();
            int parts = (int) Math.max(4, Math.ceil(length / apartMm));
            for (int k = 0; k <= parts; k++) {
                double radius = outline.radiusAt(
                                Length.ofMm(Math.min(length - 1e-6, Math.max(1e-6, length * k / parts))))
                        .mm();
                boolean joined = k == 0 && !rows.isEmpty() && Math.abs(lastDiameter() - 2 * radius) < 0.6;
                if (!joined) {
                    row(at + length * k / parts, 2 * radius);
                }
            }
            at += length;
        }
        return this;
    }

    private double lastDiameter() {
        return rows.get(rows.size() - 1)[1];
    }

    /** Rows anywhere, so far apart in the mean. */
    CaliperRows anywhere(List<Member> members, double apartMm) {
        Outline outline = RandomRuns.outline(members);
        double end = outline.end().mm();
        for (double x = 0; x < end; x += apartMm * (0.5 + random.nextDouble())) {
            row(x, 2 * outline.radiusAt(Length.ofMm(x)).mm());
        }
        row(end, 2 * outline.radiusAt(outline.end()).mm());
        return this;
    }

    CaliperRows row(double placeMm, double diameterMm) {
        rows.add(new double[] {Math.rint(10 * placeMm) / 10, diameterMm + sigmaMm * random.nextGaussian()});
        return this;
    }

    /** @param errorMm that a diameter is said to be measured within */
    TracedRows fit(double errorMm) {
        List<Profile.Station> stations = new ArrayList<>();
        for (double[] each : rows) {
            stations.add(new Profile.Station(Length.ofMm(each[0]), Length.ofMm(each[1] / 2), Length.ofMm(errorMm / 2)));
        }
        Profile profile = new Profile(Length.ofMm(rows.get(rows.size() - 1)[0]), stations, List.of());
        return MemberFit.ofRows(new Original(profile, List.of(), Length.ofMm(0.03)), Snap.NONE);
    }
}
