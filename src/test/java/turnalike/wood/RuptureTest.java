package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.wood.WoodsTest.species;

import org.junit.jupiter.api.Test;
import turnalike.units.Density;
import turnalike.units.Working;

class RuptureTest {
    private static Rupture of(String name, double pct) {
        return Wood.of(species(name), Moisture.ofPct(pct)).rupture().orElseThrow();
    }

    /** 106 MPa times (103/66)^(4/12), the worked example's ratio (Wood Handbook's example; VERIFIED, S3). */
    @Test
    void white_ash_is_carried_to_its_moisture_both_ways() {
        assertThat(of("White ash", 12).mpa()).isEqualTo(106, within(1e-9));
        assertThat(of("White ash", 8).mpa()).isEqualTo(106 * 119_473 / 103_000.0, within(0.001));
        assertThat(of("White ash", 24).mpa()).isEqualTo(106 * 66 / 103.0, within(1e-9));
        assertThat(of("White ash", 40).mpa()).isEqualTo(106 * 66 / 103.0, within(1e-9));
    }

    @Test
    void another_wood_is_weakened_when_wet_and_left_as_printed_when_dry() {
        double printed = species("Black cherry").strength().morMpa().orElseThrow();
        assertThat(of("Black cherry", 8).mpa()).isEqualTo(printed);
        assertThat(of("Black cherry", 8).working().how()).contains("unchanged");
        assertThat(of("Black cherry", 25).mpa()).isEqualTo(printed * 66 / 103, within(1e-9));
        assertThat(of("Black cherry", 25).working().sureness()).contains("white ash's ratio");
    }

    @Test
    void what_is_not_printed_is_not_known() {
        assertThat(Wood.of(species("Apple"), Moisture.TWELVE).rupture()).isEmpty();
        assertThat(Wood.of(Density.ofKgPerM3(700)).rupture()).isEmpty();
        Working any = new Working("a", "b", "c", "d");
        assertThatThrownBy(() -> new Rupture(0, any)).isInstanceOf(IllegalArgumentException.class);
    }
}
