package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.units.Length;

/**
 * An S of two quadratic halves, level at its middle and steep at its ends: r = r₁ + ½(r₂ − r₁)(1 − (1 − 2u)²) to the middle, then
 * r₂ − ½(r₂ − r₁)(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 */
public record ReverseOgee(Length length, Length from, Length to, Details details) implements Member {
    public ReverseOgee {
        Faults.refuse("reverse-ogee", faults(length, from, to));
    }

    public static List<Fault> faults(Length length, Length from, Length to) {
        return Faults.in(length).positive("from", from).positive("to", to).list();
    }

    @Override
    public String kind() {
        return "reverse-ogee";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return SCurve.levelAtMiddle(length, from.times(0.5), to.times(0.5));
    }

    @Override
    public List<Diameter> diameters() {
        return Diameters.atEnds(length, from, to);
    }

    @Override
    public ReverseOgee mirrored() {
        return new ReverseOgee(length, to, from, details);
    }

    @Override
    public Way way() {
        return Way.with(Tool.SPINDLE_GOUGE, "cut the S from the thick line down to the thin one");
    }
}
