/** The commands about pieces turned: control, likeness and mending. */
@NullMarked
package turnalike.cli.pieces;

import org.jspecify.annotations.NullMarked;
