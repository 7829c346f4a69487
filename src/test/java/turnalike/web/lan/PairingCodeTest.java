package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PairingCodeTest {
    private static final class Hand extends Clock {
        private Instant at = Instant.parse("2031-05-03T08:00:00Z");

        void pass(Duration time) {
            at = at.plus(time);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return at;
        }
    }

    private final Hand clock = new Hand();
    private final List<String> shown = new ArrayList<>();
    private final PairingCode code = new PairingCode(clock, shown::add);

    private PairingCode.Try type(String typed) {
        clock.pass(Duration.ofSeconds(2));
        return code.with(typed);
    }

    private static String wrong(String right) {
        return right.charAt(0) == '9' ? "0" + right.substring(1) : "9" + right.substring(1);
    }

    @Test
    void the_code_shown_pairs_once_however_it_is_spaced() {
        String first = shown.get(0);
        assertThat(type(first.substring(0, 3) + " " + first.substring(3))).isEqualTo(PairingCode.Try.PAIRED);
        assertThat(shown).hasSize(2);
        if (!shown.get(1).equals(first)) {
            assertThat(type(first)).isEqualTo(PairingCode.Try.WRONG);
        }
    }

    @Test
    void five_wrong_tries_draw_another_code() {
        String first = shown.get(0);
        for (int i = 0; i < 5; i++) {
            assertThat(type(wrong(first))).isEqualTo(PairingCode.Try.WRONG);
        }
        assertThat(shown).hasSize(2);
    }

    @Test
    void a_second_try_must_wait_a_second() {
        assertThat(type(wrong(code.now()))).isEqualTo(PairingCode.Try.WRONG);
        assertThat(code.with(code.now())).isEqualTo(PairingCode.Try.TOO_SOON);
    }

    @Test
    void a_code_ends_after_ten_minutes() {
        clock.pass(Duration.ofMinutes(11));
        code.now();
        assertThat(shown).hasSize(2);
        assertThat(type(shown.get(1))).isEqualTo(PairingCode.Try.PAIRED);
    }
}
