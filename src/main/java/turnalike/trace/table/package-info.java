/** Measured points: a table of places and diameters. May use {@code units}, {@code csv} and the words of {@link turnalike.trace}. */
@NullMarked
package turnalike.trace.table;

import org.jspecify.annotations.NullMarked;
