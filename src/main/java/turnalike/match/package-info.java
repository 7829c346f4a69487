/**
 * Which pieces go together and which goes where: the set chosen out of all pieces, its order round a wheel for balance, along a row for
 * likeness, in groups for legs. A <em>set</em> is the pieces chosen, a <em>spare</em> one left over, an <em>order</em> says which piece of
 * the set stands at each place. What is claimed as proven best is proven by a search that left nothing out. Uses units, effort and frame.
 */
@NullMarked
package turnalike.match;

import org.jspecify.annotations.NullMarked;
