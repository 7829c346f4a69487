/**
 * Time and price: what a stage of the work takes from piece to piece, what is to be expected of the rest, and what the order comes to.
 *
 * <p>Words: a <b>stage</b> is a part of the work as the turner names it, milling or sanding; a <b>timing</b> what one piece, or several
 * together, took of it; a <b>learning curve</b> how it falls with every piece made; a <b>forecast</b> what the whole order will take of it; a
 * <b>quote</b> what it comes to at the turner's own rate.
 *
 * <p>Uses nothing else of ours.
 */
@NullMarked
package turnalike.price;

import org.jspecify.annotations.NullMarked;
