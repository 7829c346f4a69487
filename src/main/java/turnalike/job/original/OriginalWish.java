package turnalike.job.original;

import java.util.Optional;
import turnalike.photo.PhotoWish;
import turnalike.trace.Snap;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What somebody said of an original besides giving it.
 *
 * @param units how bare numbers in it are read, and what is printed in
 * @param span the piece's overall length; a photograph needs it or the sheet, a drawing may have it, a table gives its own
 * @param error one standard deviation of a measured diameter; of a table or a drawing
 * @param snap whether sizes are rounded
 * @param ends where the piece begins and ends in a photograph, if somebody pointed at them
 * @param sheet what is known of the printed sheet in a photograph
 */
public record OriginalWish(
        UnitSystem units,
        Optional<Length> span,
        Optional<Length> error,
        Snap snap,
        Optional<PhotoWish.Ends> ends,
        PhotoWish.OnSheet sheet) {
    /**
     * {@return a wish of one who pointed at nothing}
     *
     * @param units how bare numbers are read
     * @param span the overall length, if given
     * @param error of a measured diameter, if given
     * @param snap whether sizes are rounded
     */
    public static OriginalWish of(UnitSystem units, Optional<Length> span, Optional<Length> error, Snap snap) {
        return new OriginalWish(units, span, error, snap, Optional.empty(), PhotoWish.OnSheet.USUAL);
    }

    /**
     * {@return the same with the ends pointed at}
     *
     * @param pointed in pixels of the upright picture
     */
    public OriginalWish with(Optional<PhotoWish.Ends> pointed) {
        return new OriginalWish(units, span, error, snap, pointed, sheet);
    }

    /**
     * {@return the same with what is known of the printed sheet}
     *
     * @param known of it, in a photograph
     */
    public OriginalWish onSheet(PhotoWish.OnSheet known) {
        return new OriginalWish(units, span, error, snap, ends, known);
    }
}
