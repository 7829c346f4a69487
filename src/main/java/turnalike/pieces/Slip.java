package turnalike.pieces;

import java.util.Optional;

/**
 * A figure that reads like a mistake, put as a question. The figure stands as it was given until the user answers.
 *
 * @param where the place, as the user knows it: {@code piece 7, column mass_g}
 * @param kind what kind of mistake it reads like
 * @param question the question, with the figures
 * @param instead the piece with what was probably meant, if that can be said
 */
public record Slip(String where, Kind kind, String question, Optional<Piece> instead) {
    /** The mistakes that are looked for, likeliest explanation first. */
    public enum Kind {
        /** Two columns of one piece changed places. */
        SWAPPED_COLUMNS,
        /** Another unit than the column's: ounces for grams, inches or centimetres for millimetres. */
        WRONG_UNIT,
        /** The decimal point slipped. */
        DECIMAL_POINT,
        /** Two neighbouring digits changed places, a digit too many, or one digit wrong. */
        DIGIT,
        /** Far from the others, with no explanation found. */
        FAR_OFF,
        /** A place on the piece that lies past its end. */
        PAST_THE_END,
        /** The same figures as the piece before: entered twice. */
        TWICE,
        /** A label that differs from another only in letter case or leading zeros. */
        LABEL,
        /** A header that nearly names a known column, which would be ignored as it is. */
        HEADER,
        /** Weights that are all whole grams, though the scale is said to show tenths. */
        SCALE
    }

    /** The question about a column whose name is nearly one of ours. */
    static Slip ofHeader(String where, boolean mass) {
        return new Slip(
                where,
                Kind.HEADER,
                mass
                        ? "is this the mass? It is ignored unless it is named mass_g or mass_oz"
                        : "is this a measure? It is ignored unless it is named like d1 for a diameter or m1 for a mark",
                Optional.empty());
    }
}
