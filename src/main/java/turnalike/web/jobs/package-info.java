/** The list of jobs, and how a job begins. */
@NullMarked
package turnalike.web.jobs;

import org.jspecify.annotations.NullMarked;
