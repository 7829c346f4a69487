/**
 * What a set is put into: the frame and its places. A wheel's places stand round a hub and every piece pulls on the axle with a moment; a
 * row's places stand side by side; legs stand at corners. Here is only geometry and statics; which piece goes where is chosen in the
 * match package. Uses units only.
 */
@NullMarked
package turnalike.frame;

import org.jspecify.annotations.NullMarked;
