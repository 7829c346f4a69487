package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * Half an ellipse standing on its root: r = root/2 + ½(crown − root)√(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param root diameter at both edges, above zero
 * @param crown diameter at the middle, above the root
 */
public record Bead(Length length, Length root, Length crown, Details details) implements Member {
    public Bead {
        Faults.refuse("bead", faults(length, root, crown));
    }

    public static List<Fault> faults(Length length, Length root, Length crown) {
        return Faults.in(length)
                .positive("root", root)
                .positive("crown", crown)
                .larger("crown", crown, "root", root)
                .list();
    }

    @Override
    public String kind() {
        return "bead";
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length half = length.times(0.5);
        Length rise = crown.minus(root).times(0.5);
        return List.of(new EllipseArc(length, half, half, root.times(0.5), rise));
    }

    @Override
    public List<Diameter> diameters() {
        return Diameters.edgesAndMiddle(length, "root", root, "crown", crown);
    }

    @Override
    public List<Crest> crests() {
        return List.of(new Crest(length.times(0.5), "crest"));
    }

    @Override
    public Bead mirrored() {
        return this;
    }

    @Override
    public Way way() {
        return Way.withSkew("roll from the crown down to each line");
    }

    @Override
    public boolean isRolled() {
        return true;
    }
}
