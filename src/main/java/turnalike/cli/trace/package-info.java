/** The commands about originals: {@code trace}. */
@NullMarked
package turnalike.cli.trace;

import org.jspecify.annotations.NullMarked;
