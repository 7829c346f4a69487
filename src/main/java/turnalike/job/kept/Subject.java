package turnalike.job.kept;

/**
 * What an edit can touch.
 *
 * @param kind which sort of thing
 * @param name a piece's label or a photograph's name; empty for the job's text
 */
public record Subject(Kind kind, String name) {
    /** The job's own text. */
    public static final Subject JOB = new Subject(Kind.JOB, "");

    /** The sorts, with the word each is written as. */
    public enum Kind {
        /** The job's own text. */
        JOB("job"),
        /** One piece with its measures. */
        PIECE("piece"),
        /** What one photograph gave. */
        PHOTO("photo");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** {@return the word it is written as} */
        public String word() {
            return word;
        }

        /**
         * {@return the kind written so; {@link IllegalArgumentException} when there is none}
         *
         * @param word as {@link #word} gives it
         */
        public static Kind of(String word) {
            for (Kind kind : values()) {
                if (kind.word.equals(word)) {
                    return kind;
                }
            }
            throw new IllegalArgumentException("no subject is of the kind '%s'".formatted(word));
        }
    }

    public Subject {
        if ((kind == Kind.JOB) != name.isEmpty()) {
            throw new IllegalArgumentException("a %s cannot be named '%s'".formatted(kind.word(), name));
        }
    }

    @Override
    public String toString() {
        return kind == Kind.JOB ? "the job's text" : kind.word() + " " + name;
    }
}
