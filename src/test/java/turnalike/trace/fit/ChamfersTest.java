package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Broken edges that a fit in forms made a part of its own of; all sizes made up. */
class ChamfersTest {
    private static final double SHOULDER_MM = 0.25;

    private interface Radius {
        double at(double place);
    }

    /** Read every half millimetre over 60 mm, to a twentieth of one. */
    private static Data data(Radius radius) {
        List<Profile.Station> stations = new ArrayList<>();
        for (double x = 0; x <= 60; x += 0.5) {
            stations.add(new Profile.Station(Length.ofMm(x), Length.ofMm(radius.at(x)), Length.ofMm(0.05)));
        }
        return Data.of(new Profile(Length.ofMm(60), stations, List.of()), 0.03, 0.3, false);
    }

    private static Chamfers chamfers(Data data, double edge, double foot, double radius) {
        List<Part> parts = List.of(
                Part.of(Form.LEVEL, 0, edge, List.of(foot)),
                Part.of(Form.LEVEL, edge, 26, List.of(radius)),
                Part.of(Form.LEVEL, 26, 60, List.of(14.5)));
        return Chamfers.of(data, parts, SHOULDER_MM, Math.log(data.size()));
    }

    @Test
    void a_short_level_at_an_end_that_falls_at_45_degrees_is_the_broken_edge_of_the_tenon_behind_it() {
        Data data = data(x -> x > 26 ? 14.5 : 9.7 - Math.max(0, 1.8 - x));
        Chamfers found = chamfers(data, 1.8, 9.1, 9.7);
        assertThat(found.parts()).hasSize(2);
        assertThat(found.parts().get(0).toMm()).isEqualTo(26);
        assertThat(found.parts().get(0).startRadius()).isCloseTo(9.7, within(0.01));
        assertThat(found.sizes().get(0)).isCloseTo(1.8, within(0.05));
    }

    @Test
    void a_short_tenon_before_a_shoulder_of_its_own_stays_one() {
        Data data = data(x -> x > 26 ? 14.5 : x > 5 ? 11.7 : 8.7);
        Chamfers found = chamfers(data, 5, 8.7, 11.7);
        assertThat(found.parts()).hasSize(3);
        assertThat(found.parts().get(0).toMm()).isEqualTo(5);
        assertThat(found.sizes().get(0)).isZero();
    }
}
