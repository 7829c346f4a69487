package turnalike.web.lan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * The code that pairs one device. It serves once, for ten minutes, and is drawn anew after five wrong tries: a guess a second would need
 * days for an even chance at six digits, and the host sees every new code appear. May be used by several threads.
 */
final class PairingCode {
    private static final Duration LIFE = Duration.ofMinutes(10);
    private static final int MOST_TRIES = 5;
    private static final Duration PAUSE = Duration.ofSeconds(1);
    private static final SecureRandom DICE = new SecureRandom();

    private final Clock clock;
    private final Consumer<String> shown;
    private String code = "";
    private Instant until = Instant.MIN;
    private Instant next = Instant.MIN;
    private int tries;

    /** @param shown told of each code as it is drawn, to show it on the host */
    PairingCode(Clock clock, Consumer<String> shown) {
        this.clock = clock;
        this.shown = shown;
        draw();
    }

    /** The code that pairs now, as the host shows it. */
    synchronized String now() {
        if (!clock.instant().isBefore(until)) {
            draw();
        }
        return code;
    }

    /** What came of a try. */
    enum Try {
        PAIRED,
        WRONG,
        TOO_SOON
    }

    /** Tries a code; blanks and hyphens in it are read over. */
    synchronized Try with(String typed) {
        Instant at = clock.instant();
        if (at.isBefore(next)) {
            return Try.TOO_SOON;
        }
        next = at.plus(PAUSE);
        boolean right = MessageDigest.isEqual(bytes(now()), bytes(typed.replaceAll("[\\s-]", "")));
        if (right || ++tries >= MOST_TRIES) {
            draw();
        }
        return right ? Try.PAIRED : Try.WRONG;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void draw() {
        code = String.format(Locale.ROOT, "%06d", DICE.nextInt(1_000_000));
        until = clock.instant().plus(LIFE);
        tries = 0;
        shown.accept(code);
    }
}
