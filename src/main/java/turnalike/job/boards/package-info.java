/**
 * Jobs and the boards in hand: the boards' file, what blanks the jobs want, and what is said of the plan.
 *
 * <p>Uses {@code job} itself and what stands below it.
 */
@NullMarked
package turnalike.job.boards;

import org.jspecify.annotations.NullMarked;
