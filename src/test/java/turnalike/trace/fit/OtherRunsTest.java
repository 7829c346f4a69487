package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** What else the rows about a member may be; all rows made up. */
class OtherRunsTest {
    private static final double PER_SIZE = 6;

    private static Data data(double[]... rows) {
        List<Profile.Station> stations = new ArrayList<>();
        for (double[] each : rows) {
            stations.add(new Profile.Station(Length.ofMm(each[0]), Length.ofMm(each[1] / 2), Length.ofMm(0.05)));
        }
        Profile profile = new Profile(Length.ofMm(rows[rows.length - 1][0]), stations, List.of());
        return Data.of(profile, 0.03, 0, true);
    }

    private static double half(double x) {
        return 10 + 4 * Math.sqrt(1 - Math.pow((x - 35) / 7, 2));
    }

    private static final List<Part> BEAD = List.of(
            Part.of(Form.LEVEL, 0, 28, List.of(10.0)),
            Part.of(Form.HUMP, 28, 42, List.of(10.0, 14.0)),
            Part.of(Form.LEVEL, 42, 70, List.of(10.0)));

    /** Of many the cheapest other is two half beads, one more member. */
    @Test
    void a_bead_of_many_rows_is_no_other_and_one_of_two_may_be_anything() {
        List<double[]> many = new ArrayList<>();
        for (double x = 0; x <= 70; x += 2) {
            many.add(new double[] {x, 2 * (x > 28 && x < 42 ? half(x) : 10)});
        }
        Data fine = data(many.toArray(new double[0][]));
        Data coarse = data(
                new double[] {0, 20},
                new double[] {14, 20},
                new double[] {28, 20},
                new double[] {32, 2 * half(32)},
                new double[] {38, 2 * half(38)},
                new double[] {42, 20},
                new double[] {56, 20},
                new double[] {70, 20});
        double sure = new OtherRuns(fine, BEAD, PER_SIZE).dearer(1, 2, 2);
        double open = new OtherRuns(coarse, BEAD, PER_SIZE).dearer(1, 8, 8);
        assertThat(sure).isGreaterThan(10);
        assertThat(open).isLessThan(10);
    }

    /** A step between two rows, told as one S over both. */
    @Test
    void two_members_and_a_step_cost_less_than_one_that_leads_from_the_one_to_the_other() {
        Data rows = data(
                new double[] {0, 20},
                new double[] {10, 20},
                new double[] {20, 20},
                new double[] {30, 20},
                new double[] {40, 16},
                new double[] {50, 16},
                new double[] {60, 16},
                new double[] {70, 16});
        List<Part> one = List.of(Part.of(Form.S, 0, 70, List.of(10.0, 8.0)));
        assertThat(new OtherRuns(rows, one, PER_SIZE).dearer(0, 10, 10)).isNegative();
        List<Part> two = List.of(Part.of(Form.LEVEL, 0, 35, List.of(10.0)), Part.of(Form.LEVEL, 35, 70, List.of(8.0)));
        assertThat(new OtherRuns(rows, two, PER_SIZE).dearer(0, 10, 10)).isPositive();
    }

    @Test
    void no_other_run_is_asked_for_of_a_single_row() {
        Data rows = data(new double[] {0, 20}, new double[] {40, 20}, new double[] {40, 16}, new double[] {80, 16});
        List<Part> parts = List.of(
                Part.of(Form.LEVEL, 0, 40, List.of(10.0)),
                Part.curve(List.of(new double[] {40, 8}, new double[] {60, 8}, new double[] {80, 8})));
        assertThat(new OtherRuns(rows, parts, PER_SIZE).dearer(0, 1, 1)).isPositive();
    }
}
