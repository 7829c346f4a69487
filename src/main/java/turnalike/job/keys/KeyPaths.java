package turnalike.job.keys;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType.Group;

/** The keys outside the members by their paths: {@code wood.species}, a key and those of the objects around it parted by points. */
public final class KeyPaths {
    /**
     * A key where it stands.
     *
     * @param path its own name and those of the objects around it, from the outside in
     * @param key the key
     * @param mayBeEmpty whether it, or an object around it, may be left out
     */
    public record At(String path, Key<?> key, boolean mayBeEmpty) {}

    private static final List<At> ALL = walked(Optional.empty());

    private static final Map<String, Key<?>> BY_PATH = byPath();

    private KeyPaths() {}

    /** {@return every key, objects before what they hold; a key that several kinds of frame have stands there for each} */
    public static List<At> all() {
        return ALL;
    }

    /**
     * {@return the key at a path, if there is one; of keys that several kinds of frame have, the first}
     *
     * @param path from the outside in, parted by points: {@code wood.species}
     */
    public static Optional<Key<?>> find(String path) {
        return Optional.ofNullable(BY_PATH.get(path));
    }

    /**
     * {@return what a form asks for, in the order of its sections}
     *
     * @param frameKind the word of the job's kind of frame; empty for no frame, of which only the kind is asked
     */
    public static List<At> asked(String frameKind) {
        List<At> all = walked(Optional.of(frameKind));
        List<At> out = new ArrayList<>();
        for (KeySection section : KeySection.values()) {
            all.stream()
                    .filter(at -> section != KeySection.NONE && at.key().field().section() == section)
                    .forEach(out::add);
        }
        return out;
    }

    /** {@return the paths that a form may send, whatever the frame} */
    public static Set<String> askedAnywhere() {
        return ALL.stream()
                .filter(at -> at.key().field().section() != KeySection.NONE)
                .map(At::path)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Map<String, Key<?>> byPath() {
        Map<String, Key<?>> out = new LinkedHashMap<>();
        ALL.forEach(at -> out.putIfAbsent(at.path(), at.key()));
        return out;
    }

    /** @param frameKind the only kind of frame whose keys are wanted; else those of every kind */
    private static List<At> walked(Optional<String> frameKind) {
        List<At> out = new ArrayList<>();
        walk(JobKeys.ROOT, "", false, frameKind, out);
        return List.copyOf(out);
    }

    private static void walk(Group group, String before, boolean optional, Optional<String> kind, List<At> out) {
        for (Key<?> key : group.keys()) {
            String path = before + key.name();
            boolean mayBeEmpty = optional || !key.isNeeded();
            out.add(new At(path, key, mayBeEmpty));
            for (Group inner : key.type().objects(kind)) {
                walk(inner, path + ".", mayBeEmpty, kind, out);
            }
        }
    }
}
