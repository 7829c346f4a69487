/** The command that makes every sheet of the invented job. */
@NullMarked
package turnalike.cli.demo;

import org.jspecify.annotations.NullMarked;
