/**
 * Measured points: a table of places and diameters, read from CSV. May use {@code units} and the words of {@link turnalike.trace}; it
 * touches commons-csv as {@code pieces} does, whose own table it cannot use, since both stand on one level.
 */
@NullMarked
package turnalike.trace.table;

import org.jspecify.annotations.NullMarked;
