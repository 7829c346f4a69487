package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which of forms that explain alike is told. */
class FormTest {
    @Test
    void an_arc_of_more_than_half_a_circle_is_no_bead_and_no_cove_that_anyone_would_turn() {
        double shallow = Form.HUMP.rarity(6, 30, -2.9);
        assertThat(Form.HUMP.rarity(6, 30, -3.1)).isGreaterThan(shallow + 3);
        assertThat(Form.HUMP.rarity(6, 30, 3.1)).isGreaterThan(shallow + 3);
        assertThat(Form.POINT.rarity(6, 30, -3.1)).isEqualTo(Form.POINT.rarity(6, 30, -2.9));
    }
}
