/** The commands about blanks weighed and pieces turned: which blanks to turn, control, likeness and mending. */
@NullMarked
package turnalike.cli.pieces;

import org.jspecify.annotations.NullMarked;
