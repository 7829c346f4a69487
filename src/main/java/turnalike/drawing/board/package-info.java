/** Boards with what is sawn out of them. */
@NullMarked
package turnalike.drawing.board;

import org.jspecify.annotations.NullMarked;
