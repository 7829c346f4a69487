package turnalike.settings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The open-end wrenches of both unit systems. */
public final class Wrenches {
    /** Two sizes this near stand in for one another: 3/4 in is 19.05 mm. Common practice, no source. */
    public static final Length SAME_SIZE = Length.ofMm(0.1);

    /** Openings in inches: Machinery's Handbook, 27th and 31st editions, from ASME B18.2.2, appendix. */
    private static final List<Wrench> INCH = List.of(
            inch("5/32", 0.158, 0.163),
            inch("3/16", 0.19, 0.195),
            inch("1/4", 0.252, 0.257),
            inch("5/16", 0.316, 0.322),
            inch("11/32", 0.347, 0.353),
            inch("3/8", 0.378, 0.384),
            inch("7/16", 0.44, 0.446),
            inch("1/2", 0.504, 0.51),
            inch("9/16", 0.566, 0.573),
            inch("5/8", 0.629, 0.636),
            inch("11/16", 0.692, 0.699),
            inch("3/4", 0.755, 0.763),
            inch("13/16", 0.818, 0.826),
            inch("7/8", 0.88, 0.888),
            inch("15/16", 0.944, 0.953),
            inch("1", 1.006, 1.015),
            inch("1 1/16", 1.068, 1.077),
            inch("1 1/8", 1.132, 1.142),
            inch("1 1/4", 1.257, 1.267),
            inch("1 5/16", 1.32, 1.331),
            inch("1 7/16", 1.446, 1.457),
            inch("1 1/2", 1.508, 1.52),
            inch("1 5/8", 1.634, 1.646),
            inch("1 11/16", 1.696, 1.708),
            inch("1 13/16", 1.822, 1.835),
            inch("1 7/8", 1.885, 1.898),
            inch("2", 2.011, 2.025));

    /** Sizes sold everywhere, from memory. What they truly open to (ISO 691) was not found, so it is left out. */
    private static final List<Wrench> METRIC = DoubleStream.of(
                    4, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28,
                    30, 32, 34, 36, 38, 41, 46, 50)
            .mapToObj(Wrenches::metric)
            .toList();

    private Wrenches() {}

    private static Wrench inch(String nominal, double leastIn, double mostIn) {
        Length size = Length.parse(nominal, UnitSystem.INCH).fold(length -> length, (what, mend) -> {
            throw new IllegalStateException("wrench size %s %s".formatted(nominal, what));
        });
        Wrench.Opening opening = new Wrench.Opening(Length.ofInches(leastIn), Length.ofInches(mostIn));
        return new Wrench(nominal + " in", size, Optional.of(opening));
    }

    private static Wrench metric(double mm) {
        Length size = Length.ofMm(mm);
        return new Wrench(size.format(UnitSystem.METRIC), size, Optional.empty());
    }

    /** {@return every wrench known, inches first, each system's smallest first} */
    public static List<Wrench> all() {
        List<Wrench> out = new ArrayList<>(INCH);
        out.addAll(METRIC);
        return List.copyOf(out);
    }

    /**
     * {@return the wrenches of a hole's nominal size, the nearest first; none, one, or one of each system}
     *
     * @param hole the hole's diameter
     */
    public static List<Wrench> forHole(Length hole) {
        return all().stream()
                .filter(wrench -> off(wrench, hole) <= SAME_SIZE.mm() + Spans.SLACK_MM)
                .sorted(Comparator.comparing(wrench -> off(wrench, hole)))
                .toList();
    }

    private static double off(Wrench wrench, Length hole) {
        return wrench.nominal().minus(hole).abs().mm();
    }
}
