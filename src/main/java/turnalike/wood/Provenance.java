package turnalike.wood;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the facts of one species were seen and how sure they are.
 *
 * @param keys for each group of facts that has any, the keys of its sources, see {@link Woods#listSources()}
 * @param status {@code VERIFIED}, or that with what is doubtful about the row
 */
public record Provenance(Map<FactGroup, List<String>> keys, String status) {
    private static final String PLAIN = "VERIFIED";

    public Provenance {
        Map<FactGroup, List<String>> copy = new EnumMap<>(FactGroup.class);
        keys.forEach((group, list) -> copy.put(group, List.copyOf(list)));
        keys = Collections.unmodifiableMap(copy); // Map.copyOf would lose the order of the groups
    }

    /** Reads {@code sg:S1+S2|strength:S1}; {@link IllegalArgumentException} if it is written otherwise. */
    static Provenance parse(String source, String status) {
        Map<FactGroup, List<String>> keys = new EnumMap<>(FactGroup.class);
        for (String part : source.split("\\|", -1)) {
            int colon = part.indexOf(':');
            FactGroup group = FactGroup.find(part.substring(0, Math.max(colon, 0)))
                    .orElseThrow(() -> new IllegalArgumentException(
                            "source must be GROUP:KEY+KEY with a known group, was '%s'".formatted(part)));
            keys.put(group, List.of(part.substring(colon + 1).split("\\+", -1)));
        }
        return new Provenance(keys, status);
    }

    /** {@return what is doubtful about the row; empty when every fact of it is plainly verified} */
    public Optional<String> note() {
        return status.equals(PLAIN) ? Optional.empty() : Optional.of(status);
    }

    /** {@code specific gravity S1+S2+S8, shrinkage S4+S5}: the sources of those groups, for a working. */
    String cite(FactGroup... groups) {
        List<String> parts = new ArrayList<>();
        for (FactGroup group : groups) {
            List<String> seenIn = keys.getOrDefault(group, List.of());
            if (!seenIn.isEmpty()) {
                parts.add(group.text() + " " + String.join("+", seenIn));
            }
        }
        return parts.isEmpty() ? "no facts" : String.join(", ", parts);
    }
}
