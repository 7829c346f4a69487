/** The set in its places: a wheel, a row or legs, from above and as it will stand. */
@NullMarked
package turnalike.drawing.frame;

import org.jspecify.annotations.NullMarked;
