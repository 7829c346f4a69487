/**
 * What a person can do to a job's text: each {@link turnalike.job.edit.JobEdit} is a pure function from a kept text to another, or to the
 * problems that keep it from being one. The text's own spellings are kept wherever the edit does not touch them.
 */
@NullMarked
package turnalike.job.edit;

import org.jspecify.annotations.NullMarked;
