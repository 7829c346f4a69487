package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A short, flat-topped step of one diameter that sets off a bead or a cove.
 *
 * @param length along the axis, above zero
 * @param diameter finished, above zero
 */
public record Fillet(Length length, Length diameter, Details details) implements Member {
    public Fillet {
        Faults.refuse("fillet", faults(length, diameter));
    }

    public static List<Fault> faults(Length length, Length diameter) {
        return Faults.in(length).positive("diameter", diameter).list();
    }

    @Override
    public String kind() {
        return "fillet";
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
    public Fillet mirrored() {
        return this;
    }

    @Override
    public Way way() {
        return Way.with(Tool.PARTING_TOOL, "cut the flat between its lines");
    }
}
