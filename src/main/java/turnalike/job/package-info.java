/**
 * One order: the {@link turnalike.job.Job}, and the {@link turnalike.job.Plan}, which is everything that follows from it. The rooms within
 * read it, match its set, judge its pieces, answer in JSON, keep it and edit it: text in, text out; files belong to the layers above.
 */
@NullMarked
package turnalike.job;

import org.jspecify.annotations.NullMarked;
