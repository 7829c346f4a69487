/** What a job says of pieces turned: how near the pattern and each other they are, what control finds, and how a piece is mended. */
@NullMarked
package turnalike.job.pieces;

import org.jspecify.annotations.NullMarked;
