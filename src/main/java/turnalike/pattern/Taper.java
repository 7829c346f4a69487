package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A straight cone from one diameter to another.
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 */
public record Taper(Length length, Length from, Length to, Details details) implements Member {
    public Taper {
        Faults.refuse("taper", faults(length, from, to));
    }

    public static List<Fault> faults(Length length, Length from, Length to) {
        return Faults.in(length).positive("from", from).positive("to", to).list();
    }

    @Override
    public String kind() {
        return "taper";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(new Line(length, from.times(0.5), to.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return Diameters.atEnds(length, from, to);
    }

    @Override
    public Taper mirrored() {
        return new Taper(length, to, from, details);
    }

    @Override
    public Way way() {
        return Way.withSkew("plane the taper, thick end to thin");
    }
}
