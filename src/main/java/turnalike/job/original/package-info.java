/**
 * An original on its way to a pattern, whichever kind it is of: which reader it goes to, what is asked of it, and the members that explain
 * what was read. May use {@code job}, {@code photo} and {@code trace}; takes bytes and text, and answers with what was found or why nothing
 * was.
 */
@NullMarked
package turnalike.job.original;

import org.jspecify.annotations.NullMarked;
