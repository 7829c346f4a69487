/** The piece itself: measured, shaded, and cut by cut. */
@NullMarked
package turnalike.drawing.piece;

import org.jspecify.annotations.NullMarked;
