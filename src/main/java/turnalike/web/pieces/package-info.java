/** The pieces of one job: logging them by key, paste or file, and the control chart of what was measured. */
@NullMarked
package turnalike.web.pieces;

import org.jspecify.annotations.NullMarked;
