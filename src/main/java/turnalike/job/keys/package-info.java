/**
 * The one description of a job file: which keys there are, what each holds, in which range, what counts when it is left out, and how a form
 * and the docs tell it. Reading, editing, a change of units, the page's forms, the table in docs/job-file.md and the JSON Schema all come
 * from it. The file's own keys are in {@link turnalike.job.keys.JobKeys}, those of an object in it in a class of their own; a member's keys
 * are described by its kind.
 */
@NullMarked
package turnalike.job.keys;

import org.jspecify.annotations.NullMarked;
