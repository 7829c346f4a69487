/** How the piece is turned: its look, speeds and whip, and the order of cuts. May use everything {@code web} may. */
@NullMarked
package turnalike.web.turning;

import org.jspecify.annotations.NullMarked;
