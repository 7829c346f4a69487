package turnalike.pattern;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * Half an ellipse sunk below its rim: r = rim/2 − ½(rim − bottom)√(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param rim diameter at both edges, above the bottom
 * @param bottom diameter at the middle, above zero
 */
public record Cove(Length length, Length rim, Length bottom, Details details) implements Member {
    public Cove {
        Faults.refuse("cove", faults(length, rim, bottom));
    }

    public static List<Fault> faults(Length length, Length rim, Length bottom) {
        return Faults.in(length)
                .positive("rim", rim)
                .positive("bottom", bottom)
                .larger("rim", rim, "bottom", bottom)
                .list();
    }

    @Override
    public String kind() {
        return "cove";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length half = length.times(0.5);
        Length depth = rim.minus(bottom).times(-0.5);
        return List.of(new EllipseArc(length, half, half, rim.times(0.5), depth));
    }

    @Override
    public List<Diameter> diameters() {
        return Diameters.edgesAndMiddle(length, "rim", rim, "bottom", bottom);
    }

    @Override
    public Optional<Length> crest() {
        return Optional.of(length.times(0.5));
    }

    @Override
    public Cove mirrored() {
        return this;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.cove(this);
    }
}
