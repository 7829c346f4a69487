package turnalike.web.lan;

import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import turnalike.web.kit.Recent;

/**
 * The code that pairs one device. It serves once and for ten minutes. Each address has five wrong tries in ten minutes, a second apart, and
 * tries of its own: who guesses elsewhere holds nobody up who has the right code. One address would need years for an even chance at six
 * digits, two hundred and fifty of them days; after a hundred wrong tries in all another code is drawn, and the host sees it appear. May be
 * used by several threads.
 */
final class PairingCode {
    private static final Duration LIFE = Duration.ofMinutes(10);
    private static final int MOST_TRIES = 5;
    private static final int MOST_TRIES_IN_ALL = 100;
    private static final int MOST_ADDRESSES = 1_000;
    private static final Duration PAUSE = Duration.ofSeconds(1);
    private static final SecureRandom DICE = new SecureRandom();

    private final Clock clock;
    private final Consumer<String> shown;
    private String code = "";
    private Instant until = Instant.MIN;
    private int wrong;
    private final Map<InetAddress, Tries> tries = Recent.of(MOST_ADDRESSES);

    /** What one address has tried: how many wrong codes until when, and when it may try again. */
    private record Tries(int wrong, Instant until, Instant next) {}

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
        TOO_SOON,
        TOO_MANY
    }

    /** Tries a code that came from an address; blanks and hyphens in it are read over. */
    synchronized Try with(InetAddress from, String typed) {
        Instant at = clock.instant();
        Tries had = Optional.ofNullable(tries.get(from))
                .filter(each -> at.isBefore(each.until()))
                .orElse(new Tries(0, at.plus(LIFE), Instant.MIN));
        if (had.wrong() >= MOST_TRIES) {
            return Try.TOO_MANY;
        }
        if (at.isBefore(had.next())) {
            return Try.TOO_SOON;
        }
        if (MessageDigest.isEqual(bytes(now()), bytes(typed.replaceAll("[\\s-]", "")))) {
            tries.remove(from);
            draw();
            return Try.PAIRED;
        }
        tries.put(from, new Tries(had.wrong() + 1, had.until(), at.plus(PAUSE)));
        if (++wrong >= MOST_TRIES_IN_ALL) {
            draw();
        }
        return Try.WRONG;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void draw() {
        code = String.format(Locale.ROOT, "%06d", DICE.nextInt(1_000_000));
        until = clock.instant().plus(LIFE);
        wrong = 0;
        shown.accept(code);
    }
}
