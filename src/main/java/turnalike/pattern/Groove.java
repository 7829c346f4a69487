package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A square-walled groove with a level bottom.
 *
 * @param length along the axis, above zero
 * @param rim diameter of the walls' tops, above the bottom
 * @param bottom diameter all along, above zero
 */
public record Groove(Length length, Length rim, Length bottom, Details details) implements Member {
    public Groove {
        Faults.refuse("groove", faults(length, rim, bottom));
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
        return "groove";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Line.level(length, bottom.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(new Diameter("bottom", length.times(0.5), bottom));
    }

    @Override
    public Groove mirrored() {
        return this;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.groove(this);
    }
}
