package turnalike;

import java.util.Random;
import java.util.function.Consumer;

/** Property tests by a small seeded generator: the same cases each run, the seed named when one fails. */
public final class Seeds {
    /** How many times the seeds of each test: more in a campaign. */
    private static final int TIMES = Integer.getInteger("turnalike.seeds.times", 1);

    /** The one seed to run, to look at one that failed; none below 0. */
    private static final int ONLY = Integer.getInteger("turnalike.seeds.only", -1);

    private Seeds() {}

    /** How often something is simulated that is drawn at random: more in a campaign. */
    public static int times(int count) {
        return count * TIMES;
    }

    /** Whether a campaign runs, for cases that are too long for the rest. */
    public static boolean inCampaign() {
        return TIMES > 1;
    }

    /** Runs the property once for each of {@code count} seeds, or for as many times more as a campaign says. */
    public static void each(int count, Consumer<Random> property) {
        for (int seed = Math.max(0, ONLY); seed < (ONLY < 0 ? count * TIMES : ONLY + 1); seed++) {
            try {
                // Neighbouring seeds give alike first draws in java.util.Random; the multiplier spreads them.
                property.accept(new Random(seed * 0x9E3779B97F4A7C15L));
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("fails with seed %d: %s".formatted(seed, failure.getMessage()), failure);
            }
        }
    }
}
