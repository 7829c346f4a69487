package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainNumberTest {
    @Test
    void figures_are_rounded_and_written_out() {
        assertThat(PlainNumber.toFigures(0.034999, 1)).isEqualTo("0.03");
        assertThat(PlainNumber.toFigures(12.5, 3)).isEqualTo("12.5");
        assertThat(PlainNumber.toFigures(123_456, 2)).isEqualTo("120000");
        assertThat(PlainNumber.toFigures(0, 3)).isEqualTo("0");
    }

    @Test
    void tenths_lose_their_zero() {
        assertThat(PlainNumber.toTenths(4)).isEqualTo("4");
        assertThat(PlainNumber.toTenths(3.46)).isEqualTo("3.5");
        assertThat(PlainNumber.toTenths(-0.4)).isEqualTo("-0.4");
    }

    @Test
    void a_number_with_all_its_digits_has_neither_zeros_at_its_end_nor_a_power_of_ten() {
        assertThat(PlainNumber.exact(2)).isEqualTo("2");
        assertThat(PlainNumber.exact(-0.0)).isEqualTo("0");
        assertThat(PlainNumber.exact(0.0625)).isEqualTo("0.0625");
        assertThat(PlainNumber.exact(120)).isEqualTo("120");
        assertThat(PlainNumber.exact(1e-7)).isEqualTo("0.0000001");
        assertThat(PlainNumber.exact(2e15)).isEqualTo("2000000000000000");
    }

    @Test
    void decimals_are_rounded_to_the_even_digit_and_lose_their_zeros() {
        assertThat(PlainNumber.toDecimals(3.1245, 3)).isEqualTo("3.124");
        assertThat(PlainNumber.toDecimals(3.9996, 3)).isEqualTo("4");
        assertThat(PlainNumber.toDecimals(-0.0004, 3)).isEqualTo("0");
        assertThat(PlainNumber.toDecimals(1250, 0)).isEqualTo("1250");
    }
}
