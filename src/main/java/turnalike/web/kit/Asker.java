package turnalike.web.kit;

import java.util.Optional;

/**
 * Whose request this thread answers, so that each step can be signed. Named when a request is let in and forgotten when the next one comes;
 * work that goes on beside requests is nobody's.
 */
public final class Asker {
    private static final ThreadLocal<String> NAME = ThreadLocal.withInitial(() -> "");

    private Asker() {}

    /** The name of the device that asks; empty where it is the machine that serves. */
    public static Optional<String> name() {
        return Optional.of(NAME.get()).filter(name -> !name.isEmpty());
    }

    /** Answers that one from now on; nobody when empty. */
    public static void is(Optional<String> name) {
        NAME.set(name.orElse(""));
    }
}
