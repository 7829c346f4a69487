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
    /** What stands outside the forms is called as on its own page. */
    private static final Map<String, String> ELSEWHERE = Map.of(
            "boards", "Boards in hand",
            "blanks", "Blanks weighed",
            "times", "Times taken",
            "price.rate", "Your rate for an hour",
            "price.others", "Charged besides",
            "price.markup_pct", "Markup, %",
            "price.tax_pct", "Tax, %",
            "price.currency", "Currency");

    /** Objects that are told as one: what is in them is worked out, not typed. */
    private static final Map<String, String> AS_ONE =
            Map.of("cut", "How the boards are cut", "by_hand", "The set placed by hand");

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
                .or(() -> Optional.ofNullable(ELSEWHERE.get(path)))
                .orElseGet(() -> inWords(path));
    }

    /** What that field is told together with others as, if it is. */
    static Optional<String> asOne(String path) {
        return AS_ONE.entrySet().stream()
                .filter(each -> path.startsWith(each.getKey() + "."))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether words are typed there, or lines of them: no figure by itself. */
    boolean isTyped(String path) {
        return find(path)
                .filter(key ->
                        !(key.type() instanceof KeyType.Size || key.type().isNumber()))
                .isPresent();
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
