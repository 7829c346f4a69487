package turnalike.drawing.frame;

import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Svg;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A set in its places, as a picture and as a list. */
public sealed interface PlacesDrawing permits WheelDrawing, RowDrawing {
    /** The picture, as wide as asked (60 mm or more, else {@link IllegalArgumentException}) and as high as it needs. */
    Svg svg(Length width);

    /** Every place with its piece, in order. */
    List<Place> places();

    /** A place's number as it is lettered. */
    default String numberText(Place place) {
        return Integer.toString(place.number());
    }

    /**
     * One place.
     *
     * @param number from 1
     * @param angle where it stands, on a wheel
     * @param piece its label
     * @param mass as weighed, in the words of the scale, {@code 412.3 g}; empty when it was not
     */
    record Place(int number, Optional<Angle> angle, String piece, Optional<String> mass) {
        /** The mass as lettered, {@code 412.3 g}; empty when the piece was not weighed. */
        public String massText() {
            return mass.orElse("");
        }

        /** The angle as lettered, {@code 30°} or {@code 51.4°}; empty off a wheel. */
        public String angleText() {
            return angle.map(Angle::format).orElse("");
        }

        String tip() {
            String weight = massText();
            return "place %d%s: piece %s%s"
                    .formatted(
                            number,
                            angle.isPresent() ? " at " + angleText() : "",
                            piece,
                            weight.isEmpty() ? "" : ", " + weight);
        }
    }
}
