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
        assertThat(DividingHead.text(12))
                .startsWith("on a dividing head: 24-hole ring, every 2nd hole; or 36-hole ring, every 3rd hole");
        assertThat(DividingHead.text(96)).isEqualTo("on a dividing head: 96-hole ring, every hole");
        assertThat(DividingHead.text(3)).contains("every 12th hole", "every 24th hole", "every 32nd hole");
        assertThat(DividingHead.text(14)).startsWith("none of a dividing head's usual rings");
    }
}
