package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Which of a job's lengths a piece is made in: the one whose overall length is nearest to what was measured; of a piece whose length was not
 * measured, the one whose letter its label begins with: A7, B-2.
 *
 * @param drawn what a piece as drawn measures
 * @param wanted what one of each length measures, in the order told; empty where all pieces are as drawn
 */
public record LengthsOfPieces(Measures drawn, List<Measures> wanted) {
    /** A length measured this many mark errors off is asked about (common practice, no source). */
    private static final double ASKED_TOLERANCES = 10;

    /** Nearer than that share of the way to the next length it is not doubtful which one is meant (common practice, no source). */
    private static final double DOUBTFUL_SHARE = 0.25;

    private static final int MOST_TOLD = 5;

    public LengthsOfPieces {
        wanted = List.copyOf(wanted);
    }

    /** {@return whether all pieces are as drawn} */
    public boolean isOne() {
        return wanted.isEmpty();
    }

    /**
     * {@return the index of a piece's length; empty where neither its length nor its label tells}
     *
     * @param piece of a job with several lengths
     */
    public Optional<Integer> of(Piece piece) {
        Optional<Integer> nearest = piece.length().map(this::nearest);
        return nearest.or(() -> lettered(piece.label()));
    }

    private int nearest(Length measured) {
        int best = 0;
        for (int i = 1; i < wanted.size(); i++) {
            if (off(measured, i) < off(measured, best)) {
                best = i;
            }
        }
        return best;
    }

    private double off(Length measured, int index) {
        return measured.minus(overall(index)).abs().mm();
    }

    private Length overall(int index) {
        return wanted.get(index).length(Column.LENGTH).orElseThrow();
    }

    private Optional<Integer> lettered(String label) {
        int index = label.toUpperCase(Locale.ROOT).charAt(0) - 'A';
        boolean alone = label.length() == 1 || !Character.isLetter(label.charAt(1));
        return alone && index >= 0 && index < wanted.size() ? Optional.of(index) : Optional.empty();
    }

    /**
     * {@return what to ask about a piece whose measured length is near none of the job's; empty where it is near one, or was not measured}
     *
     * @param piece of a job with several lengths
     * @param mark how far a mark may be off
     * @param units in which lengths are told
     */
    public Optional<String> question(Piece piece, Length mark, UnitSystem units) {
        return piece.length().flatMap(measured -> {
            int index = nearest(measured);
            double apart = Double.POSITIVE_INFINITY;
            for (int i = 0; i < wanted.size(); i++) {
                apart = i == index ? apart : Math.min(apart, off(overall(index), i));
            }
            double near = Math.min(ASKED_TOLERANCES * mark.mm(), DOUBTFUL_SHARE * apart);
            return off(measured, index) <= near
                    ? Optional.empty()
                    : Optional.of("%s is near none of the lengths: is it one of %s (%s)? It is taken as one"
                            .formatted(
                                    measured.formatFine(units),
                                    PieceLength.letter(index),
                                    overall(index).formatFine(units)));
        });
    }

    /** What keeps pieces from being told apart; empty when nothing does. */
    List<Problem> problems(List<Piece> pieces) {
        List<String> unknown = pieces.stream()
                .filter(piece -> !isOne() && of(piece).isEmpty())
                .map(Piece::label)
                .toList();
        if (unknown.isEmpty()) {
            return List.of();
        }
        String more = unknown.size() > MOST_TOLD ? " and %d more".formatted(unknown.size() - MOST_TOLD) : "";
        return List.of(new Problem(
                "piece %s%s"
                        .formatted(String.join(", ", unknown.subList(0, Math.min(MOST_TOLD, unknown.size()))), more),
                "nothing says which of the row's lengths it is made in",
                "fill in its length, or let its label begin with the letter: A for the first, %s for the last"
                        .formatted(PieceLength.letter(wanted.size() - 1))));
    }

    /**
     * {@return the piece as it would measure were it of the drawn length: every measure off by as much as it is off its own; a weight by the
     * same share} So pieces of different lengths can be compared.
     *
     * @param piece whose length is known
     */
    Piece asDrawn(Piece piece) {
        return as(drawn, piece);
    }

    /**
     * {@return the pieces as they would measure were all of the drawn length, to be compared with one another; of one whose length nothing tells,
     * what it measures} The same pieces where all are as drawn.
     *
     * @param pieces of the job
     */
    public List<Piece> allAsDrawn(List<Piece> pieces) {
        return isOne()
                ? pieces
                : pieces.stream()
                        .map(piece -> of(piece).isPresent() ? asDrawn(piece) : piece)
                        .toList();
    }

    /**
     * {@return the pieces as they would measure were all of one of the lengths, without those whose length nothing tells}
     *
     * @param index of that length
     * @param pieces of a job with several lengths
     */
    public List<Piece> allAs(int index, List<Piece> pieces) {
        return pieces.stream()
                .filter(piece -> of(piece).isPresent())
                .map(piece -> as(wanted.get(index), piece))
                .toList();
    }

    private Piece as(Measures meant, Piece piece) {
        Measures own = wanted.get(of(piece).orElseThrow());
        Measures out = Measures.NONE;
        for (Map.Entry<Column, Double> each : piece.measures().figures().entrySet()) {
            Column column = each.getKey();
            OptionalDouble mine = own.figure(column);
            OptionalDouble theirs = meant.figure(column);
            double figure = each.getValue();
            if (mine.isPresent() && theirs.isPresent()) {
                figure = column.isMass()
                        ? figure * theirs.getAsDouble() / mine.getAsDouble()
                        : figure + theirs.getAsDouble() - mine.getAsDouble();
            }
            if (figure > 0) {
                out = column.isMass() ? out.with(Mass.ofGrams(figure)) : out.with(column, Length.ofMm(figure));
            }
        }
        return piece.with(out);
    }

    /** Names of the lengths, as a person knows them. */
    List<String> names(UnitSystem units) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            out.add("length %s (%s)".formatted(PieceLength.letter(i), overall(i).format(units)));
        }
        return out;
    }
}
