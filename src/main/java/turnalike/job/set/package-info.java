/** Pieces matched into the set the job asks for: a row, legs, or a wheel with its seating, its roundness and its balance. */
@NullMarked
package turnalike.job.set;

import org.jspecify.annotations.NullMarked;
