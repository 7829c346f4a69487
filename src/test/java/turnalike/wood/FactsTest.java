package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.wood.WoodsTest.species;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import turnalike.units.Density;

/** What a fact about a wood may be, and what is made of facts that are missing. */
class FactsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final double[] NEITHER_ABOVE_NOR_A_NUMBER = {0, -1, Double.NaN};

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static void refused(String what, ThrowingCallable making) {
        assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(what);
    }

    @Test
    void a_shrinkage_lies_between_nothing_and_the_whole() {
        for (double bad : new double[] {0, -1, 100, 101, Double.NaN}) {
            refused("shrinkage", () -> new Shrinkage(of(bad), NONE, NONE));
            refused("shrinkage", () -> new Shrinkage(NONE, of(bad), NONE));
            refused("shrinkage", () -> new Shrinkage(NONE, NONE, of(bad)));
        }
        assertThat(new Shrinkage(of(0.1), of(99), NONE).pct(Grain.RADIAL)).hasValue(0.1);
        assertThat(new Shrinkage(of(0.1), of(99), NONE).pct(Grain.TANGENTIAL)).hasValue(99);
    }

    @Test
    void a_coefficient_is_below_a_hundredth() {
        for (double bad : new double[] {0, -0.001, 0.01, Double.NaN}) {
            refused("coefficient", () -> new Coefficients(of(bad), NONE));
            refused("coefficient", () -> new Coefficients(NONE, of(bad)));
        }
        assertThat(new Coefficients(of(0.0099), NONE).in(Grain.RADIAL)).hasValue(0.0099);
        assertThat(new Coefficients(of(0.0099), NONE).in(Grain.TANGENTIAL)).isEmpty();
    }

    @Test
    void a_strength_is_above_nothing_and_finite() {
        for (double bad : NEITHER_ABOVE_NOR_A_NUMBER) {
            refused("elasticity", () -> new Strength(of(bad), NONE, NONE));
            refused("rupture", () -> new Strength(NONE, of(bad), NONE));
            refused("hardness", () -> new Strength(NONE, NONE, of(bad)));
            refused("strengths", () -> new StrengthAtMoisture(bad, 60, Moisture.ofPct(25)));
            refused("strengths", () -> new StrengthAtMoisture(100, bad, Moisture.ofPct(25)));
            refused("stiffness", () -> Stiffness.given(bad));
        }
        double endless = Double.POSITIVE_INFINITY;
        refused("elasticity", () -> new Strength(of(endless), NONE, NONE));
        refused("strengths", () -> new StrengthAtMoisture(endless, 60, Moisture.ofPct(25)));
        refused("strengths", () -> new StrengthAtMoisture(100, endless, Moisture.ofPct(25)));
        refused("stiffness", () -> Stiffness.given(endless));
        assertThat(new Strength(of(1), of(2), of(3)).morMpa()).hasValue(2);
    }

    @Test
    void a_specific_gravity_is_below_that_of_wood_substance() {
        for (double bad : new double[] {0, -0.5, 1.54, 2, Double.NaN}) {
            refused("specific gravity", () -> new SpecificGravity(bad, NONE));
            refused("specific gravity", () -> new SpecificGravity(0.5, of(bad)));
        }
        assertThat(new SpecificGravity(1.53, of(0.01)).atTwelve()).hasValue(0.01);
    }

    @Test
    void moisture_and_air_at_the_ends_of_their_range_are_taken() {
        assertThat(Moisture.read(0).get().pct()).isZero();
        assertThat(Moisture.read(300).get()).isEqualTo(Moisture.ofPct(300));
        assertThat(Moisture.ofPct(8.256).text()).isEqualTo("8.26 %");
        assertThat(Moisture.ofPct(100).text()).isEqualTo("100 %");
        for (double celsius : new double[] {-20, 100}) {
            for (double humidity : new double[] {0, 100}) {
                Air air = Air.read(celsius, humidity).get();
                assertThat(air.celsius()).isEqualTo(celsius);
                assertThat(air.relativeHumidity()).isEqualTo(humidity / 100);
            }
        }
        for (double bad : new double[] {-20.1, 100.1, Double.NaN}) {
            assertThat(Air.read(bad, 50).isValue()).isFalse();
            refused("degrees", () -> Air.ofCelsius(bad, 50));
        }
        for (double bad : new double[] {-0.1, 100.1, Double.NaN}) {
            assertThat(Air.read(20, bad).isValue()).isFalse();
            refused("humidity", () -> Air.ofCelsius(20, bad));
        }
    }

    private static Species invented(SpecificGravity gravity, Shrinkage shrinkage) {
        return new Species(
                "Invented",
                "Arbor ficta",
                gravity,
                new Strength(NONE, NONE, NONE),
                shrinkage,
                new Coefficients(NONE, NONE),
                new Provenance(
                        Map.of(FactGroup.GRAVITY, List.of("S1", "S2"), FactGroup.SHRINKAGE, List.of("S5")),
                        "VERIFIED"));
    }

    @Test
    void a_wood_says_what_it_is() {
        assertThat(Wood.of(species("hard maple"), Moisture.ofPct(7.5)).text())
                .isEqualTo("Sugar maple (hard maple) at 7.5 %");
        assertThat(Wood.of(Density.ofKgPerM3(650)).text()).isEqualTo("wood of 650 kg/m³");
    }

    @Test
    void a_species_has_both_names() {
        Species teak = species("Teak");
        for (String blank : List.of("", " ")) {
            refused(
                    "both names",
                    () -> new Species(
                            blank,
                            teak.latin(),
                            teak.gravity(),
                            teak.strength(),
                            teak.shrinkage(),
                            teak.coefficients(),
                            teak.provenance()));
            refused(
                    "both names",
                    () -> new Species(
                            teak.name(),
                            blank,
                            teak.gravity(),
                            teak.strength(),
                            teak.shrinkage(),
                            teak.coefficients(),
                            teak.provenance()));
        }
    }

    /** By hand: basic 0.50, 0.55 at 12 %, 10 %: 6 % have happened at 12 %, 8 % at 6 %; 0.55 x 0.94 / 0.92 = 0.56196, x 1060 = 595.7. */
    @Test
    void the_working_of_a_density_names_its_route_and_the_facts_it_stands_on() {
        Species both = invented(new SpecificGravity(0.50, of(0.55)), new Shrinkage(NONE, NONE, of(10)));
        Wood dry = Wood.of(both, Moisture.ofPct(6));
        assertThat(dry.working().how())
                .startsWith(
                        "Invented at 6 % by the specific gravities printed for green wood and at 12 %: G = G12 (1 - S12/100)")
                .contains("= 0.55 (1 - 6.000/100) / (1 - 8.000/100) = 0.5620")
                .contains("the printed volumetric shrinkage S = 10.00 %")
                .endsWith("= 595.7 kg/m3");
        assertThat(dry.working().source())
                .contains("specific gravity S1+S2, shrinkage S5")
                .contains("4-9", "4-11", "4-14")
                .doesNotContain("4-12,");
        // 0.5 / 0.92 x 1060 = 576.1; the estimate of 26.5 x 0.5 = 13.25 %: 0.5 / (1 - 0.106) x 1060 = 592.8.
        assertThat(dry.working().sureness())
                .contains("within 19.6 kg/m3 either way")
                .contains(
                        "by the basic specific gravity and the printed volumetric shrinkage it would be 576.1 kg/m3 (-3.3 %)")
                .contains("a volumetric shrinkage estimated from it it would be 592.8 kg/m3 (-0.5 %)")
                .doesNotContain("About this wood's row");
        Wood atTwelve = Wood.of(both, Moisture.TWELVE);
        assertThat(atTwelve.working().how()).contains("at 12 %: G = 0.55 as printed at 12 %");
        for (double pct : new double[] {12, 20, 30, 60}) {
            assertThat(Wood.of(both, Moisture.ofPct(pct)).working().source())
                    .contains("specific gravity S1+S2")
                    .doesNotContain("shrinkage S5");
        }
    }

    /** 26.5 x 0.5 = 13.25 %, of which 0.8 have happened at 6 %: 0.5 / 0.894; carried from 12 %: 0.55 x 0.9205 / 0.894. */
    @Test
    void without_a_printed_shrinkage_every_route_takes_the_estimate_and_says_so() {
        Species bare = invented(new SpecificGravity(0.50, of(0.55)), new Shrinkage(NONE, NONE, NONE));
        Wood dry = Wood.of(bare, Moisture.ofPct(6));
        assertThat(dry.density().kgPerM3()).isCloseTo(1060 * 0.55 * (1 - 0.1325 * 0.6) / 0.894, within(1e-9));
        assertThat(dry.working().how()).contains("the estimated volumetric shrinkage S = 13.25 %");
        assertThat(dry.working().source()).contains("4-12").doesNotContain("shrinkage S5");
        assertThat(DensityRoute.BY_ESTIMATE.gravity(bare, Moisture.ofPct(6)).orElseThrow())
                .isCloseTo(0.5 / 0.894, within(1e-12));
        assertThat(DensityRoute.BY_SHRINKAGE.gravity(bare, Moisture.ofPct(6))).isEmpty();
        Species barest = invented(new SpecificGravity(0.50, NONE), new Shrinkage(NONE, NONE, NONE));
        assertThat(DensityRoute.THROUGH_BOTH.gravity(barest, Moisture.TWELVE)).isEmpty();
        Wood estimated = Wood.of(barest, Moisture.ofPct(6));
        assertThat(estimated.density().kgPerM3()).isCloseTo(1060 * 0.5 / 0.894, within(1e-9));
        assertThat(estimated.working().how())
                .contains("by the basic specific gravity and a volumetric shrinkage estimated from it")
                .contains("(1 - Sx/100)");
    }

    @Test
    void sources_are_read_by_group() {
        Provenance read = Provenance.parse("sg:S1+S2|strength:S3|shrink:S4|coef:S5+S6", "VERIFIED");
        assertThat(read.keys())
                .isEqualTo(Map.of(
                        FactGroup.GRAVITY, List.of("S1", "S2"),
                        FactGroup.STRENGTH, List.of("S3"),
                        FactGroup.SHRINKAGE, List.of("S4"),
                        FactGroup.COEFFICIENTS, List.of("S5", "S6")));
        assertThat(read.note()).isEmpty();
        assertThat(Provenance.parse("sg:S1", "VERIFIED; a dash").note()).contains("VERIFIED; a dash");
        assertThat(read.cite(FactGroup.COEFFICIENTS, FactGroup.STRENGTH))
                .isEqualTo("coefficients of dimensional change S5+S6, strength S3");
        assertThat(Provenance.parse("sg:S1", "VERIFIED").cite(FactGroup.SHRINKAGE))
                .isEqualTo("no facts");
        for (String bad : List.of("", "S1", "density:S1", ":S1", "sg:S1|S2")) {
            refused("source must be", () -> Provenance.parse(bad, "VERIFIED"));
        }
    }

    /** Most is 100 (1.54 − G) / (1.54 G): at G = 0.50 135.06 %. */
    @Test
    void more_water_than_a_wood_can_hold_is_warned_of_and_as_much_is_not() {
        Species wet = invented(new SpecificGravity(0.50, NONE), new Shrinkage(NONE, NONE, of(10)));
        assertThat(wet.maximumMoisture().pct()).isCloseTo(100 * 1.04 / 0.77, within(1e-9));
        assertThat(Wood.of(wet, wet.maximumMoisture()).warnings()).isEmpty();
        assertThat(Wood.of(wet, Moisture.ofPct(135.1)).warnings())
                .singleElement()
                .satisfies(
                        problem -> assertThat(problem.line())
                                .isEqualTo(
                                        "wood: moisture: 135.1 % is more water than Invented can hold, about 135 %; check the moisture"));
    }

    @Test
    void a_density_no_wood_has_is_warned_of_from_the_lightest_to_solid_wood_substance() {
        for (double wood : new double[] {80, 600, 1540}) {
            assertThat(Wood.of(Density.ofKgPerM3(wood)).warnings()).isEmpty();
        }
        for (double none : new double[] {79.9, 1540.1}) {
            assertThat(Wood.of(Density.ofKgPerM3(none)).warnings())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.line())
                            .startsWith("wood: density: %.1f kg/m3 is no wood's".formatted(none)));
        }
    }

    @Test
    void an_own_stiffness_wins_over_the_printed_one() {
        Stiffness own = Stiffness.given(9000);
        assertThat(Wood.of(species("White ash"), Moisture.TWELVE).with(own).stiffness())
                .contains(own);
        assertThat(Wood.of(Density.ofKgPerM3(600)).with(own).stiffness()).contains(own);
        assertThat(Wood.of(Density.ofKgPerM3(600)).with(own).density()).isEqualTo(Density.ofKgPerM3(600));
    }

    /** Read anew, not the table that was read when the program started. */
    @Test
    void the_shipped_table_is_read_the_same_again() {
        Woods again = WoodTable.load();
        assertThat(again.list()).isEqualTo(Woods.shipped().list()).hasSize(54);
        assertThat(again.listSources()).isEqualTo(Woods.shipped().listSources()).isNotEmpty();
        assertThat(again.find("Teak")).isPresent();
        assertThat(new Woods(List.of(species("Teak"), species("Apple")), List.of()).list())
                .containsExactly(species("Teak"), species("Apple"));
    }

    @Test
    void a_name_is_near_when_few_letters_differ_and_no_further() {
        List<String> names = List.of("Teak", "Mahogany", "Black walnut");
        assertThat(NearNames.of("teek", names)).containsExactly("Teak");
        assertThat(NearNames.of("t", names)).isEmpty();
        assertThat(NearNames.of("te", names)).isEmpty();
        // Three of eight letters miss; a bracket or dash before the word is no word.
        assertThat(NearNames.of("mahagini", names)).containsExactly("Mahogany");
        assertThat(NearNames.of("-mahagini", names)).containsExactly("Mahogany");
        assertThat(NearNames.of("zzzzz walnut", names)).containsExactly("Black walnut");
        assertThat(NearNames.of("oak", List.of("Oak 1", "Oak 2", "Oak 3", "Oak 4", "Oak 5", "Oak 6")))
                .containsExactly("Oak 1", "Oak 2", "Oak 3", "Oak 4", "Oak 5");
    }
}
