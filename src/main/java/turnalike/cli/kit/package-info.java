/** What every command is made of: files in and out, the paper, the wait for a long search, and how the person is told what to mend. */
@NullMarked
package turnalike.cli.kit;

import org.jspecify.annotations.NullMarked;
