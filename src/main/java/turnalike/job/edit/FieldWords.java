package turnalike.job.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;

/** What the fields of a job are called on its form, by their paths in the job file. */
final class FieldWords {
    private final Map<String, Key<?>> asked = new LinkedHashMap<>();
    private final String units;

    private FieldWords(String units) {
        this.units = units;
    }

    /** The words of the texts' kinds of frame; where both have a field, the first's. */
    static FieldWords of(JobText... texts) {
        FieldWords words = new FieldWords(texts[0].job().units().symbol());
        for (JobText text : texts) {
            String kind = TypedFields.job(text).getOrDefault("frame.kind", "");
            KeyPaths.asked(kind).forEach(at -> words.asked.putIfAbsent(at.path(), at.key()));
        }
        return words;
    }

    private Optional<Key<?>> find(String path) {
        return Optional.<Key<?>>ofNullable(asked.get(path)).or(() -> KeyPaths.find(path));
    }

    /** The heading of the part of the form that the field stands in; empty for one that no form asks for. */
    String section(String path) {
        return find(path).map(key -> key.field().section().title()).orElse("");
    }

    /** What the form calls the field; its key in words where no form asks for it. */
    String label(String path) {
        return find(path)
                .map(key -> key.field().label())
                .filter(label -> !label.isEmpty())
                .orElseGet(() -> inWords(path));
    }

    /** The unit of a length; empty for all else. */
    String unit(String path) {
        return find(path).filter(key -> key.type() instanceof KeyType.Size).isPresent() ? units : "";
    }

    /** What the form calls a field of a member. */
    static String ofMember(MemberKind kind, String key) {
        return switch (key) {
            case MemberKey.NAME -> "Name";
            case MemberKey.BY_EYE -> "Cut by eye, not measured";
            default ->
                kind.keys().stream()
                        .filter(each -> each.name().equals(key))
                        .map(MemberKey::label)
                        .findFirst()
                        .orElseGet(() -> inWords(key));
        };
    }

    private static String inWords(String path) {
        return path.replace(".", ", ").replace('_', ' ');
    }
}
