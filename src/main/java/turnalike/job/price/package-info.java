/**
 * Time and price of a job: the turner's own times read, what the whole order then takes, and what it comes to.
 *
 * <p>Words: as in {@code price}; a <b>times file</b> is the table of timings, a line for a piece or for several done in one go.
 */
@NullMarked
package turnalike.job.price;

import org.jspecify.annotations.NullMarked;
