/** The command that tells what a job takes and comes to, and what it says. */
@NullMarked
package turnalike.cli.price;

import org.jspecify.annotations.NullMarked;
