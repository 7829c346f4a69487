/** The wood of a job file: what it is turned from, and what hub and rim are made of. */
@NullMarked
package turnalike.job.wood;

import org.jspecify.annotations.NullMarked;
