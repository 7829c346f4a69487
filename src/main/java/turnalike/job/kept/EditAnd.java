package turnalike.job.kept;

/**
 * An edit with what was found while it was made: what is to be asked about, for one.
 *
 * @param edit what is to be kept
 * @param found what was found on the way
 * @param <T> what was found
 */
public record EditAnd<T>(Edit edit, T found) {}
