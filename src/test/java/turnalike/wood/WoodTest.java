package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.wood.WoodsTest.species;

import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Density;

class WoodTest {
    private static double kgPerM3(String name, double moisturePct) {
        return Wood.of(species(name), Moisture.ofPct(moisturePct)).density().kgPerM3();
    }

    /** Wood Handbook Table 4-6, VERIFIED (S3 tests). */
    @Test
    void density_is_the_tables_for_a_gravity_and_a_moisture() {
        assertThat(DensityRoute.density(0.60, Moisture.ofPct(12)).kgPerM3()).isEqualTo(672, within(0.5));
        assertThat(DensityRoute.density(0.40, Moisture.ofPct(100)).kgPerM3()).isEqualTo(800, within(0.5));
    }

    /**
     * The Handbook's text gives 267 % at 0.30 and 44 % at 0.90 (VERIFIED, S3), but those two figures belong to a wood substance of 1.50;
     * its own equation with 1.54 gives 268 and 46. We follow the equation; the distance to the text is kept in view here.
     */
    @Test
    void maximum_moisture_follows_the_equation_and_lies_near_the_handbooks_text() {
        double light = new SpecificGravity(0.30, OptionalDouble.empty()).maximumMoisturePct();
        double heavy = new SpecificGravity(0.90, OptionalDouble.empty()).maximumMoisturePct();
        assertThat(light).isEqualTo(100 * (1 / 0.30 - 1 / 1.54), within(1e-9)).isEqualTo(267, within(2.5));
        assertThat(heavy).isEqualTo(100 * (1 / 0.90 - 1 / 1.54), within(1e-9)).isEqualTo(44, within(2.5));
        assertThat(100 * (1 / 0.30 - 1 / 1.50)).isEqualTo(267, within(0.5));
        assertThat(100 * (1 / 0.90 - 1 / 1.50)).isEqualTo(44, within(0.5));
    }

    /**
     * White ash, basic 0.55, at 12 %: 0.60 printed (Table 5-3), 0.5977 by its shrinkage and 0.6027 by the estimate (COMPUTED in our
     * notes), about 0.605 read off Figure 4-6 (S3, VERIFIED), density about 678 (FROM MEMORY).
     */
    @Test
    void white_ash_at_twelve_agrees_with_the_worked_example_by_every_route() {
        Species ash = species("White ash");
        assertThat(DensityRoute.FROM_TWELVE.gravity(ash, Moisture.TWELVE)).hasValue(0.60);
        assertThat(DensityRoute.BY_SHRINKAGE.gravity(ash, Moisture.TWELVE).orElseThrow())
                .isEqualTo(0.5977, within(0.00005));
        assertThat(DensityRoute.BY_ESTIMATE.gravity(ash, Moisture.TWELVE).orElseThrow())
                .isEqualTo(0.6027, within(0.00005));
        for (DensityRoute route : DensityRoute.values()) {
            double gravity = route.gravity(ash, Moisture.TWELVE).orElseThrow();
            assertThat(gravity).isEqualTo(0.605, within(0.605 * 0.013));
            assertThat(DensityRoute.density(gravity, Moisture.TWELVE).kgPerM3()).isEqualTo(678, within(678 * 0.013));
        }
        assertThat(kgPerM3("White ash", 12)).isEqualTo(672, within(1e-9));
    }

    /** By another of the Handbook's formulas, from the ovendry density: GTR-282 equation 4-15 (VERIFIED, S3). */
    @Test
    void density_agrees_with_the_formula_that_starts_from_ovendry_wood() {
        Seeds.each(500, random -> {
            Species species = Woods.shipped().list().get(random.nextInt(54));
            double x = random.nextDouble() * 60;
            double whole = species.shrinkage()
                    .volumetricPct()
                    .orElse(26.5 * species.gravity().basic());
            double ovendry = kgPerM3(species.name(), 0);
            double soFar = whole * Math.max(0, 1 - x / 30);
            double expected = ovendry * (1 + x / 100) * (100 - whole) / (100 - soFar);
            assertThat(kgPerM3(species.name(), x)).isEqualTo(expected, within(1e-9 * expected));
        });
    }

    /** The estimate in one formula: GTR-282 equation 4-13 (VERIFIED, S3); apple has no printed shrinkage. */
    @Test
    void a_wood_without_shrinkage_takes_the_estimate() {
        double basic = 0.61;
        double gravity = basic / (1 - 0.265 * basic * (1 - 8 / 30.0));
        assertThat(kgPerM3("Apple", 8)).isEqualTo(1000 * gravity * 1.08, within(1e-9));
        assertThat(Wood.of(species("Apple"), Moisture.ofPct(8)).working().how()).contains("estimated");
    }

    @Test
    void a_wood_without_a_gravity_at_twelve_goes_by_its_shrinkage_there_too() {
        double gravity = 0.55 / (1 - 14.0 * (1 - 12 / 30.0) / 100);
        assertThat(kgPerM3("Sapele", 12)).isEqualTo(1000 * gravity * 1.12, within(1e-9));
    }

    @Test
    void above_thirty_percent_only_water_is_added() {
        assertThat(kgPerM3("Black cherry", 30)).isEqualTo(470 * 1.30, within(1e-9));
        assertThat(kgPerM3("Black cherry", 100)).isEqualTo(940, within(1e-9));
    }

    @Test
    void density_is_continuous_and_rising_but_for_the_stated_step_at_twelve() {
        for (Species species : Woods.shipped().list()) {
            double before = kgPerM3(species.name(), 0);
            for (int step = 1; step <= 1500; step++) {
                double pct = step / 20.0;
                if (pct == 12) {
                    continue; // the step
                }
                double here = kgPerM3(species.name(), pct);
                // At most 10 kg/m3 per point of moisture for the heaviest wood; two steps where 12 % was left out.
                assertThat(here - before).as("%s at %s", species.name(), pct).isBetween(0.0, 1.2);
                before = here;
            }
        }
    }

    @Test
    void the_step_at_twelve_is_small_and_only_where_that_gravity_is_printed() {
        for (Species species : Woods.shipped().list()) {
            double at = kgPerM3(species.name(), 12);
            double beside = kgPerM3(species.name(), 12 + 1e-9);
            if (species.gravity().atTwelve().isPresent()) {
                assertThat(at).isEqualTo(1120 * species.gravity().atTwelve().getAsDouble(), within(1e-9));
                assertThat(beside / at).as(species.name()).isBetween(0.93, 1.07);
            } else {
                assertThat(beside).isEqualTo(at, within(1e-5));
            }
        }
    }

    @Test
    void the_working_names_route_sources_spread_and_how_far_other_routes_lie() {
        Wood ash = Wood.of(species("White ash"), Moisture.ofPct(8));
        // By hand: Sx = 13.3 (1 - 8/30) = 9.753; 0.55 / 0.90247 = 0.6094; 609.4 x 1.08 = 658.2.
        assertThat(ash.working().how())
                .contains("printed volumetric shrinkage")
                .contains("9.753")
                .contains("0.6094")
                .contains("658.2 kg/m3");
        // By hand: 0.60 x 0.9202 / 0.90247 x 1080 = 660.7, 0.4 % more; 0.55 / (1 - 0.14575 x 0.7333) x 1080 = 665.1,
        // 1.0 % more.
        assertThat(ash.working().sureness())
                .contains("660.7 kg/m3 (+0.4 %)")
                .contains("665.1 kg/m3 (+1.0 %)")
                .contains("about 10 %")
                .contains("CONFLICT");
        assertThat(ash.working().source()).contains("4-11").contains("4-14").contains("S1+S2+S8+S3");
        assertThat(Wood.of(species("White ash"), Moisture.TWELVE).working().how())
                .contains("0.60 as printed at 12 %");
    }

    @Test
    void a_given_density_is_taken_as_it_is() {
        Wood wood = Wood.of(Density.ofKgPerM3(705.5));
        assertThat(wood.density()).isEqualTo(Density.ofKgPerM3(705.5));
        assertThat(wood.working().how()).contains("705.5 kg/m3");
        assertThat(wood.stiffness()).isEmpty();
        assertThat(wood.warnings()).isEmpty();
    }

    @Test
    void what_no_wood_can_be_is_warned_of() {
        assertThat(Wood.of(Density.ofKgPerM3(0.7)).warnings()).hasSize(1);
        assertThat(Wood.of(Density.ofKgPerM3(7850)).warnings()).hasSize(1);
        assertThat(Wood.of(species("Purpleheart"), Moisture.ofPct(84)).warnings())
                .isEmpty();
        assertThat(Wood.of(species("Purpleheart"), Moisture.ofPct(90)).warnings())
                .singleElement()
                .satisfies(problem -> assertThat(problem.line()).contains("about 84 %"));
    }

    @Test
    void every_kind_of_wood_can_be_told_apart() {
        Wood.Cases<String> cases = new Wood.Cases<>() {
            @Override
            public String species(Wood.OfSpecies wood) {
                return wood.species().name();
            }

            @Override
            public String density(Wood.OfDensity wood) {
                return "density";
            }
        };
        assertThat(Wood.of(species("Teak"), Moisture.TWELVE).match(cases)).isEqualTo("Teak");
        assertThat(Wood.of(Density.ofKgPerM3(600)).match(cases)).isEqualTo("density");
    }

    @Test
    void moisture_out_of_range_is_refused() {
        assertThat(Moisture.read(8).get()).isEqualTo(Moisture.ofPct(8));
        for (double bad : new double[] {-0.1, 300.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(Moisture.read(bad).isValue()).isFalse();
            assertThatThrownBy(() -> Moisture.ofPct(bad)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(Moisture.ofPct(-0.0)).isEqualTo(Moisture.ofPct(0));
    }

    @Test
    void workings_keep_the_decimal_point_in_every_locale() {
        Locale before = Locale.getDefault();
        try {
            String english = inLocale(Locale.US);
            assertThat(inLocale(Locale.GERMANY)).isEqualTo(english).contains("658.2");
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String inLocale(Locale locale) {
        Locale.setDefault(locale);
        Wood ash = Wood.of(species("White ash"), Moisture.ofPct(8));
        return ash.working()
                + ash.stiffness().map(Stiffness::working).toString()
                + new Equilibrium(Air.ofCelsius(21.1, 65)).working();
    }
}
