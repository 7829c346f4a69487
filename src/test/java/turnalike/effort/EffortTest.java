package turnalike.effort;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EffortTest {
    @Test
    void a_share_ends_first_and_leaves_the_rest() {
        Effort whole = Effort.ofAsks(10);
        Effort first = whole.share(0.6);
        assertThat(asks(first)).isEqualTo(6);
        assertThat(asks(whole)).isEqualTo(4);
    }

    @Test
    void a_share_ends_with_the_whole_at_the_latest() {
        Effort whole = Effort.ofAsks(10);
        Effort first = whole.share(0.6);
        for (int i = 0; i < 7; i++) {
            assertThat(whole.spent()).isFalse();
        }
        assertThat(asks(first)).isEqualTo(3);
    }

    @Test
    void what_knows_no_end_gives_itself_whole() {
        assertThat(Effort.unlimited().share(0.5).spent()).isFalse();
    }

    private static int asks(Effort effort) {
        int asks = 0;
        while (!effort.spent()) {
            asks++;
        }
        return asks;
    }
}
