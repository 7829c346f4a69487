package turnalike.web.copy;

import io.javalin.http.Context;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.original.OriginalTrace;
import turnalike.job.pieces.AgainstReport;
import turnalike.pieces.Piece;
import turnalike.trace.Traced;
import turnalike.trace.against.Against;
import turnalike.trace.against.Comparison;
import turnalike.units.Length;
import turnalike.web.kit.Refusal;

/**
 * An original that was sent, traced at once and kept nowhere.
 *
 * @param traced what was found
 * @param report how it stands against its job, where one was named
 */
public record TraceOnce(Traced traced, Optional<AgainstReport> report) {
    /**
     * What the file and the fields of the form that was sent give, or a {@link Refusal} in words.
     *
     * @param job that what was sent is a finished piece of
     */
    public static TraceOnce of(Context ctx, Optional<Job> job) {
        OriginalForm form = OriginalForm.of(ctx);
        SentOriginal sent =
                OriginalUpload.read(ctx, form, job.map(each -> each.pattern().length()));
        OriginalTrace trace = sent.trace(Effort.unlimited());
        Traced traced = trace.traced().orElseThrow(() -> new Refusal(422, trace.problems()));
        return new TraceOnce(traced, job.map(each -> report(each, form, sent.isPhotograph(), traced)));
    }

    private static AgainstReport report(Job job, OriginalForm form, boolean photograph, Traced traced) {
        Against.Manner manner =
                new Against.Manner(form.byEnd() ? Comparison.Held.END : Comparison.Held.START, photograph, !photograph);
        Length length = traced.original().profile().length();
        // As long as the pattern to the last digit: taken from it, for want of a span and a sheet.
        boolean measured =
                !photograph || form.hasSpan() || !job.pattern().length().equals(length);
        String piece = Piece.label(form.piece().isEmpty() ? "1" : form.piece()).fold(label -> label, (what, mend) -> {
            throw Refusal.of(422, "piece", what, mend);
        });
        return AgainstReport.of(job, traced.original(), manner, piece, measured, job.units());
    }
}
