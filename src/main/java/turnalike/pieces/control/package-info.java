/**
 * Control charts of one measured thing over the pieces in the order they were turned: individuals and moving range, a self-starting watch
 * for changes, the usual run rules as a choice, a weighted moving average, and capability against tolerances. Gives the figures of a chart;
 * drawing it is another's.
 *
 * <p>A <em>point</em> is one piece's figure; a <em>signal</em> is a piece at which a rule says the process has changed; a <em>change</em> is
 * what the watch tells, with the piece it began at and its size; a <em>false alarm</em> is a signal of steady work. Uses {@code pieces} and
 * {@code units}.
 */
@NullMarked
package turnalike.pieces.control;

import org.jspecify.annotations.NullMarked;
