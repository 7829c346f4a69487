package turnalike.job.kept;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A job as it stands.
 *
 * @param id the store's name for it
 * @param text the job file
 * @param pieces in the order they were first logged
 * @param photos in the order they first came
 * @param times when it was made and last changed
 * @param undo what the next undo would take back, in the words of the edit; empty when there is nothing to undo
 * @param redo what the next redo would bring again
 */
public record KeptJob(
        JobId id,
        JobText text,
        List<KeptPiece> pieces,
        List<PhotoResult> photos,
        Times times,
        Optional<String> undo,
        Optional<String> redo) {

    /**
     * When a job was made and last changed.
     *
     * @param steps how many steps its history has
     */
    public record Times(Instant made, Instant changed, int steps) {}

    public KeptJob {
        pieces = List.copyOf(pieces);
        photos = List.copyOf(photos);
    }

    /** The job of what stands, subject by subject; {@link IllegalArgumentException} when its text is missing. */
    public static KeptJob of(
            JobId id, List<Change> standing, Times times, Optional<String> undo, Optional<String> redo) {
        Optional<JobText> text = Optional.empty();
        List<KeptPiece> pieces = new ArrayList<>();
        List<PhotoResult> photos = new ArrayList<>();
        for (Change change : standing) {
            if (change instanceof Change.OfJob job) {
                text = Optional.of(job.text());
            } else if (change instanceof Change.OfPiece piece) {
                piece.piece().ifPresent(pieces::add);
            } else if (change instanceof Change.OfPhoto photo) {
                photo.result().ifPresent(photos::add);
            }
        }
        return new KeptJob(
                id,
                text.orElseThrow(() -> new IllegalArgumentException("job %s has no text".formatted(id))),
                pieces,
                photos,
                times,
                undo,
                redo);
    }

    /** The job after the step that comes next to it, when that edits the text alone; empty after any other. */
    public Optional<KeptJob> after(Step step) {
        if (step.did() != Step.Did.EDIT
                || step.changes().size() != 1
                || !(step.changes().get(0) instanceof Change.OfJob job)) {
            return Optional.empty();
        }
        return Optional.of(edited(job.text(), step.what(), step.at()));
    }

    /** The job after one more step that edits its text. */
    public KeptJob edited(JobText into, String what, Instant at) {
        Times then = new Times(times.made(), at, times.steps() + 1);
        return new KeptJob(id, into, pieces, photos, then, Optional.of(what), Optional.empty());
    }

    /** What the next piece is called: the number after the highest that any piece bears. */
    public String nextLabel() {
        long highest = pieces.stream()
                .map(KeptPiece::label)
                .filter(label -> label.matches("\\d{1,9}"))
                .mapToLong(Long::parseLong)
                .max()
                .orElse(0);
        return Long.toString(highest + 1);
    }

    /** The piece of that label; one that is not measured yet when none is logged. */
    public KeptPiece piece(String label) {
        return find(label).orElse(KeptPiece.unmeasured(label));
    }

    /** The piece of that label. */
    public Optional<KeptPiece> find(String label) {
        return pieces.stream().filter(each -> each.label().equals(label)).findFirst();
    }
}
