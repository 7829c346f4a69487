package turnalike.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
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

    private static final InetAddress PHONE = address(1);
    private static final InetAddress GUESSER = address(2);

    private final Hand clock = new Hand();
    private final List<String> shown = new ArrayList<>();
    private final PairingCode code = new PairingCode(clock, shown::add);

    private PairingCode.Try type(String typed) {
        return type(PHONE, typed);
    }

    private PairingCode.Try type(InetAddress from, String typed) {
        clock.pass(Duration.ofSeconds(2));
        return code.with(from, typed);
    }

    private static InetAddress address(int last) {
        try {
            return InetAddress.getByAddress(new byte[] {10, 0, (byte) (last / 250), (byte) (last % 250)});
        } catch (UnknownHostException impossible) {
            throw new IllegalStateException("four bytes are an address", impossible);
        }
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
    void after_five_wrong_tries_an_address_waits_ten_minutes() {
        String first = shown.get(0);
        for (int i = 0; i < 5; i++) {
            assertThat(type(wrong(first))).isEqualTo(PairingCode.Try.WRONG);
        }
        assertThat(type(first)).isEqualTo(PairingCode.Try.TOO_MANY);
        assertThat(shown).hasSize(1);
        clock.pass(Duration.ofMinutes(10));
        assertThat(type(code.now())).isEqualTo(PairingCode.Try.PAIRED);
    }

    @Test
    void who_guesses_holds_nobody_up_who_has_the_right_code() {
        String right = shown.get(0);
        for (int i = 0; i < 40; i++) {
            type(GUESSER, wrong(right));
        }
        assertThat(code.with(GUESSER, right)).isEqualTo(PairingCode.Try.TOO_MANY);
        assertThat(code.with(PHONE, right)).isEqualTo(PairingCode.Try.PAIRED);
    }

    @Test
    void a_hundred_wrong_tries_of_many_draw_another_code() {
        String first = shown.get(0);
        for (int i = 0; i < 100; i++) {
            assertThat(shown).hasSize(1);
            assertThat(code.with(address(10 + i), wrong(first))).isEqualTo(PairingCode.Try.WRONG);
        }
        assertThat(shown).hasSize(2);
    }

    @Test
    void a_second_try_must_wait_a_second() {
        assertThat(type(wrong(code.now()))).isEqualTo(PairingCode.Try.WRONG);
        assertThat(code.with(PHONE, code.now())).isEqualTo(PairingCode.Try.TOO_SOON);
        assertThat(code.with(GUESSER, code.now())).isEqualTo(PairingCode.Try.PAIRED);
    }

    @Test
    void a_code_ends_after_ten_minutes() {
        clock.pass(Duration.ofMinutes(11));
        code.now();
        assertThat(shown).hasSize(2);
        assertThat(type(shown.get(1))).isEqualTo(PairingCode.Try.PAIRED);
    }
}
