package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.wood.WoodsTest.species;

import org.junit.jupiter.api.Test;

class StiffnessTest {
    /** Printed 10300 MPa (Table 5-3); ten percent more is shear-free (footnote c; VERIFIED, S1). */
    @Test
    void stiffness_is_the_printed_one_and_ten_percent() {
        Stiffness cherry =
                Wood.of(species("Black cherry"), Moisture.TWELVE).stiffness().orElseThrow();
        assertThat(cherry.moeMpa()).isEqualTo(11330, within(1e-6));
        assertThat(cherry.working().how())
                .contains("10300 MPa")
                .contains("plus 10 %")
                .contains("11330 MPa");
        assertThat(cherry.working().sureness()).doesNotContain("unchanged");
    }

    @Test
    void away_from_twelve_percent_the_working_says_the_value_is_unchanged() {
        Stiffness cherry = Wood.of(species("Black cherry"), Moisture.ofPct(7.5))
                .stiffness()
                .orElseThrow();
        assertThat(cherry.moeMpa()).isEqualTo(11330, within(1e-6));
        assertThat(cherry.working().sureness()).contains("at 7.5 %").contains("unchanged");
    }

    @Test
    void a_wood_without_strength_has_none() {
        assertThat(Wood.of(species("Osage-orange"), Moisture.TWELVE).stiffness())
                .isEmpty();
        assertThat(Wood.of(species("Apple"), Moisture.TWELVE).stiffness()).isEmpty();
    }

    @Test
    void a_given_stiffness_is_taken_as_it_is() {
        assertThat(Stiffness.given(9000).moeMpa()).isEqualTo(9000);
        assertThatThrownBy(() -> Stiffness.given(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** White ash modulus of rupture at 8 %: 119500 kPa (Wood Handbook's example; VERIFIED, S3), 119473 COMPUTED in our notes. */
    @Test
    void white_ash_rupture_at_eight_percent_is_the_worked_example() {
        Species ash = species("White ash");
        StrengthAtMoisture rupture = new StrengthAtMoisture(103000, 66000, ash.intersection());
        assertThat(rupture.at(Moisture.ofPct(8)))
                .isEqualTo(119500, within(50.0))
                .isEqualTo(119473, within(0.5));
        assertThat(rupture.working(Moisture.ofPct(8)).how()).contains("1.195e+05");
    }

    @Test
    void strength_is_the_printed_one_at_twelve_and_the_green_one_from_the_intersection_up() {
        StrengthAtMoisture any = new StrengthAtMoisture(100, 60, Moisture.ofPct(25));
        assertThat(any.at(Moisture.TWELVE)).isEqualTo(100);
        assertThat(any.at(Moisture.ofPct(25))).isEqualTo(60, within(1e-12));
        assertThat(any.at(Moisture.ofPct(80))).isEqualTo(60, within(1e-12));
        assertThatThrownBy(() -> new StrengthAtMoisture(100, 60, Moisture.TWELVE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StrengthAtMoisture(100, 0, Moisture.ofPct(25)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Table 5-13, VERIFIED (S3). */
    @Test
    void intersection_is_the_tables() {
        assertThat(species("White ash").intersection().pct()).isEqualTo(24);
        assertThat(species("Yellow birch").intersection().pct()).isEqualTo(27);
        assertThat(species("Sitka spruce").intersection().pct()).isEqualTo(27);
        assertThat(species("Longleaf pine (southern pine)").intersection().pct())
                .isEqualTo(21);
        assertThat(species("Black cherry").intersection().pct()).isEqualTo(25);
        assertThat(Woods.shipped().list().stream()
                        .filter(species -> species.intersection().pct() != 25))
                .hasSize(7);
    }
}
