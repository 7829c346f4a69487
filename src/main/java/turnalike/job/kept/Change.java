package turnalike.job.kept;

import java.util.Optional;

/** What one subject is after an edit. */
public sealed interface Change permits Change.OfJob, Change.OfPiece, Change.OfPhoto {
    /** {@return what is changed} */
    Subject subject();

    /** {@return what it is now, as text to be kept; empty when it is taken out} The inverse of {@link #read}. */
    Optional<String> document();

    /**
     * Another text of the job; every text it ever had stays in the history.
     *
     * @param text the job file as it is now
     */
    record OfJob(JobText text) implements Change {
        @Override
        public Subject subject() {
            return Subject.JOB;
        }

        @Override
        public Optional<String> document() {
            return Optional.of(text.text());
        }
    }

    /**
     * A piece logged, corrected, or taken out.
     *
     * @param label the piece's, not blank, else {@link IllegalArgumentException}
     * @param piece with that label, as it is now; empty when it is taken out
     */
    record OfPiece(String label, Optional<KeptPiece> piece) implements Change {
        public OfPiece {
            if (label.isBlank() || (piece.isPresent() && !piece.get().label().equals(label))) {
                throw new IllegalArgumentException("'%s' is not the piece's label".formatted(label));
            }
        }

        @Override
        public Subject subject() {
            return new Subject(Subject.Kind.PIECE, label);
        }

        @Override
        public Optional<String> document() {
            return piece.map(each -> KeptJson.line(PieceDocument.tree(each)));
        }
    }

    /**
     * What a photograph gave, or that it is taken out.
     *
     * @param name the photograph's, not blank, else {@link IllegalArgumentException}
     * @param result of that name, as it is now; empty when it is taken out
     */
    record OfPhoto(String name, Optional<PhotoResult> result) implements Change {
        public OfPhoto {
            if (name.isBlank() || (result.isPresent() && !result.get().name().equals(name))) {
                throw new IllegalArgumentException("'%s' is not the photograph's name".formatted(name));
            }
        }

        @Override
        public Subject subject() {
            return new Subject(Subject.Kind.PHOTO, name);
        }

        @Override
        public Optional<String> document() {
            return result.map(PhotoResult::json);
        }
    }

    /**
     * {@return that the job's text is now another}
     *
     * @param text the job file
     */
    static Change of(JobText text) {
        return new OfJob(text);
    }

    /**
     * {@return that a piece is now as it is here, whether it was logged before or not}
     *
     * @param piece as it is to be kept
     */
    static Change of(KeptPiece piece) {
        return new OfPiece(piece.label(), Optional.of(piece));
    }

    /**
     * {@return that a photograph gave this, whether it was read before or not}
     *
     * @param result as it is to be kept
     */
    static Change of(PhotoResult result) {
        return new OfPhoto(result.name(), Optional.of(result));
    }

    /**
     * {@return taking the subject out; {@link IllegalArgumentException} for the job's text, without which there is no job}
     *
     * @param subject a piece or a photograph
     */
    static Change without(Subject subject) {
        return read(subject, Optional.empty());
    }

    /**
     * {@return the change that made the subject that document; {@link IllegalArgumentException} says why it cannot be read}
     *
     * @param subject what was changed
     * @param document as {@link #document} gave it; empty when the subject was taken out
     */
    static Change read(Subject subject, Optional<String> document) {
        return switch (subject.kind()) {
            case JOB ->
                new OfJob(document.map(JobText::read)
                        .flatMap(JobText.Read::text)
                        .orElseThrow(() -> new IllegalArgumentException("the job's text is no job file")));
            case PIECE ->
                new OfPiece(
                        subject.name(),
                        document.map(text -> PieceDocument.piece(subject.name(), KeptJson.object(text))));
            case PHOTO -> new OfPhoto(subject.name(), document.map(text -> new PhotoResult(subject.name(), text)));
        };
    }
}
