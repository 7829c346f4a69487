package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * A stretch left square, arrises kept.
 *
 * @param length along the axis, above zero
 * @param side across the flats, above zero
 */
public record Square(Length length, Length side, Details details) implements Member {
    public Square {
        Faults.refuse("square", faults(length, side));
    }

    public static List<Fault> faults(Length length, Length side) {
        return Faults.in(length).positive("side", side).list();
    }

    @Override
    public String kind() {
        return "square";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Line.level(length, side.times(0.5)));
    }

    @Override
    public Section section() {
        return Section.SQUARE;
    }

    /** None: nothing is sized on what is not turned. */
    @Override
    public List<Diameter> diameters() {
        return List.of();
    }

    @Override
    public Square mirrored() {
        return this;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.square(this);
    }
}
