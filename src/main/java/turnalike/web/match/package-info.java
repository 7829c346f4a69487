/** The best set out of the pieces, in its places: searched in the background, with progress and a way to stop. */
@NullMarked
package turnalike.web.match;

import org.jspecify.annotations.NullMarked;
