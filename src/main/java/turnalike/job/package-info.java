/**
 * One order: the job file in and out, and the {@link turnalike.job.Plan}, which is everything that follows from it. Text in, text out;
 * files belong to the layers above. Jackson is used here and nowhere lower.
 */
@NullMarked
package turnalike.job;

import org.jspecify.annotations.NullMarked;
