/**
 * The job as it is kept: its text, pieces and photographs' results with everything that was ever changed and when, the one file that
 * carries all of it away and back, and the {@link turnalike.job.kept.JobStore} that holds it. Text in, text out; the file on disk belongs to
 * the store above.
 *
 * <p>Words: a <em>subject</em> is what an edit can touch (the job's text, one piece, one photograph); a <em>step</em> is one edit, undo or
 * redo, with its time; the <em>history</em> is all steps from the first, and what stands now follows from it by {@link
 * turnalike.job.kept.Replay}.
 */
@NullMarked
package turnalike.job.kept;

import org.jspecify.annotations.NullMarked;
