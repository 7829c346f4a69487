/** The command line: one class per command, each thin. Words and exit codes as the design's contract gives them. */
@NullMarked
package turnalike.cli;

import org.jspecify.annotations.NullMarked;
