/**
 * The job file read: text to a {@link turnalike.job.Job}, or to every problem in it, in order. Jackson is used in these rooms and nowhere
 * lower.
 */
@NullMarked
package turnalike.job.read;

import org.jspecify.annotations.NullMarked;
