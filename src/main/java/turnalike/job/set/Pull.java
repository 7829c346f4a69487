package turnalike.job.set;

import turnalike.frame.Moment;

/**
 * A part of what a wheel pulls.
 *
 * @param from where it comes from, a few words
 * @param moment what that alone pulls
 */
public record Pull(String from, Moment moment) {}
