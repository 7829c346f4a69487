package turnalike.web.copy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.kept.Subject;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Refusal;

/** The photograph that is kept with a job. */
public final class PhotoFeature implements Feature {
    private static final String PHOTO = JobAddress.JOB + "/photo";

    private final JobStore store;

    public PhotoFeature(JobStore store) {
        this.store = store;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PHOTO + ".jpg", this::show);
        routes.post(PHOTO + "/remove", this::remove);
    }

    private void show(Context ctx) {
        KeptPhoto photo =
                KeptPhoto.of(JobAddress.job(ctx, store)).orElseThrow(() -> Refusal.notFound("that photograph"));
        send(ctx, photo.jpeg());
    }

    private void remove(Context ctx) {
        JobId id = JobAddress.job(ctx, store).id();
        store.edit(id, kept -> {
            KeptPhoto photo = KeptPhoto.of(kept).orElseThrow(() -> Refusal.notFound("that photograph"));
            return Edit.of(
                    "take out the photograph " + photo.name(),
                    Change.without(new Subject(Subject.Kind.PHOTO, photo.name())));
        });
        ctx.redirect(JobAddress.address(id), HttpStatus.SEE_OTHER);
    }

    static void send(Context ctx, byte[] bytes) {
        ctx.header("Cache-Control", "private, max-age=86400")
                .contentType("image/jpeg")
                .result(bytes);
    }
}
