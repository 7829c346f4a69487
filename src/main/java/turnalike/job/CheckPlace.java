package turnalike.job;

import turnalike.units.Length;

/**
 * A place where a caliper is laid on every piece: the column {@code d1} of a pieces file is the first of a job's check places.
 *
 * @param name what the turner calls it
 * @param at its distance from the start end, within the pattern
 */
public record CheckPlace(String name, Length at) {}
