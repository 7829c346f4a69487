package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Where a joint is looked for that a picture does not show. */
class GapsTest {
    private static final double PIXEL_MM = 0.3;

    /** Something hidden behind a shoulder from 1.5 to 7.5 mm. */
    private static final Gaps GAPS =
            new Gaps(new double[] {0.5, 1, 1.5, 7.5, 8, 8.5}, new double[] {15, 15, 15, 9, 9, 9}, 0.5, PIXEL_MM);

    @Test
    void only_what_lies_far_apart_in_a_picture_has_something_hidden_between() {
        assertThat(GAPS.isAfter(2)).isTrue();
        assertThat(GAPS.isAfter(1)).isFalse();
        assertThat(GAPS.isAfter(5)).isFalse();
        assertThat(GAPS.isAfter(-1)).isFalse();
        Gaps drawn = new Gaps(new double[] {0.5, 1, 7}, new double[] {15, 15, 9}, 0.5, 0);
        assertThat(drawn.isAfter(1)).isFalse();
    }

    @Test
    void an_edge_that_hides_the_rest_ends_within_a_pixel_or_two_however_much_it_hides() {
        assertThat(GAPS.likeliest(2, false)).isCloseTo(1.5 + 1.3 * PIXEL_MM, within(1e-9));
        assertThat(GAPS.likeliest(2, true)).isCloseTo(1.5 + 0.25 * 6, within(1e-9));
        assertThat(GAPS.likeliest(1, false)).isEqualTo(1.25);
    }

    @Test
    void from_the_thicker_side_farther_in_is_the_less_likely_the_sooner_behind_an_edge() {
        double edge = GAPS.unlikely(2, 4.5, Form.LEVEL, Form.LEVEL);
        double arc = GAPS.unlikely(2, 4.5, Form.HUMP, Form.LEVEL);
        assertThat(edge).isCloseTo(2 * 3 / (1.3 * PIXEL_MM), within(1e-9));
        assertThat(arc).isCloseTo(2 * 3 / 1.5, within(1e-9));
        assertThat(GAPS.unlikely(2, 1.5, Form.LEVEL, Form.LEVEL)).isZero();
        assertThat(GAPS.unlikely(1, 1.2, Form.LEVEL, Form.LEVEL)).isZero();
    }

    @Test
    void it_is_the_same_from_the_other_side() {
        Gaps turned =
                new Gaps(new double[] {0.5, 1, 1.5, 7.5, 8, 8.5}, new double[] {9, 9, 9, 15, 15, 15}, 0.5, PIXEL_MM);
        assertThat(turned.likeliest(2, false)).isCloseTo(7.5 - 1.3 * PIXEL_MM, within(1e-9));
        assertThat(turned.unlikely(2, 4.5, Form.LEVEL, Form.HUMP)).isCloseTo(2 * 3 / 1.5, within(1e-9));
    }
}
