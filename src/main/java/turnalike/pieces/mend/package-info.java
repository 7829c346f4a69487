/**
 * Mending: the least visible cut that brings a heavy piece to weight, what can be done about a light one, and when to make another. What
 * a cut takes off comes in as plain figures for each member; where they come from is another's. Uses {@code pieces}, {@code solid}
 * and {@code units}.
 */
@NullMarked
package turnalike.pieces.mend;

import org.jspecify.annotations.NullMarked;
