/** The command that cuts blanks out of boards, and what it says. */
@NullMarked
package turnalike.cli.boards;

import org.jspecify.annotations.NullMarked;
