package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.wood.WoodsTest.species;

import java.util.List;
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
        assertThat(DensityRoute.THROUGH_BOTH.gravity(ash, Moisture.TWELVE)).hasValue(0.60);
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
            // From 12 % to 30 % the two printed gravities say where a wood that has both lies.
            double x = random.nextDouble() * (species.gravity().atTwelve().isPresent() ? 12 : 60);
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
        assertThat(DensityRoute.BY_ESTIMATE
                        .gravity(species("Apple"), Moisture.ofPct(8))
                        .orElseThrow())
                .isEqualTo(gravity, within(1e-12));
        double twelve = species("Apple").gravity().atTwelve().orElseThrow();
        double carried = twelve * (1 - 0.265 * basic * 0.6) / (1 - 0.265 * basic * (1 - 8 / 30.0));
        assertThat(kgPerM3("Apple", 8)).isEqualTo(1000 * carried * 1.08, within(1e-9));
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
    void density_is_continuous_and_rising_at_every_moisture() {
        for (Species species : Woods.shipped().list()) {
            double before = kgPerM3(species.name(), 0);
            for (int step = 1; step <= 6000; step++) {
                double pct = step / 100.0;
                double here = kgPerM3(species.name(), pct);
                // At most 10 kg/m3 per point of moisture for the heaviest wood.
                assertThat(here - before).as("%s at %s", species.name(), pct).isBetween(0.0, 0.11);
                before = here;
            }
            for (double printed : new double[] {12, 30}) {
                double at = kgPerM3(species.name(), printed);
                assertThat(kgPerM3(species.name(), printed - 1e-9))
                        .as(species.name())
                        .isEqualTo(at, within(1e-6));
                assertThat(kgPerM3(species.name(), printed + 1e-9))
                        .as(species.name())
                        .isEqualTo(at, within(1e-6));
            }
        }
    }

    @Test
    void what_is_printed_comes_through_untouched() {
        for (Species species : Woods.shipped().list()) {
            species.gravity().atTwelve().ifPresent(printed -> assertThat(kgPerM3(species.name(), 12))
                    .as(species.name())
                    .isEqualTo(1120 * printed, within(1e-9)));
            for (double wet : new double[] {30, 45, 80}) {
                assertThat(kgPerM3(species.name(), wet))
                        .as("%s at %s", species.name(), wet)
                        .isEqualTo(1000 * species.gravity().basic() * (1 + wet / 100), within(1e-9));
            }
        }
    }

    /** By hand, white ash: half way from 12 % to 30 % the volume is half way from 0.55/0.60 of the green one to all of it. */
    @Test
    void between_the_printed_moistures_the_volume_lies_between_the_printed_volumes() {
        double gravity = 0.55 / (1 - (1 - 0.55 / 0.60) / 2);
        assertThat(kgPerM3("White ash", 21)).isEqualTo(1210 * gravity, within(1e-9));
        assertThat(Wood.of(species("White ash"), Moisture.ofPct(21)).working().how())
                .contains("(30 - x)/18", "0.55", "0.60");
        assertThat(Wood.of(species("White ash"), Moisture.ofPct(40)).working().how())
                .contains("G = 0.55 as printed for green wood");
    }

    /** Either by the rounding, at 12 %: 0.005 x 1120 = 5.6; or by the other route: basswood, 0.37 against 0.32 / (1 - 0.158 x 0.6). */
    @Test
    void how_sure_a_density_is_goes_by_the_rounding_and_by_the_other_route() {
        assertThat(uncertainty("White ash", 12)).isEqualTo(5.6, within(1e-9));
        assertThat(uncertainty("American basswood", 12))
                .isEqualTo(1120 * (0.37 - 0.32 / (1 - 0.158 * 0.6)), within(1e-9));
        assertThat(uncertainty("Apple", 0)).as("a shrinkage that is estimated").isGreaterThan(30);
        assertThat(Wood.of(Density.ofKgPerM3(600)).densityUncertainty()).isEmpty();
        for (Species species : Woods.shipped().list()) {
            for (double pct = 0; pct <= 60; pct += 0.5) {
                double half = uncertainty(species.name(), pct);
                assertThat(half).isGreaterThanOrEqualTo(0.005 * 1000 * (1 + pct / 100) - 1e-9);
                double by = DensityRoute.BY_SHRINKAGE
                        .gravity(species, Moisture.ofPct(pct))
                        .orElse(kgPerM3(species.name(), pct) / (1000 + 10 * pct));
                assertThat(Math.abs(1000 * by * (1 + pct / 100) - kgPerM3(species.name(), pct)))
                        .isLessThanOrEqualTo(half + 1e-9);
            }
        }
    }

    private static double uncertainty(String name, double pct) {
        return Wood.of(species(name), Moisture.ofPct(pct))
                .densityUncertainty()
                .orElseThrow()
                .kgPerM3();
    }

    @Test
    void nine_woods_in_ten_shrink_by_the_estimate_within_its_spread() {
        List<Species> printed = Woods.shipped().list().stream()
                .filter(DensityRoute::isShrinkagePrinted)
                .toList();
        long within = printed.stream()
                .filter(each -> Math.abs(each.shrinkage().volumetricPct().orElseThrow()
                                        / each.gravity().estimatedShrinkagePct()
                                - 1)
                        <= DensitySureness.ESTIMATE_SPREAD)
                .count();
        assertThat((double) within / printed.size()).isBetween(0.9, 0.95);
    }

    @Test
    void the_working_names_route_sources_spread_and_how_far_other_routes_lie() {
        Wood ash = Wood.of(species("White ash"), Moisture.ofPct(8));
        // By hand: S12 = 13.3 x 0.6 = 7.98, Sx = 13.3 (1 - 8/30) = 9.753; 0.60 x 0.9202 / 0.90247 = 0.6118; x 1080 =
        // 660.7.
        assertThat(ash.working().how())
                .contains("printed for green wood and at 12 %")
                .contains("printed volumetric shrinkage")
                .contains("7.980")
                .contains("9.753")
                .contains("0.6118")
                .contains("660.7 kg/m3");
        // By hand: 0.55 / 0.90247 x 1080 = 658.2, 0.4 % less; 0.55 / (1 - 0.14575 x 0.7333) x 1080 = 665.1, 0.7 %
        // more. By the rounding, 0.605 in place of 0.60 and 13.35 in place of 13.3: 0.005 x 1.0197 x 1080 = 5.5 and
        // 0.1 more.
        assertThat(ash.working().sureness())
                .contains("within 5.6 kg/m3 either way")
                .contains("658.2 kg/m3 (-0.4 %)")
                .contains("665.1 kg/m3 (+0.7 %)")
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
            assertThat(inLocale(Locale.GERMANY)).isEqualTo(english).contains("660.7");
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
