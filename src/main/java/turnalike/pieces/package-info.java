/**
 * What was turned: the pieces with their weights and measures, the file that carries them, the slips of pen and key that are asked about,
 * and the likeness figure that says which pieces go together.
 *
 * <p>Words: a <em>piece</em> is one turned spindle with a label; a <em>column</em> is one thing measured on it; a <em>slip</em> is a figure
 * that reads like a mistake and is asked about, never swallowed; a <em>difference</em> compares two pieces, a <em>figure</em> one piece with
 * the pattern or the set. Control charts are in {@code pieces.control}, mending in {@code pieces.mend}, blanks in
 * {@code pieces.blanks}. Uses {@code units} and {@code csv}.
 */
@NullMarked
package turnalike.pieces;

import org.jspecify.annotations.NullMarked;
