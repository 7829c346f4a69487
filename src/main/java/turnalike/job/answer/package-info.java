/** What the program answers to other programs: each of the job's results as JSON. */
@NullMarked
package turnalike.job.answer;

import org.jspecify.annotations.NullMarked;
