package turnalike.job.kept;

/**
 * A step that is kept, with what was found while its edit was made.
 *
 * @param step what was kept
 * @param found what the last call of the edit found
 * @param <T> what was found
 */
public record StepAnd<T>(Step step, T found) {}
