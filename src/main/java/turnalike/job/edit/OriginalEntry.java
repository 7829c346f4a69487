package turnalike.job.edit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.kept.PhotoResult;
import turnalike.job.kept.Replay;
import turnalike.job.kept.Subject;

/** A traced original taken as a pattern, with its photograph where there is one. */
public final class OriginalEntry {
    /** Any: a job that is kept beside gets one of its own. */
    private static final String ANY_ID = "2222-2222-2222";

    private OriginalEntry() {}

    /**
     * {@return the edit that gives a kept job the copied pattern and its photograph in place of those it had; one undo takes both back}
     *
     * @param kept the job
     * @param text the job's with the pattern copied
     * @param name what it was copied from
     * @param photo of the original, if it is kept; one of an earlier original goes
     */
    public static Edit into(KeptJob kept, JobText text, String name, Optional<KeptPhoto> photo) {
        List<Change> changes = new ArrayList<>();
        changes.add(Change.of(text));
        for (PhotoResult each : kept.photos()) {
            boolean stays = photo.map(KeptPhoto::name).equals(Optional.of(each.name()));
            if (!stays && isPicture(each)) {
                changes.add(Change.without(new Subject(Subject.Kind.PHOTO, each.name())));
            }
        }
        photo.ifPresent(each -> changes.add(Change.of(each.result())));
        return new Edit("copy the pattern from " + name, changes);
    }

    private static boolean isPicture(PhotoResult result) {
        try {
            return KeptPhoto.in(result).isPresent();
        } catch (IllegalArgumentException cannotBeShown) {
            return true;
        }
    }

    /**
     * {@return a new job of the pattern copied, its photograph kept in a second step, so that an undo takes that out alone}
     *
     * @param now the time
     * @param text the job's
     * @param name what it was copied from
     * @param photo of the original, if it is kept
     */
    public static GivenJob begun(Instant now, JobText text, String name, Optional<KeptPhoto> photo) {
        Instant at = now.truncatedTo(ChronoUnit.MILLIS);
        Replay replay = new Replay();
        replay.edit(at, Edit.of("copy the pattern from " + name, Change.of(text)));
        photo.ifPresent(
                each -> replay.edit(at, Edit.of("keep the photograph " + each.name(), Change.of(each.result()))));
        return new GivenJob(JobId.parse(ANY_ID).get(), replay.history());
    }
}
