package turnalike.drawing.svg;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import turnalike.language.Speech;

/**
 * Shapes that belong together, moved as one.
 *
 * @param rightMm how far they are moved to the right
 * @param downMm how far they are moved down
 * @param attributes what a page finds them by: {@code class}, {@code data-member}; written in the order of their names
 * @param tip what a pointer resting on them shows, such as the same length in the other unit
 */
public record Group(
        double rightMm, double downMm, Map<String, String> attributes, Optional<String> tip, List<Shape> shapes)
        implements Shape {
    private static final Pattern FINDABLE = Pattern.compile("class|role|data-[a-z-]+");

    public Group {
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
        tip = tip.map(Speech::of);
        shapes = List.copyOf(shapes);
        for (String name : attributes.keySet()) {
            if (!FINDABLE.matcher(name).matches()) {
                throw new IllegalArgumentException("a group's attribute is class, role or data-…, was " + name);
            }
        }
    }

    /** A whole picture or part of one, set at a place of another. */
    public static Group at(double rightMm, double downMm, List<Shape> shapes) {
        return new Group(rightMm, downMm, Map.of(), Optional.empty(), shapes);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.group(this);
    }
}
