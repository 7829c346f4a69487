package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.job.set.FrameKind;

/**
 * Fields of the job outside the run, as typed.
 *
 * @param values by the path of the field in the job file, its keys parted by points; an empty value takes it out
 */
record JobFields(Map<String, String> values) implements JobEdit {
    public JobFields {
        values = Map.copyOf(values);
    }

    @Override
    public String what(JobText before) {
        return SaidChange.ofJob(values, before);
    }

    @Override
    public JobEdit narrowed(JobText base) {
        return new JobFields(TypedFields.changed(values, TypedFields.job(base)));
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        new TreeMap<>(values).forEach((path, value) -> set(tree.root(), path, value.strip()));
        wood(tree.root());
        frame(tree.root(), text);
        return tree.read();
    }

    /** A wood is a species or a density: the one given takes the other's place. */
    private void wood(ObjectNode root) {
        if (!values.getOrDefault("wood.density_kg_m3", "").isBlank()) {
            set(root, "wood.species", "");
        } else if (!values.getOrDefault("wood.species", "").isBlank()) {
            set(root, "wood.density_kg_m3", "");
        }
    }

    /** Another kind of frame starts from sizes that can be: those of its kind. */
    private void frame(ObjectNode root, JobText before) {
        String kind = values.getOrDefault("frame.kind", "?").strip();
        String had = JobTree.of(before).root().path("frame").path("kind").asText();
        if (kind.equals("?") || kind.equals(had)) {
            return;
        }
        if (kind.isEmpty()) {
            root.remove("frame");
            return;
        }
        ObjectNode frame = FrameKind.find(kind)
                .map(each -> each.start(before.job().count(), before.job().units()))
                .orElseGet(() -> JobTree.object().put("kind", kind));
        root.set("frame", frame);
    }

    private static void set(ObjectNode root, String path, String value) {
        set(root, List.of(path.split("\\.")), path, value);
    }

    /** @param keys of the path, from this object on; an object that is left empty is taken out */
    private static void set(ObjectNode at, List<String> keys, String path, String value) {
        String key = keys.get(0);
        if (keys.size() > 1) {
            boolean there = at.get(key) instanceof ObjectNode;
            if (there || !value.isEmpty()) {
                ObjectNode inner = there ? (ObjectNode) at.get(key) : at.putObject(key);
                set(inner, keys.subList(1, keys.size()), path, value);
                if (inner.isEmpty()) {
                    at.remove(key);
                }
            }
        } else if (value.isEmpty()) {
            at.remove(key);
        } else {
            Optional<ListFields> list = ListFields.find(path);
            at.set(
                    key,
                    list.isPresent()
                            ? list.get().read(value)
                            : isNumber(path) ? JobTree.number(value) : at.textNode(value));
        }
    }

    /** Written as a JSON number where it is one; a length stays text, which carries fractions and units. */
    private static boolean isNumber(String path) {
        return KeyPaths.find(path).map(key -> key.type().isNumber()).orElse(false);
    }
}
