package turnalike.photo;

import java.util.Optional;
import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * What is known of a photograph beforehand.
 *
 * @param span the piece's overall length; without it there is no scale, and the answer is a refusal that asks for it
 * @param ends where the piece begins and ends in the picture, if the one who asks has pointed at them
 * @param view the angle of view across the longer side of the picture, where it is known better than the camera's data say it
 */
public record PhotoWish(Optional<Length> span, Optional<Ends> ends, Optional<Angle> view) {
    /**
     * The two ends as somebody pointed at them, both on the axis, in pixels of the upright picture.
     *
     * @param start where the profile begins
     * @param end where it ends, apart from {@code start}
     */
    public record Ends(PixelPoint start, PixelPoint end) {
        public Ends {
            if (start.equals(end)) {
                throw new IllegalArgumentException("the two ends are apart, both were at " + start);
            }
        }
    }

    public PhotoWish {
        span.ifPresent(length -> {
            if (!length.isPositive()) {
                throw new IllegalArgumentException("a span is above zero, was " + length.mm() + " mm");
            }
        });
        view.ifPresent(angle -> {
            if (!(angle.degrees() >= 2 && angle.degrees() <= 150)) {
                throw new IllegalArgumentException(
                        "an angle of view is from 2 to 150 degrees, was " + angle.degrees() + " degrees");
            }
        });
    }

    /**
     * The usual case: the piece's length and nothing else.
     *
     * @param span the piece's overall length, above zero
     * @return the wish
     */
    public static PhotoWish ofSpan(Length span) {
        return new PhotoWish(Optional.of(span), Optional.empty(), Optional.empty());
    }
}
