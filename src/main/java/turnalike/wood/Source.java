package turnalike.wood;

/**
 * What a source key stands for.
 *
 * @param key {@code S1} to {@code S17}, or {@code memory}
 * @param what the source, in words
 */
public record Source(String key, String what) {}
