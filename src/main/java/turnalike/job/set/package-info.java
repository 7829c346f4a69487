/**
 * The frame a set goes into, as the job tells it, and the set chosen and placed in it. One record for each kind of frame says its keys, how
 * it is read, its places, what it starts from and how it is filled; {@link turnalike.job.set.FrameKind} names them all. A set says of itself
 * how good it is; who draws or prints it asks by {@link turnalike.job.set.SetMatch.Cases}. Knows no job, only its
 * {@link turnalike.job.set.SetTerms}.
 */
@NullMarked
package turnalike.job.set;

import org.jspecify.annotations.NullMarked;
