package turnalike.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.units.Length;

/**
 * What a member is made from, by the keys of its kind.
 *
 * @param lengths in the order of the keys
 * @param points of a kind that is given by points; else none
 * @param details what every member may carry
 */
public record Sizes(Map<String, Length> lengths, List<FreeCurve.Point> points, Details details) {
    /** No sizes yet. */
    public static final Sizes NONE = new Sizes(Map.of(), List.of(), Details.NONE);

    public Sizes {
        lengths = Collections.unmodifiableMap(new LinkedHashMap<>(lengths));
        points = List.copyOf(points);
    }

    /**
     * {@return a copy with that size, in place of the one that key had or after all others}
     *
     * @param key as in a job file
     * @param length the size; whether a member can have it is asked later, with {@link MemberKind#faults}
     */
    public Sizes with(String key, Length length) {
        Map<String, Length> more = new LinkedHashMap<>(lengths);
        more.put(key, length);
        return new Sizes(more, points, details);
    }

    /**
     * {@return a copy with those points in place of its own}
     *
     * @param these from the member's start on; none for a kind that is not given by points
     */
    public Sizes with(List<FreeCurve.Point> these) {
        return new Sizes(lengths, these, details);
    }

    /**
     * {@return a copy with those details in place of its own}
     *
     * @param these its own name, and whether it is turned by eye
     */
    public Sizes with(Details these) {
        return new Sizes(lengths, points, these);
    }

    /** Along the axis. */
    Length length() {
        return size(MemberKey.LENGTH);
    }

    /** The size of that key, which is there. */
    Length size(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no size %s in %s".formatted(key, lengths)));
    }

    /**
     * {@return the size of that key, if it is there}
     *
     * @param key as in a job file
     */
    public Optional<Length> find(String key) {
        return Optional.ofNullable(lengths.get(key));
    }
}
