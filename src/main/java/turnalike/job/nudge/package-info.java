/**
 * The nudge: which smallest moves of places and diameters, within the turner's own tolerances, save a divider opening or a caliper. Each is
 * tried on the job's own text, so that what is claimed is what comes of taking it.
 */
@NullMarked
package turnalike.job.nudge;

import org.jspecify.annotations.NullMarked;
