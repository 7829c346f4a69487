package turnalike.web.copy;

import io.javalin.http.Context;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.original.OriginalTrace;
import turnalike.trace.Traced;
import turnalike.web.kit.Refusal;

/** An original that was sent, traced at once and kept nowhere. */
public final class TraceOnce {
    private TraceOnce() {}

    /** What the file and the fields of the form that was sent give, or a {@link Refusal} in words. */
    public static Traced of(Context ctx) {
        OriginalTrace trace =
                OriginalUpload.read(ctx, OriginalForm.of(ctx), Optional.empty()).trace(Effort.unlimited());
        return trace.traced().orElseThrow(() -> new Refusal(422, trace.problems()));
    }
}
