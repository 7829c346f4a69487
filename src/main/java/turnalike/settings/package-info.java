/**
 * How a piece is laid out without measuring each time: the fewest divider openings that reach every mark, and the calipers' sizes.
 *
 * <p>Words: a <em>mark</em> is a layout line's place along the piece; the two <em>end marks</em>, shoulder lines of squares and what the
 * marking stick gives are <em>given</em>; an <em>opening</em> is a distance dividers are set to; a <em>step</em> carries one mark to another
 * with one opening; a <em>setting</em> is an opening with the steps it serves; a mark's <em>miss</em> is what the openings on its path are
 * known to put it off by. Works on plain lengths, and knows nothing of members. May use {@code units} and {@code effort}.
 */
@NullMarked
package turnalike.settings;

import org.jspecify.annotations.NullMarked;
