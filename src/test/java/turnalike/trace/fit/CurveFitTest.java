package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.outline.Outline;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedRun;
import turnalike.units.Length;

/** A curve through rows set far apart has no neck and no belly between two of them that neither shows. */
class CurveFitTest {
    private static final double SIGMA_MM = 0.1;

    /** A post's shaft by calipers, in inches: place and diameter. */
    private static final double[][] SHAFT = {
        {7 + 51 / 64.0, 1 + 5 / 64.0},
        {8, 1 + 5 / 64.0},
        {9, 63 / 64.0},
        {12, 1 + 11 / 64.0},
        {16, 1 + 25 / 64.0},
        {19, 1 + 13 / 64.0},
        {21.5, 57 / 64.0},
    };

    private static Profile profile() {
        List<Profile.Station> stations = new ArrayList<>();
        for (double[] each : SHAFT) {
            stations.add(new Profile.Station(
                    Length.ofInches(each[0] - SHAFT[0][0]), Length.ofInches(each[1] / 2), Length.ofMm(SIGMA_MM)));
        }
        return new Profile(Length.ofInches(21.5 - SHAFT[0][0]), stations, List.of());
    }

    @Test
    void a_post_measured_far_apart_gets_no_neck_that_nobody_measured() {
        Profile profile = profile();
        TracedRun run = MemberFit.of(new Original(profile, List.of(), Length.ofMm(SIGMA_MM)), Snap.NONE);
        Outline outline = run.outline();
        for (int i = 0; i + 1 < SHAFT.length; i++) {
            Profile.Station here = profile.stations().get(i);
            Profile.Station next = profile.stations().get(i + 1);
            double low = Math.min(here.radius().mm(), next.radius().mm()) - 4 * SIGMA_MM;
            double high = Math.max(here.radius().mm(), next.radius().mm()) + 4 * SIGMA_MM;
            for (int k = 1; k < 20; k++) {
                Length place =
                        here.place().plus(next.place().minus(here.place()).times(k / 20.0));
                assertThat(outline.radiusAt(place).mm()).as("at %s", place).isBetween(low, high);
            }
        }
    }

    @Test
    void a_point_that_begins_far_off_is_brought_to_what_was_measured_beside_it() {
        double[] x = {0, 40, 80, 120};
        double[] r = {10, 12, 14, 11};
        List<Profile.Station> stations = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            stations.add(new Profile.Station(Length.ofMm(x[i]), Length.ofMm(r[i]), Length.ofMm(SIGMA_MM)));
        }
        Data data = Data.of(new Profile(Length.ofMm(120), stations, List.of()), SIGMA_MM, 0, false);
        CurveFit.Found found = CurveFit.of(
                data,
                0,
                3,
                List.of(
                        new double[] {0, 10},
                        new double[] {20, 3},
                        new double[] {60, 13},
                        new double[] {100, 40},
                        new double[] {120, 11}),
                0.1);
        assertThat(found.points())
                .allSatisfy(each -> assertThat(each[1]).isBetween(10 - 3 * SIGMA_MM - 1e-9, 14 + 3 * SIGMA_MM + 1e-9));
        assertThat(found.chi()).isLessThan(4);
    }
}
