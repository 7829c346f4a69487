package turnalike.job.kept;

/**
 * A step that is kept, with what was found while its edit was made.
 *
 * @param <T> what was found
 */
public record StepAnd<T>(Step step, T found) {}
