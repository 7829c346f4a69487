/** The command that plans a job, and its plan in words. */
@NullMarked
package turnalike.cli.plan;

import org.jspecify.annotations.NullMarked;
