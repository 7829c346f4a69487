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
 * @param sheet what is known of the printed sheet, if it lies there; it is looked for in every picture
 */
public record PhotoWish(Optional<Length> span, Optional<Ends> ends, Optional<Angle> view, OnSheet sheet) {
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

    /**
     * What is known of the printed sheet in the picture.
     *
     * @param bar how long its bar of 100 mm was printed, from 50 to 200 mm; as meant if empty
     * @param height of the piece's axis above the sheet, level; empty for a piece that lies on it or beside it on the same flat top
     * @param without the piece's overall length to go by if no sheet lies there and no span is given, above zero
     */
    public record OnSheet(Optional<Length> bar, Optional<Length> height, Optional<Length> without) {
        /** Printed at its size, the piece lying on it or beside it. */
        public static final OnSheet USUAL = new OnSheet(Optional.empty(), Optional.empty(), Optional.empty());

        public OnSheet {
            bar.ifPresent(length -> {
                if (!(length.mm() >= 50 && length.mm() <= 200)) {
                    throw new IllegalArgumentException(
                            "a bar of 100 mm is printed from 50 to 200 mm long, was " + length.mm() + " mm");
                }
            });
        }

        /**
         * {@return the same, and what to go by if no sheet lies there}
         *
         * @param length the piece's overall length, above zero, if it is known
         */
        public OnSheet orLength(Optional<Length> length) {
            return new OnSheet(bar, height, length);
        }

        /** True lengths on the sheet over those that were meant. */
        double size() {
            return bar.map(length -> length.mm() / 100).orElse(1.0);
        }
    }

    /**
     * Of a picture whose sheet, if one lies there, is as usual.
     *
     * @param span the piece's overall length
     * @param ends where the piece begins and ends in the picture
     * @param view the angle of view across the longer side
     */
    public PhotoWish(Optional<Length> span, Optional<Ends> ends, Optional<Angle> view) {
        this(span, ends, view, OnSheet.USUAL);
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
