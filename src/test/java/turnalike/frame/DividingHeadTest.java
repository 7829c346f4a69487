package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DividingHeadTest {
    @Test
    void a_ring_serves_when_its_holes_go_round_in_equal_steps() {
        for (int places = 1; places <= 100; places++) {
            for (DividingHead head : DividingHead.serving(places)) {
                assertThat(head.every() * places).isEqualTo(head.holes());
            }
            int n = places;
            assertThat(DividingHead.serving(places).size()).isEqualTo((int)
                    DividingHead.RINGS.stream().filter(holes -> holes % n == 0).count());
        }
    }

    @Test
    void it_says_which_or_that_none_does() {
        assertThat(DividingHead.text(12)).startsWith("on a dividing head one hole in 2 of 24, or one hole in 3 of 36");
        assertThat(DividingHead.text(96)).isEqualTo("on a dividing head every hole of 96");
        assertThat(DividingHead.text(14)).startsWith("none of a dividing head's usual rings");
    }
}
