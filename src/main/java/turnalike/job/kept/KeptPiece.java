package turnalike.job.kept;

import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * A piece as it is kept.
 *
 * @param piece the label, what was measured, further columns
 * @param fromPhoto which of the measures came from a photograph; the others were taken on the piece. Only measured columns, not the mass,
 *     else {@link IllegalArgumentException}
 * @param turning how long it took at the lathe, if somebody looked; above zero
 */
public record KeptPiece(Piece piece, SortedMap<Column, FromPhoto> fromPhoto, Optional<Duration> turning) {
    public KeptPiece {
        for (Column column : fromPhoto.keySet()) {
            if (column.isMass() || piece.measures().figure(column).isEmpty()) {
                throw new IllegalArgumentException(
                        "%s of piece %s was not measured from a photograph".formatted(column.format(), piece.label()));
            }
        }
        if (turning.isPresent() && (turning.get().isNegative() || turning.get().isZero())) {
            throw new IllegalArgumentException("turning time must be above zero, was " + turning.get());
        }
        fromPhoto = Collections.unmodifiableSortedMap(new TreeMap<>(fromPhoto));
    }

    /**
     * {@return a piece measured by hand, its time not taken}
     *
     * @param piece with its measures
     */
    public static KeptPiece of(Piece piece) {
        return new KeptPiece(piece, Collections.emptySortedMap(), Optional.empty());
    }

    /**
     * {@return a piece with that label and nothing measured yet}
     *
     * @param label as {@link Piece} takes it
     */
    public static KeptPiece unmeasured(String label) {
        return of(Piece.of(label, Measures.NONE));
    }

    /** {@return the piece's label} */
    public String label() {
        return piece.label();
    }

    /**
     * {@return a copy with these measures taken by hand in place of what was known in their columns; the other columns stay}
     *
     * @param taken by hand
     */
    public KeptPiece with(Measures taken) {
        Measures measures = piece.measures();
        SortedMap<Column, FromPhoto> photographed = new TreeMap<>(fromPhoto);
        for (Map.Entry<Column, Double> each : taken.figures().entrySet()) {
            measures = each.getKey().isMass()
                    ? measures.with(Mass.ofGrams(each.getValue()))
                    : measures.with(each.getKey(), Length.ofMm(each.getValue()));
            photographed.remove(each.getKey());
        }
        return new KeptPiece(piece.with(measures), photographed, turning);
    }

    /**
     * {@return a copy with what another entry of the same piece says in place of what was known: its measures and its further columns}
     *
     * @param entered the same piece, measured by hand
     */
    public KeptPiece with(Piece entered) {
        KeptPiece changed = with(entered.measures());
        Map<String, String> extra = new LinkedHashMap<>(piece.extra());
        extra.putAll(entered.extra());
        Piece whole = new Piece(piece.label(), changed.piece.measures(), extra);
        return new KeptPiece(whole, changed.fromPhoto, turning);
    }

    /**
     * {@return a copy with these lengths read off a photograph in place of what was known in their columns}
     *
     * @param read lengths only: a mass is an {@link IllegalArgumentException}
     * @param source which photograph, and how far it may be off
     */
    public KeptPiece with(Measures read, FromPhoto source) {
        KeptPiece changed = with(read);
        SortedMap<Column, FromPhoto> photographed = new TreeMap<>(changed.fromPhoto);
        read.figures().keySet().forEach(column -> photographed.put(column, source));
        return new KeptPiece(changed.piece, photographed, turning);
    }

    /**
     * {@return a copy with the time it took at the lathe}
     *
     * @param time above zero, else {@link IllegalArgumentException}
     */
    public KeptPiece with(Duration time) {
        return new KeptPiece(piece, fromPhoto, Optional.of(time));
    }
}
