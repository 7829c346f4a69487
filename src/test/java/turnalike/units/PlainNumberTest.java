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
}
