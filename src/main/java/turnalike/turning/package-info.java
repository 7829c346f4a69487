/**
 * How a piece is turned: the order of cuts, how fast it may turn, where it whips and how far it bends under the tool.
 *
 * <p>Words: the <em>drive end</em> is the one at the headstock, the datum end unless the job says otherwise, the <em>tail end</em> the other;
 * a piece turns <em>between centres</em>, held by a pin at each end, or is <em>held</em> by one end and turned from its <em>tip</em> back;
 * a <em>stage</em> is the piece as it stands after some of the cuts; the <em>natural speed</em> is the number of turns a minute at which
 * it would swing by itself, and so whip; a <em>slender stretch</em> is a part of the run whose cutting costs the piece its stiffness.
 * Speeds come with cautions and are no promise.
 *
 * <p>May use {@code units}, {@code outline}, {@code wood}, {@code pattern}, {@code solid}, {@code stock} and {@code settings}.
 */
@NullMarked
package turnalike.turning;

import org.jspecify.annotations.NullMarked;
