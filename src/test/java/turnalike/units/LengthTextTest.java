package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.Seeds;

class LengthTextTest {
    private final Locale usual = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "22|INCH|558.8",
                "22|METRIC|22",
                "1.5|INCH|38.1",
                ".5|INCH|12.7",
                "1,5|METRIC|1.5",
                "1/2|INCH|12.7",
                "1/2|METRIC|0.5",
                "1 1/2|INCH|38.1",
                "1-1/2|INCH|38.1",
                "1½|INCH|38.1",
                "½|INCH|12.7",
                "1 ½|INCH|38.1",
                "1⁄2|INCH|12.7",
                "3/4 in|METRIC|19.05",
                "22\"|METRIC|558.8",
                "22 in|METRIC|558.8",
                "22in|METRIC|558.8",
                "1 inch|METRIC|25.4",
                "2 inches|METRIC|50.8",
                "22”|METRIC|558.8",
                "1' 10\"|METRIC|558.8",
                "1'10\"|INCH|558.8",
                "1′ 10½″|METRIC|571.5",
                "1 ft 10 in|METRIC|558.8",
                "1 foot 10 1/2 inches|METRIC|571.5",
                "2 feet|METRIC|609.6",
                "38 mm|INCH|38",
                "38mm|INCH|38",
                "3.8 cm|INCH|38",
                "559,5 mm|INCH|559.5",
                "1.5 m|INCH|1500",
                "20 m|INCH|20000",
                "20000.000000 mm|INCH|20000",
                "000000001 mm|INCH|1",
                "1.123456789012345 mm|INCH|1.123456789012345",
                "65 ft 7 in|METRIC|19989.8",
                "1 ft 0 in|METRIC|304.8",
                "0' 1 1/2\"|METRIC|38.1",
                "0|INCH|0",
                " 7 |INCH|177.8",
                "7\u00a0mm|INCH|7",
                "9/8|INCH|28.575",
                "2/2|INCH|25.4",
                "1 63/64|INCH|50.403125",
            })
    void reads_every_way_turners_write(String text, UnitSystem units, double mm) {
        assertThat(Length.parse(text, units).get().mm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-1",
                "+1",
                "-1/2",
                "1/0",
                "0/0",
                "1 2",
                "1 1/2 1/2",
                "1.5 1/2",
                "1.5/2",
                "1/2/3",
                "1..5",
                "1.5.2",
                "5.",
                "1e3",
                "NaN",
                "Infinity",
                "abc",
                "in",
                "\"",
                "12 kg",
                "3 in 5 mm",
                "10 mm 1 in",
                "22\" mm",
                "1 in 1 ft",
                "1 cm 2 mm",
                "1 ft 2",
                "1' 2' 3\"",
                "1 mm 2 mm",
                "20001 mm",
                "20000.001 mm",
                "65 ft 8 in",
                "1234567890 mm",
                "1.1234567890123456 mm",
                "1 in 2 in",
                "1 ft 2 ft",
                "2 ft 3 mm",
                "1' 2\" 3\"",
                "21 m",
                "99999999999999999999",
                "1 9/8",
                "1-9/8",
                "1 2/2",
                "1-64/64",
                "0 1/1",
                "½½",
                "½1",
                "½/4",
                "1½/2",
                "1,2,3",
                "1 000",
                "²",
                "1²",
                "٣",
                "1--1/2",
                "1 - 1/2",
                "1;5",
                "0x10",
                "1d",
                "1f",
                "(1)",
                "1 1/",
                "/2",
                "1/ /2",
            })
    void refuses_what_is_no_length(String text) {
        for (UnitSystem units : UnitSystem.values()) {
            Parsed<Length> parsed = Length.parse(text, units);
            assertThat(parsed.isValue()).as("'%s' in %s", text, units).isFalse();
            Parsed.Refused<Length> refused = (Parsed.Refused<Length>) parsed;
            assertThat(refused.what()).isNotBlank();
            assertThat(refused.mend()).isNotBlank();
        }
    }

    @Test
    void says_what_is_wrong() {
        Map<String, String> reasons = Map.of(
                "3 in 5 mm", "two units that disagree",
                "1/0", "over zero",
                "12 kg", "unknown unit 'kg'",
                "-3", "no sign",
                "21 m", "more than 20 m",
                "", "no length",
                "1 3/2", "a whole number before a fraction that is not below one",
                "1 2/2", "a whole number before a fraction that is not below one",
                "1 ft 2", "'1 ft 2' is not one length",
                "1..5", "'1..5' is not a length");
        reasons.forEach(
                (text, reason) -> assertThat(((Parsed.Refused<Length>) Length.parse(text, UnitSystem.INCH)).what())
                        .contains(reason));
    }

    @Test
    void inches_print_to_the_nearest_64th_in_lowest_terms() {
        assertThat(Length.ofInches(1.5).format(UnitSystem.INCH)).isEqualTo("1 1/2 in");
        assertThat(Length.ofInches(0.75).format(UnitSystem.INCH)).isEqualTo("3/4 in");
        assertThat(Length.ofInches(2).format(UnitSystem.INCH)).isEqualTo("2 in");
        assertThat(Length.ofMm(10).format(UnitSystem.INCH)).isEqualTo("25/64 in");
        assertThat(Length.ZERO.format(UnitSystem.INCH)).isEqualTo("0 in");
        assertThat(Length.ofInches(0.999).format(UnitSystem.INCH)).isEqualTo("1 in");
        assertThat(Length.ofInches(-0.25).format(UnitSystem.INCH)).isEqualTo("-1/4 in");
    }

    @Test
    void millimetres_print_to_the_nearest_tenth() {
        assertThat(Length.ofMm(38.14).format(UnitSystem.METRIC)).isEqualTo("38.1 mm");
        assertThat(Length.ofMm(38).format(UnitSystem.METRIC)).isEqualTo("38 mm");
        assertThat(Length.ofMm(-0.01).format(UnitSystem.METRIC)).isEqualTo("0 mm");
        assertThat(Length.ofMm(200).format(UnitSystem.METRIC)).isEqualTo("200 mm");
    }

    @Test
    void what_was_rounded_off_is_in_reach() {
        LengthText.Printed printed = LengthText.print(Length.ofMm(10), UnitSystem.INCH);
        assertThat(printed.roundedOff().mm()).isCloseTo(10 - 25.4 * 25 / 64, within(1e-12));
    }

    /** Halves of a printed step: of two tenths the even one; of two 64ths the one farther from zero, either way. */
    @Test
    void what_stands_between_two_printed_figures_is_rounded_the_way_it_says() {
        assertThat(Length.ofMm(38.25).format(UnitSystem.METRIC)).isEqualTo("38.2 mm");
        assertThat(Length.ofMm(38.35).format(UnitSystem.METRIC)).isEqualTo("38.4 mm");
        assertThat(Length.ofInches(1 / 128.0).format(UnitSystem.INCH)).isEqualTo("1/64 in");
        assertThat(Length.ofInches(-1 / 128.0).format(UnitSystem.INCH)).isEqualTo("-1/64 in");
        assertThat(Length.ofInches(0.9 / 128).format(UnitSystem.INCH)).isEqualTo("0 in");
        assertThat(Length.ofInches(-0.9 / 128).format(UnitSystem.INCH)).isEqualTo("0 in");
        assertThat(Length.ofInches(-2.5).format(UnitSystem.INCH)).isEqualTo("-2 1/2 in");
        assertThat(Length.ofInches(-3).format(UnitSystem.INCH)).isEqualTo("-3 in");
        assertThat(LengthText.print(Length.ofInches(-1.01), UnitSystem.INCH)
                        .roundedOff()
                        .inches())
                .isCloseTo(-1.01 + 65 / 64.0, within(1e-12));
        assertThat(LengthText.print(Length.ofMm(38.14), UnitSystem.METRIC)
                        .roundedOff()
                        .mm())
                .isCloseTo(0.04, within(1e-12));
        assertThat(LengthText.printMm(Length.ofMm(1.23456), 3).text()).isEqualTo("1.235 mm");
    }

    /** A millionth of a millimetre off a 64th is still that 64th; more is a decimal. */
    @Test
    void what_must_not_be_said_too_small_is_told_one_up() {
        assertThat(Length.ofMm(0.741).formatFineUp(UnitSystem.METRIC)).isEqualTo("0.75 mm");
        assertThat(Length.ofMm(0.75).formatFineUp(UnitSystem.METRIC)).isEqualTo("0.75 mm");
        assertThat(Length.ofMm(25.4 / 64).formatFineUpBoth(UnitSystem.INCH)).isEqualTo("1/64 in (0.4 mm)");
        Seeds.each(2000, random -> {
            Length error = Length.ofMm(3 * random.nextDouble());
            for (UnitSystem units : UnitSystem.values()) {
                double told =
                        Length.parse(error.formatFineUp(units), units).get().mm();
                assertThat(told - error.mm()).isBetween(-1e-6, (units == UnitSystem.METRIC ? 0.01 : 0.0254) + 1e-6);
            }
        });
    }

    @Test
    void a_fine_length_is_a_fraction_only_within_a_millionth_of_one() {
        assertThat(Length.ofMm(25.4 / 64 + 0.9e-6).formatFine(UnitSystem.INCH)).isEqualTo("1/64 in");
        assertThat(Length.ofMm(25.4 / 64 - 0.9e-6).formatFine(UnitSystem.INCH)).isEqualTo("1/64 in");
        assertThat(Length.ofMm(25.4 / 64 + 1.1e-6).formatFine(UnitSystem.INCH)).isEqualTo("0.016 in");
        assertThat(Length.ofMm(25.4 / 64 - 1.1e-6).formatFine(UnitSystem.INCH)).isEqualTo("0.016 in");
        assertThat(Length.ofMm(25.4 / 64 + 1.1e-6).formatFinest(UnitSystem.INCH))
                .isEqualTo("0.0156 in");
        assertThat(Length.ofMm(0.008).formatMeasuredBoth(UnitSystem.INCH)).isEqualTo("under 0.001 in (0.01 mm)");
        assertThat(Length.ofMm(0.008).formatMeasuredBoth(UnitSystem.METRIC)).isEqualTo("0.01 mm (under 0.001 in)");
        assertThat(Length.ZERO.formatMeasuredBoth(UnitSystem.METRIC)).isEqualTo("under 0.01 mm (0.001 in)");
        assertThat(Length.ZERO.formatMeasuredFinestBoth(UnitSystem.INCH)).isEqualTo("under 0.0001 in (0.001 mm)");
        assertThat(Length.ZERO.formatMeasured(UnitSystem.METRIC)).isEqualTo("under 0.01 mm");
        assertThat(Length.ofMm(0.2).formatMeasuredBoth(UnitSystem.INCH)).isEqualTo("0.008 in (0.2 mm)");
    }

    /** 1/4 in stood as 6.4 mm where it was typed and as 6.3 mm where it was the difference of two marks. */
    @Test
    void a_length_is_printed_alike_however_it_was_reckoned() {
        Length reckoned = Length.ofInches(2.75).minus(Length.ofInches(2.5));
        assertThat(reckoned.formatBoth(UnitSystem.INCH))
                .isEqualTo(Length.ofInches(0.25).formatBoth(UnitSystem.INCH))
                .isEqualTo("1/4 in (6.4 mm)");
    }

    @Test
    void figures_of_a_column_keep_their_decimals_and_are_never_nothing() {
        assertThat(Length.ofMm(0.2).formatSteadyBoth(UnitSystem.INCH)).isEqualTo("0.008 in (0.20 mm)");
        assertThat(Length.ofInches(1 / 64.0).formatSteady(UnitSystem.INCH)).isEqualTo("0.016 in");
        assertThat(Length.ofMm(0.008).formatSteadyBoth(UnitSystem.METRIC)).isEqualTo("0.01 mm (under 0.001 in)");
        assertThat(Length.ofMm(0.004).formatSteadyBoth(UnitSystem.INCH)).isEqualTo("under 0.001 in (0.01 mm)");
        assertThat(Length.ofMm(-0.004).formatSteady(UnitSystem.METRIC)).isEqualTo("under 0.01 mm");
        assertThat(Length.ofMm(0.2).formatFineBoth(UnitSystem.METRIC)).isEqualTo("0.2 mm (0.008 in)");
        assertThat(Length.ofMm(1.2345).formatFine(UnitSystem.METRIC)).isEqualTo("1.23 mm");
        assertThat(Length.ofMm(1.2345).formatFinest(UnitSystem.METRIC)).isEqualTo("1.234 mm");
    }

    @Test
    void parse_of_format_is_within_half_a_64th_or_half_a_tenth() {
        Seeds.each(2000, random -> {
            Length length = Length.ofMm(random.nextDouble() * Math.pow(10, random.nextInt(5)));
            for (UnitSystem units : UnitSystem.values()) {
                LengthText.Printed printed = LengthText.print(length, units);
                // Its own unit is printed, so the other system must read it back the same.
                Length back = Length.parse(printed.text(), units.other()).get();
                double half = units == UnitSystem.INCH ? 25.4 / 128 : 0.05;
                assertThat(back.minus(length).abs().mm()).isLessThanOrEqualTo(half + 1e-9);
                assertThat(back.plus(printed.roundedOff()).mm()).isCloseTo(length.mm(), within(1e-9));
            }
        });
    }

    @Test
    void every_64th_comes_back_exactly() {
        for (int parts = 0; parts <= 64 * 40; parts++) {
            Length length = Length.ofInches(parts / 64.0);
            assertThat(Length.parse(length.format(UnitSystem.INCH), UnitSystem.METRIC)
                            .get())
                    .isEqualTo(length);
        }
    }

    @Test
    void nothing_parses_to_something_below_zero_or_above_20_m() {
        String alphabet = "0123456789/-., ½'\"inmcft";
        Seeds.each(20_000, random -> {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(9); i >= 0; i--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            if (Length.parse(text.toString(), UnitSystem.INCH) instanceof Parsed.Value<Length> good) {
                assertThat(good.value().mm()).as("'%s'", text).isBetween(0.0, 20_000.0);
                assertThat(text.toString()).as("a value needs a digit").containsPattern("[0-9½]");
            }
        });
    }

    @Test
    void the_locale_changes_nothing() {
        for (Locale locale : List.of(
                Locale.GERMANY, Locale.US, Locale.forLanguageTag("ar-EG-u-nu-arab"), Locale.forLanguageTag("tr"))) {
            Locale.setDefault(locale);
            assertThat(Length.ofMm(1234.5).format(UnitSystem.METRIC)).isEqualTo("1234.5 mm");
            assertThat(Length.parse("1.5 IN", UnitSystem.METRIC).get().mm()).isCloseTo(38.1, within(1e-12));
        }
    }
}
