/**
 * A finished piece beside its pattern: where along the axis each of its members stands, how thick it is there, and how sure both are.
 *
 * <p>Words: a piece is <em>held</em> at the end its places are counted from; a <em>spot</em> is a place on the pattern (an edge between
 * two members, a crest) whose counterpart is sought on the piece; what was not seen has no figure.
 */
@NullMarked
package turnalike.trace.against;

import org.jspecify.annotations.NullMarked;
