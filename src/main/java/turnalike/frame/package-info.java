/**
 * The geometry and statics of a wheel: its places stand round a hub and every piece pulls on the axle with a moment. Which piece goes where
 * is chosen in the match package; what else a set may go into, a row or legs, has no geometry of its own: see the job's frames. Uses units
 * only.
 */
@NullMarked
package turnalike.frame;

import org.jspecify.annotations.NullMarked;
