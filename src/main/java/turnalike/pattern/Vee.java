package turnalike.pattern;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A cut straight down to a point halfway and straight up again.
 *
 * @param length along the axis, above zero
 * @param rim diameter at both edges, above the bottom
 * @param bottom diameter at the point, above zero
 */
public record Vee(Length length, Length rim, Length bottom, Details details) implements Member {
    public Vee {
        Faults.refuse("vee", faults(length, rim, bottom));
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
        return "vee";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length half = length.times(0.5);
        return List.of(
                new Line(half, rim.times(0.5), bottom.times(0.5)), new Line(half, bottom.times(0.5), rim.times(0.5)));
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
    public Vee mirrored() {
        return this;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.vee(this);
    }
}
