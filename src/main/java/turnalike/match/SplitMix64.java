package turnalike.match;

/**
 * The same chances on every machine and in every run: a search that throws these gives the same answer for the same effort. SplitMix64,
 * Steele, Lea and Flood, OOPSLA 2014 (from memory).
 */
final class SplitMix64 {
    private long state;

    SplitMix64(long seed) {
        state = seed;
    }

    /** A whole number from 0 to {@code bound} − 1. */
    int below(int bound) {
        state += 0x9E3779B97F4A7C15L;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        mixed ^= mixed >>> 31;
        return (int) Math.multiplyHigh(mixed >>> 1, 2L * bound);
    }

    /** Puts {@code count} of the numbers, each choice as likely, in front. */
    void bringForward(int[] numbers, int count) {
        for (int i = 0; i < count; i++) {
            int j = i + below(numbers.length - i);
            int held = numbers[i];
            numbers[i] = numbers[j];
            numbers[j] = held;
        }
    }
}
