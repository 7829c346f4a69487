package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedMember;
import turnalike.trace.TracedRun;
import turnalike.units.Length;

/** A size that nothing read tells is said to be a guess, and one that is told is not. */
class ToldSizesTest {
    private static TracedRun traced(double[][] rows) {
        List<Profile.Station> stations = new ArrayList<>();
        for (double[] each : rows) {
            stations.add(new Profile.Station(Length.ofMm(each[0]), Length.ofMm(each[1]), Length.ofMm(0.1)));
        }
        Length length = Length.ofMm(rows[rows.length - 1][0]);
        return MemberFit.of(
                new Original(new Profile(length, stations, List.of()), List.of(), Length.ofMm(0.03)), Snap.NONE);
    }

    private static Data data(double[][] rows) {
        List<Profile.Station> stations = new ArrayList<>();
        for (double[] each : rows) {
            stations.add(new Profile.Station(Length.ofMm(each[0]), Length.ofMm(each[1]), Length.ofMm(0.1)));
        }
        return Data.of(new Profile(Length.ofMm(200), stations, List.of()), 0.1, 0, false);
    }

    @Test
    void the_far_end_of_a_taper_measured_at_its_beginning_only_is_a_guess() {
        Part taper = Part.of(Form.STRAIGHT, 0, 140, List.of(15.0, 8.0));
        Part level = Part.of(Form.LEVEL, 140, 200, List.of(5.0));
        double[][] rows = {{0, 15}, {10, 14.5}, {20, 14}, {30, 13.5}, {160, 5}, {200, 5}};
        assertThat(ToldSizes.guessed(data(rows), List.of(taper, level))).containsExactly(List.of(1), List.of());
        double[][] more = {{0, 15}, {10, 14.5}, {20, 14}, {30, 13.5}, {139, 8}, {160, 5}, {200, 5}};
        assertThat(ToldSizes.guessed(data(more), List.of(taper, level))).containsExactly(List.of(), List.of());
    }

    @Test
    void the_root_of_a_bead_measured_at_its_crown_only_is_a_guess_unless_its_neighbour_tells_it() {
        Part bead = Part.of(Form.HUMP, 100, 120, List.of(10.0, 16.0));
        double[][] rows = {{0, 10}, {90, 10}, {110, 16}, {140, 8}, {200, 8}};
        Part stepped = Part.of(Form.LEVEL, 0, 100, List.of(10.5));
        Part flush = Part.of(Form.LEVEL, 0, 100, List.of(10.0));
        Part after = Part.of(Form.LEVEL, 120, 200, List.of(8.0));
        assertThat(ToldSizes.guessed(data(rows), List.of(stepped, bead, after)).get(1))
                .containsExactly(0);
        assertThat(ToldSizes.guessed(data(rows), List.of(flush, bead, after)).get(1))
                .isEmpty();
    }

    @Test
    void it_is_said_of_members_found_in_rows_set_far_apart() {
        int guessed = 0;
        for (int seed = 1; seed <= 6; seed++) {
            RandomRuns runs = new RandomRuns(seed);
            Profile profile = runs.profile(RandomRuns.outline(runs.run(8)), 9, 0.1, 0.1);
            TracedRun run = MemberFit.of(new Original(profile, List.of(), Length.ofMm(0.03)), Snap.NONE);
            for (TracedMember each : run.members()) {
                guessed += each.guessed().size();
                assertThat(each.member().sizes().lengths().keySet()).containsAll(each.guessed());
                assertThat(each.guessed().isEmpty() || each.uncertain()).isTrue();
            }
        }
        assertThat(guessed).isGreaterThan(0);
    }

    @Test
    void a_row_at_that_end_tells_it() {
        TracedRun run = traced(new double[][] {
            {0, 8}, {20, 8}, {20, 15}, {25, 14.75}, {30, 14.5}, {40, 14}, {180, 7}, {180, 20}, {200, 20}
        });
        assertThat(run.members()).allSatisfy(each -> assertThat(each.guessed()).isEmpty());
    }

    @Test
    void of_a_piece_swept_from_end_to_end_nothing_is_a_guess() {
        for (int seed = 1; seed <= 3; seed++) {
            RandomRuns runs = new RandomRuns(seed);
            TracedRun run = MemberFit.of(
                    new Original(
                            runs.profile(RandomRuns.outline(runs.run(6)), 0.5, 0.1, 0.1), List.of(), Length.ofMm(0.03)),
                    Snap.NONE);
            assertThat(run.members())
                    .allSatisfy(each -> assertThat(each.guessed()).isEmpty());
        }
    }
}
