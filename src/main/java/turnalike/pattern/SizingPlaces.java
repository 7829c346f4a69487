package turnalike.pattern;

import java.util.List;
import turnalike.pattern.Member.Diameter;
import turnalike.units.Length;

/** The usual places at which members are sized. */
final class SizingPlaces {
    private SizingPlaces() {}

    static List<Diameter> atEnds(Length length, Length from, Length to) {
        return List.of(new Diameter("from", Length.ZERO, from), new Diameter("to", length, to));
    }

    /** Both edges of one size and a middle of another. */
    static List<Diameter> edgesAndMiddle(Length length, String edgeKey, Length edge, String middleKey, Length middle) {
        return List.of(
                new Diameter(edgeKey, Length.ZERO, edge),
                new Diameter(middleKey, length.times(0.5), middle),
                new Diameter(edgeKey, length, edge));
    }
}
