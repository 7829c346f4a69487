package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Of a piece of 50 mm, a station every half millimetre, a pixel to a millimetre. */
class HardlySeenTest {
    private static List<Profile.Station> stations(IntToDoubleFunction uncertainty) {
        List<Profile.Station> stations = new ArrayList<>();
        for (int k = 0; k <= 100; k++) {
            stations.add(new Profile.Station(
                    Length.ofMm(k / 2.0), Length.ofMm(10), Length.ofMm(uncertainty.applyAsDouble(k))));
        }
        return stations;
    }

    private static Profile.Stretch stretch(double from, double to) {
        return new Profile.Stretch(Length.ofMm(from), Length.ofMm(to));
    }

    @Test
    void beside_a_step_two_places_are_hardly_seen() {
        List<Profile.Station> stations = stations(k -> k == 40 || k == 41 ? 0.8 : 0.1);
        assertThat(HardlySeen.with(List.of(), List.of(), stations, 1)).containsExactly(stretch(17.75, 22.75));
    }

    @Test
    void they_are_one_with_what_is_hidden_beside_them() {
        List<Profile.Station> stations = stations(k -> k > 44 && k < 47 ? 0.8 : 0.1);
        assertThat(HardlySeen.with(List.of(stretch(20, 22), stretch(40, 41)), List.of(), stations, 1))
                .containsExactly(stretch(18, 25.25), stretch(38, 43));
    }

    /** The picture's softness rounds a corner over two pixels, be they small or large. */
    @Test
    void right_beside_what_is_hidden_is_hardly_seen() {
        List<Profile.Station> stations = stations(k -> 0.1);
        assertThat(HardlySeen.with(List.of(stretch(20, 22)), List.of(), stations, 0.5))
                .containsExactly(stretch(19, 23));
        assertThat(HardlySeen.with(List.of(stretch(0, 1)), List.of(), stations, 1.5))
                .containsExactly(stretch(0, 4));
    }

    @Test
    void nothing_of_a_square_is() {
        List<Profile.Station> stations = stations(k -> 0.1);
        List<Profile.Stretch> squares = List.of(stretch(0, 15), stretch(30, 50));
        assertThat(HardlySeen.with(List.of(stretch(15.5, 17), stretch(29, 30)), squares, stations, 1))
                .containsExactly(stretch(15, 19), stretch(27, 30));
    }

    @Test
    void the_ends_bound_them() {
        List<Profile.Station> stations = stations(k -> k == 0 || k == 100 ? 0.8 : 0.1);
        assertThat(HardlySeen.with(List.of(), List.of(), stations, 1))
                .containsExactly(stretch(0, 2.25), stretch(47.75, 50));
    }

    @Test
    void where_all_is_as_unsure_nothing_is_less_seen_than_the_rest() {
        assertThat(HardlySeen.with(List.of(), List.of(), stations(k -> 2), 1)).isEmpty();
    }

    @Test
    void what_is_sure_to_a_third_of_a_pixel_was_seen() {
        assertThat(HardlySeen.with(List.of(), List.of(), stations(k -> k == 40 ? 0.34 : 0.1), 1))
                .isEmpty();
        assertThat(HardlySeen.with(List.of(), List.of(), stations(k -> k == 40 ? 0.34 : 0.1), 0.5))
                .hasSize(1);
    }

    @Test
    void a_square_is_seen_by_its_flats() {
        List<Profile.Station> stations = stations(k -> k < 30 ? 0.8 : 0.1);
        assertThat(HardlySeen.with(List.of(), List.of(stretch(0, 15)), stations, 1))
                .isEmpty();
    }
}
