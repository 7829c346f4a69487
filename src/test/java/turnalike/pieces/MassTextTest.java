package turnalike.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.Seeds;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.WeighingScale;

/** An ounce is 28.349523125 g (see {@link Mass}); the figures here follow from that by hand. */
class MassTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "182.4 | 182.4",
                "182,4 | 182.4",
                "  +  182.4 g | 182.4",
                "00182.4g | 182.4",
                ".5 kg | 500",
                "182 Grams | 182",
                "6 1/2 oz | 184.2719003125",
                "6½oz | 184.2719003125",
                "6-1/2 oz | 184.2719003125",
                "13/2 oz | 184.2719003125",
                "1 lb 3 oz | 538.640939375",
                "1 lb | 453.59237",
            })
    void masses_are_read_as_scales_and_people_write_them(String text, double grams) {
        assertThat(MassText.parse(text, MassUnit.GRAM).get().grams()).isCloseTo(grams, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-3",
                "−3",
                "0",
                "0 g",
                "1/0",
                "1 3/2 oz",
                "3 stone",
                "NaN",
                "inf",
                "1e3",
                "1.2.3",
                "182.4.",
                "3 oz 1 lb",
                "3 g 2 g",
                "1 2",
                "100001",
                "200 kg",
                "1 lb 3 oz 2 g",
                "g",
                "1,000,000",
                "1 lb 1/0 oz"
            })
    void what_is_no_mass_is_refused(String text) {
        assertThat(MassText.parse(text, MassUnit.GRAM).isValue()).isFalse();
    }

    @Test
    void what_was_weighed_in_the_column_s_unit_is_written_as_it_was_typed_and_read_back_unchanged() {
        WeighingScale ounces = scale(0.05, MassUnit.OUNCE);
        assertThat(MassText.format(Mass.ofOunces(7.75), ounces)).isEqualTo("7.75");
        assertThat(MassText.format(Mass.ofOunces(8), ounces)).isEqualTo("8");
        assertThat(MassText.format(Mass.ofGrams(243.12), scale(0.1, MassUnit.GRAM)))
                .isEqualTo("243.12");
        for (int hundredths = 1; hundredths < 5000; hundredths++) {
            Mass mass = Mass.ofOunces(hundredths / 100.0);
            assertThat(MassText.parse(MassText.format(mass, ounces), MassUnit.OUNCE))
                    .isEqualTo(Parsed.of(mass));
        }
    }

    /** 219.2 g are 7.732052… oz: no scale shows that. */
    @Test
    void what_was_weighed_in_the_other_unit_is_written_as_the_scale_would_show_it() {
        assertThat(MassText.format(Mass.ofGrams(219.2), scale(0.1, MassUnit.OUNCE)))
                .isEqualTo("7.7");
        assertThat(MassText.format(Mass.ofGrams(219.2), scale(0.05, MassUnit.OUNCE)))
                .isEqualTo("7.73");
        assertThat(MassText.format(Mass.ofOunces(7.7), scale(0.1, MassUnit.GRAM)))
                .isEqualTo("218.3");
        // Nothing that was weighed is written as nothing, which would not be read back.
        assertThat(MassText.format(Mass.ofGrams(0.54), scale(0.1, MassUnit.OUNCE)))
                .isEqualTo("0.019");
    }

    private static WeighingScale scale(double step, MassUnit unit) {
        return new WeighingScale(unit.mass(step), unit);
    }

    @Test
    void a_bare_number_is_in_the_column_s_unit() {
        assertThat(MassText.parse("2", MassUnit.OUNCE)).isEqualTo(Parsed.of(Mass.ofOunces(2)));
    }

    @Test
    void format_is_read_back_unchanged_in_either_locale() {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : new Locale[] {Locale.ROOT, Locale.GERMANY}) {
                Locale.setDefault(locale);
                Seeds.each(200, random -> {
                    Mass mass = Mass.ofGrams(Math.pow(10, random.nextDouble() * 8 - 3));
                    assertThat(MassText.parse(MassText.format(mass), MassUnit.GRAM))
                            .isEqualTo(Parsed.of(mass));
                });
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
