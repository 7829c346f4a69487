package turnalike.job.kept;

import java.util.Optional;
import turnalike.units.Length;

/**
 * That a measure was read off a photograph and not off the piece.
 *
 * @param photo the photograph's name, not blank
 * @param accuracy how far the measure may be off either way, when that is known; above zero
 */
public record FromPhoto(String photo, Optional<Length> accuracy) {
    public FromPhoto {
        if (photo.isBlank()) {
            throw new IllegalArgumentException("a photograph's name must not be blank");
        }
        if (accuracy.isPresent() && !accuracy.get().isPositive()) {
            throw new IllegalArgumentException("accuracy must be above zero, was %s mm"
                    .formatted(accuracy.get().mm()));
        }
    }
}
