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

    @Test
    void a_watched_effort_tells_what_cut_a_search_short_its_shares_too() {
        assertThat(Watch.over(Effort.unlimited()).ending(true)).isEqualTo(Ending.PROOF);
        assertThat(Watch.over(Effort.unlimited()).ending(false)).isEqualTo(Ending.STEPS);
        Watch counted = Watch.over(Effort.ofAsks(10));
        asks(counted.share(0.5));
        assertThat(counted.ending(false)).isEqualTo(Ending.STEPS);
        assertThat(counted.ending(true)).isEqualTo(Ending.PROOF);
        Watch timed = Watch.over(over(Ending.SECONDS));
        assertThat(timed.share(0.5).spent()).isTrue();
        assertThat(timed.ending(false)).isEqualTo(Ending.SECONDS);
        assertThat(timed.ending(true)).as("what is found may hang on the clock").isEqualTo(Ending.SECONDS);
        Watch stopped = Watch.over(over(Ending.STOPPED));
        assertThat(stopped.spentAfter(3)).isTrue();
        assertThat(stopped.ending(true)).isEqualTo(Ending.STOPPED);
    }

    @Test
    void a_watched_effort_that_wants_the_proof_alone_still_does_and_so_do_its_shares() {
        Effort proof = new Effort() {
            @Override
            public boolean spent() {
                return false;
            }

            @Override
            public boolean wantsProofAlone() {
                return true;
            }
        };
        assertThat(Watch.over(proof).wantsProofAlone()).isTrue();
        assertThat(Watch.over(proof).share(0.5).wantsProofAlone()).isTrue();
        assertThat(Watch.over(Effort.unlimited()).wantsProofAlone()).isFalse();
    }

    private static Effort over(Ending cause) {
        return new Effort() {
            @Override
            public boolean spent() {
                return true;
            }

            @Override
            public Ending cause() {
                return cause;
            }
        };
    }

    private static int asks(Effort effort) {
        int asks = 0;
        while (!effort.spent()) {
            asks++;
        }
        return asks;
    }
}
