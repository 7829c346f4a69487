package turnalike.turning;

import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/**
 * How the piece is held while it turns.
 *
 * @param by what drives it
 * @param at which of its ends stands at the headstock
 * @param tailstock whether the tailstock's centre, a cup or a pad bears the other end until the last cuts; always between centres
 */
public record Held(By by, At at, boolean tailstock) {
    /** Between centres, the datum end driven: what a job that says nothing gets. */
    public static final Held BETWEEN_CENTRES = new Held(By.CENTRES, At.START, true);

    public Held {
        if (by == By.CENTRES && !tailstock) {
            throw new IllegalArgumentException("between centres there is a tailstock, was told there is none");
        }
    }

    /** What drives the piece. The words are the job file's. */
    public enum By {
        /** A drive centre at one end, the tailstock's centre at the other. */
        CENTRES("centres", "between centres"),

        /** The jaws of a chuck. */
        CHUCK("chuck", "in the chuck"),

        /** A screw up the grain of one end. */
        SCREW("screw", "on the screw"),

        /** A tenon driven into the hole of a jam chuck, held by friction. */
        JAM("jam", "in the jam chuck");

        private final String word;
        private final String where;

        By(String word, String where) {
            this.word = word;
            this.where = where;
        }

        /** {@return the job file's word for it} */
        public String word() {
            return word;
        }

        /** {@return where the piece is, in words: {@code in the chuck}} */
        public String where() {
            return where;
        }
    }

    /** One of the run's two ends. The words are the job file's. */
    public enum At {
        /** The datum end, where the run begins. */
        START("start"),

        /** The far end. */
        END("end");

        private final String word;

        At(String word) {
            this.word = word;
        }

        /** {@return the job file's word for it} */
        public String word() {
            return word;
        }

        /** {@return which end it is, in a sentence: the start or the far end} */
        String side() {
            return this == START ? "start" : "far";
        }

        /** {@return the other end} */
        public At other() {
            return this == START ? END : START;
        }
    }

    /** {@return what that is to the piece as a beam} Jaws, screw and jam chuck are reckoned stiff. */
    Supports supports() {
        if (!byOneEnd()) {
            return Supports.BETWEEN_CENTRES;
        }
        Supports fromStart = tailstock ? Supports.CHUCK_AND_TAILSTOCK : Supports.CHUCK;
        return at == At.START ? fromStart : fromStart.turned();
    }

    /** {@return the same hold with nothing at the other end} Not between centres. */
    Held withoutTailstock() {
        return new Held(by, at, false);
    }

    /** {@return whether one end alone drives and holds the piece, so that it is turned from the other end back} */
    public boolean byOneEnd() {
        return by != By.CENTRES;
    }

    /**
     * {@return whether something bears the piece at that end while it is cut}
     *
     * @param end one of its two ends
     */
    public boolean bears(At end) {
        return end == at || tailstock;
    }

    /** {@return it in words: {@code in the chuck by its start, without the tailstock}} */
    public String text() {
        return text(tailstock ? "with the tailstock" : "without the tailstock");
    }

    /** {@return it in words where the tailstock goes before a point is turned} */
    String textUntilPoint() {
        return text("with the tailstock until the point");
    }

    private String text(String tail) {
        return byOneEnd() ? "%s by its %s, %s".formatted(by.where(), at.word(), tail) : by.where();
    }

    /**
     * {@return what contradicts itself, at {@code where}: between centres without a tailstock}
     *
     * @param where the place in the job
     * @param by what drives the piece
     * @param tailstock whether the other end is borne
     */
    public static Optional<Problem> problem(String where, By by, boolean tailstock) {
        return by == By.CENTRES && !tailstock
                ? Optional.of(new Problem(
                        where, "is away, but the piece is held between centres", "leave it out or hold it by one end"))
                : Optional.empty();
    }

    /**
     * {@return the way that a word of the job file means, if any}
     *
     * @param word as in {@link By#word}
     */
    public static Optional<By> findBy(String word) {
        return List.of(By.values()).stream()
                .filter(each -> each.word().equals(word))
                .findFirst();
    }

    /**
     * {@return the end that a word of the job file means, if any}
     *
     * @param word as in {@link At#word}
     */
    public static Optional<At> findAt(String word) {
        return List.of(At.values()).stream()
                .filter(each -> each.word().equals(word))
                .findFirst();
    }
}
