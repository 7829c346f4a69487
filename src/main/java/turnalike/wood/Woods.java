package turnalike.wood;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
     * {@return the wood of that name: exactly, or the only one that the words given can mean; else a refusal that lists all they can mean,
     * or offers the names nearest to them}
     *
     * @param name as a person gave it; capitals and punctuation do not count
     */
    public Parsed<Species> read(String name) {
        List<Species> meant = meant(name);
        if (meant.size() == 1) {
            return Parsed.of(meant.get(0));
        }
        if (!meant.isEmpty()) {
            return Parsed.refused(
                    "'%s' may be any of %d woods in the table".formatted(name, meant.size()),
                    "name the one it is: " + String.join(", ", names(meant)));
        }
        List<String> near = NearNames.of(name, byName.keySet());
        String offer = near.isEmpty()
                ? "choose a wood from the table, or give a density"
                : "did you mean " + String.join(", ", near) + "? Or give a density";
        return Parsed.refused("no wood in the table is named '%s'".formatted(name), offer);
    }

    /** Those it can mean: of the name as printed, else of a whole name, else of a part of one. */
    private List<Species> meant(String name) {
        Optional<Species> exact = find(name);
        if (exact.isPresent()) {
            return List.of(exact.get());
        }
        List<String> asked = NearNames.words(name);
        List<Species> whole = listWhere(each -> each.is(asked));
        return whole.isEmpty() ? listWhere(each -> each.has(asked)) : whole;
    }

    private List<Species> listWhere(Predicate<CommonName> named) {
        return byName.values().stream()
                .filter(each -> named.test(CommonName.of(each.name())))
                .toList();
    }

    private static List<String> names(List<Species> woods) {
        return woods.stream().map(Species::name).toList();
    }

    /** Holds the table so that a class path without it fails on use, not on loading {@link Woods}. */
    private static final class Shipped {
        private static final Woods WOODS = WoodTable.load();
    }
}
