package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TraceWarnings;
import turnalike.trace.TracedRun;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** A picture that shows a piece too small for its members to be told: an invented step of radius 10 and 16. */
class CoarsePictureTest {
    private static Original original(double sigma, double pixel) {
        List<Profile.Station> stations = new ArrayList<>();
        for (int i = 0; i <= 300; i++) {
            stations.add(new Profile.Station(Length.ofMm(i * 0.5), Length.ofMm(i < 120 ? 10 : 16), Length.ofMm(sigma)));
        }
        Profile profile = new Profile(Length.ofMm(150), stations, List.of());
        return new Original(profile, List.of(), Length.ofMm(0.05), profile, Length.ofMm(pixel));
    }

    private static void isTold(Original original, boolean coarse) {
        TracedRun run = MemberFit.of(original, Snap.NONE);
        assertThat(run.members()).isNotEmpty().allMatch(each -> each.uncertain() == coarse);
        assertThat(TraceWarnings.of(original, run, UnitSystem.METRIC).stream()
                        .anyMatch(line -> line.contains("no member's kind and size is sure")))
                .isEqualTo(coarse);
    }

    @Test
    void every_member_of_a_piece_hardly_shown_is_uncertain() {
        isTold(original(0.1, 0.5), false);
        isTold(original(0.8, 0.5), true);
        // What was measured or drawn has its own uncertainty told beside it.
        isTold(original(0.8, 0), false);
    }
}
