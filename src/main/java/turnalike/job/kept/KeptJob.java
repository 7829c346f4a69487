package turnalike.job.kept;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import turnalike.pieces.Piece;

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
     * @param made the time of its first step
     * @param changed the time of its last step, an undo or a redo too
     * @param steps how many steps its history has
     */
    public record Times(Instant made, Instant changed, int steps) {}

    public KeptJob {
        pieces = List.copyOf(pieces);
        photos = List.copyOf(photos);
    }

    /**
     * {@return the job of what stands, subject by subject; {@link IllegalArgumentException} when its text is missing}
     *
     * @param id the store's name for it
     * @param standing the last change of each subject, in the order the subjects first came
     * @param times when it was made and last changed
     * @param undo what the next undo would take back, if anything
     * @param redo what the next redo would bring again, if anything
     */
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

    /**
     * {@return the job after one more edit; empty after an undo or redo, and when something comes again that was taken out: what stands
     * then, and where, only the history says}
     *
     * @param step the one that comes next to this job
     * @param first those subjects of the step that no step before it named
     */
    public Optional<KeptJob> after(Step step, Set<Subject> first) {
        if (step.did() != Step.Did.EDIT) {
            return Optional.empty();
        }
        if (step.changes().stream().allMatch(change -> change instanceof Change.OfJob)) {
            return Optional.of(edited(into(step), step.what(), step.at()));
        }
        JobText into = text;
        Map<String, KeptPiece> then = new LinkedHashMap<>(byLabel());
        Map<String, PhotoResult> results = new LinkedHashMap<>();
        photos.forEach(each -> results.put(each.name(), each));
        for (Change change : step.changes()) {
            boolean isNew = first.contains(change.subject());
            if (change instanceof Change.OfJob job) {
                into = job.text();
            } else if (change instanceof Change.OfPiece piece && (isNew || then.containsKey(piece.label()))) {
                stand(then, piece.label(), piece.piece());
            } else if (change instanceof Change.OfPhoto photo && (isNew || results.containsKey(photo.name()))) {
                stand(results, photo.name(), photo.result());
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new KeptJob(
                id,
                into,
                List.copyOf(then.values()),
                List.copyOf(results.values()),
                new Times(times.made(), step.at(), times.steps() + 1),
                Optional.of(step.what()),
                Optional.empty()));
    }

    private JobText into(Step step) {
        JobText into = text;
        for (Change change : step.changes()) {
            into = change instanceof Change.OfJob job ? job.text() : into;
        }
        return into;
    }

    private static <T> void stand(Map<String, T> all, String name, Optional<T> now) {
        now.ifPresentOrElse(each -> all.put(name, each), () -> all.remove(name));
    }

    /**
     * {@return the job after one more step that edits its text; there is nothing to redo any more}
     *
     * @param into the text after it
     * @param what was done, in the user's words
     * @param at when
     */
    public KeptJob edited(JobText into, String what, Instant at) {
        Times then = new Times(times.made(), at, times.steps() + 1);
        return new KeptJob(id, into, pieces, photos, then, Optional.of(what), Optional.empty());
    }

    /** {@return what the next piece is called: the number after the highest that any piece bears; {@code 1} where none bears a number} */
    public String nextLabel() {
        long highest = pieces.stream()
                .map(KeptPiece::label)
                .filter(label -> label.matches("\\d{1,9}"))
                .mapToLong(Long::parseLong)
                .max()
                .orElse(0);
        return Long.toString(highest + 1);
    }

    /** {@return the pieces by their labels, in their own order; for whoever asks for many} */
    public Map<String, KeptPiece> byLabel() {
        Map<String, KeptPiece> out = new LinkedHashMap<>();
        pieces.forEach(each -> out.put(each.label(), each));
        return Collections.unmodifiableMap(out);
    }

    /**
     * {@return these pieces as they are once entered: what a table says is taken, what it does not say stays}
     *
     * @param entered measured by hand, of this job or new
     */
    public List<KeptPiece> with(List<Piece> entered) {
        Map<String, KeptPiece> before = byLabel();
        return entered.stream()
                .map(piece -> Optional.ofNullable(before.get(piece.label()))
                        .map(had -> had.with(piece))
                        .orElseGet(() -> KeptPiece.of(piece)))
                .toList();
    }

    /**
     * {@return the piece of a label; one that is not measured yet when none is logged}
     *
     * @param label to the letter
     */
    public KeptPiece piece(String label) {
        return find(label).orElse(KeptPiece.unmeasured(label));
    }

    /**
     * {@return the piece of a label; empty when none is logged}
     *
     * @param label to the letter
     */
    public Optional<KeptPiece> find(String label) {
        return pieces.stream().filter(each -> each.label().equals(label)).findFirst();
    }
}
