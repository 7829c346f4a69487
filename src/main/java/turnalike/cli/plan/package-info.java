/** The commands on a job alone: its plan in words, its nudges, and what it exports. */
@NullMarked
package turnalike.cli.plan;

import org.jspecify.annotations.NullMarked;
