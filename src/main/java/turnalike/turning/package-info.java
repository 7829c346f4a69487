/**
 * How a piece is turned: the order of cuts, how fast it may turn, where it whips and how far it bends under the tool.
 *
 * <p>Words: the <em>drive end</em> is the datum end, at the headstock, the <em>tail end</em> the far one; a piece turns <em>between
 * centres</em>, held by a pin at each end; a <em>stage</em> is the piece as it stands after some of the cuts; the <em>natural speed</em>
 * is the number of turns a minute at which it would swing by itself, and so whip; a <em>slender stretch</em> is a part of the run whose
 * cutting costs the piece its stiffness. Speeds come with cautions and are no promise.
 *
 * <p>May use {@code units}, {@code outline}, {@code wood}, {@code pattern}, {@code solid}, {@code stock} and {@code settings}.
 */
@NullMarked
package turnalike.turning;

import org.jspecify.annotations.NullMarked;
