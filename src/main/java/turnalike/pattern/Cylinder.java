package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A stretch of one diameter.
 *
 * @param length along the axis, above zero
 * @param diameter finished, above zero
 */
public record Cylinder(Length length, Length diameter, Details details) implements Member {
    public Cylinder {
        Faults.refuse("cylinder", faults(length, diameter));
    }

    public static List<Fault> faults(Length length, Length diameter) {
        return Faults.in(length).positive("diameter", diameter).list();
    }

    @Override
    public String kind() {
        return "cylinder";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Line.level(length, diameter.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(new Diameter("diameter", length.times(0.5), diameter));
    }

    @Override
    public Cylinder mirrored() {
        return this;
    }

    @Override
    public Way way() {
        return Way.withSkew("plane straight, from line to line");
    }
}
