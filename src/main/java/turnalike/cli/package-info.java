/**
 * The command line: {@link turnalike.cli.Program} is all commands together; each command is one class, thin, in the room of its subject.
 * Words and exit codes as the design's contract gives them.
 */
@NullMarked
package turnalike.cli;

import org.jspecify.annotations.NullMarked;
