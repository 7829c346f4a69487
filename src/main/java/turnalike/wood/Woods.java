package turnalike.wood;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.units.Parsed;

/** The table of woods that ships with the project, in its own order, with the key to its sources. */
public final class Woods {
    private final Map<String, Species> byName;
    private final List<Source> sources;

    /** {@link IllegalArgumentException} when two species share a name. */
    Woods(List<Species> species, List<Source> sources) {
        Map<String, Species> map = new LinkedHashMap<>();
        for (Species each : species) {
            if (map.put(each.name(), each) != null) {
                throw new IllegalArgumentException("two woods are named '%s'".formatted(each.name()));
            }
        }
        this.byName = Collections.unmodifiableMap(map);
        this.sources = List.copyOf(sources);
    }

    /** {@return the shipped table; read once, on first use} */
    public static Woods shipped() {
        return Shipped.WOODS;
    }

    /** {@return all woods, in the table's order} */
    public List<Species> list() {
        return List.copyOf(byName.values());
    }

    /** {@return what every source key of a {@link Provenance} stands for} */
    public List<Source> listSources() {
        return sources;
    }

    /**
     * {@return the wood of exactly that name}
     *
     * @param name as the table spells it, capitals counted
     */
    public Optional<Species> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * {@return the wood of exactly that name, or a refusal that offers the names nearest to it, capitals not counted}
     *
     * @param name as a person gave it
     */
    public Parsed<Species> read(String name) {
        Optional<Species> found = find(name);
        if (found.isPresent()) {
            return Parsed.of(found.get());
        }
        List<String> near = NearNames.of(name, byName.keySet());
        String offer = near.isEmpty()
                ? "choose a wood from the table, or give a density"
                : "did you mean " + String.join(", ", near) + "? Or give a density";
        return Parsed.refused("no wood in the table is named '%s'".formatted(name), offer);
    }

    /** Holds the table so that a class path without it fails on use, not on loading {@link Woods}. */
    private static final class Shipped {
        private static final Woods WOODS = WoodTable.load();
    }
}
