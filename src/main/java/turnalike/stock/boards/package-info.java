/**
 * Blanks out of the boards in hand: what to rip and cut across so that the boards cost least and the longest piece is left.
 *
 * <p>Words: a <em>rip</em> is what is sawn off a board along the grain, as wide as the blank is thick; its <em>strips</em> lie over one another
 * in the board's thickness; a <em>stretch</em> is clear wood between two faults or a fault and an end; the <em>kerf</em> is what a saw
 * cut takes. May use {@code units}, {@code effort}; knows nothing of jobs.
 */
@NullMarked
package turnalike.stock.boards;

import org.jspecify.annotations.NullMarked;
