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

    public Sizes with(String key, Length length) {
        Map<String, Length> more = new LinkedHashMap<>(lengths);
        more.put(key, length);
        return new Sizes(more, points, details);
    }

    public Sizes with(List<FreeCurve.Point> these) {
        return new Sizes(lengths, these, details);
    }

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

    /** The size of that key, if it is there. */
    public Optional<Length> find(String key) {
        return Optional.ofNullable(lengths.get(key));
    }
}
