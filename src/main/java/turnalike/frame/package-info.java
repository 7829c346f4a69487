/**
 * The geometry and statics of what a set goes into. A wheel: its places stand round a hub and every piece pulls on the axle with a moment.
 * A row: what stands open between two neighbours, upright or raked. Legs: the angles their holes are bored at. Which piece goes where is
 * chosen in the match package; how a job tells its frame is in the job's sets. Uses units and outlines.
 */
@NullMarked
package turnalike.frame;

import org.jspecify.annotations.NullMarked;
