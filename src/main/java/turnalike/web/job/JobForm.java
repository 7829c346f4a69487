package turnalike.web.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.edit.TypedFields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.units.UnitSystem;
import turnalike.web.job.FieldView.Look;
import turnalike.web.kit.FiguresIn;

/** The form of what is outside the run, in groups. */
public final class JobForm {
    /**
     * Fields that belong together.
     *
     * @param section which it is
     * @param fields in the order a person fills them in
     */
    public record Group(KeySection section, List<FieldView> fields) {
        private static final int TOLD = 4;

        public Group {
            fields = List.copyOf(fields);
        }

        public String title() {
            return section.title();
        }

        /** The element's id. */
        public String id() {
            return "panel-" + section.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public boolean isWrong() {
            return fields.stream().anyMatch(FieldView::isWrong);
        }

        /** What is filled in, in a line, for a panel that is folded. */
        public String told() {
            List<String> said = fields.stream()
                    .filter(field -> !field.value().isBlank())
                    .map(field -> field.label() + " " + firstLine(field.value()))
                    .toList();
            String more = said.size() > TOLD ? "; and %d more".formatted(said.size() - TOLD) : "";
            return said.isEmpty() ? "as usual" : said.stream().limit(TOLD).collect(Collectors.joining("; ")) + more;
        }

        private static String firstLine(String value) {
            String first = value.strip().lines().findFirst().orElse("");
            return first.equals(value.strip()) ? first : first + " …";
        }
    }

    /** What may be sent; anything else is passed over. */
    static final Set<String> FIELDS = KeyPaths.askedAnywhere();

    private JobForm() {}

    /** Where figures stand in the field of that path. */
    static FiguresIn figures(String path) {
        return KeyPaths.find(path).map(key -> Look.of(key.type()).figures()).orElse(FiguresIn.NOWHERE);
    }

    static List<Group> of(JobText text, RefusedEdit attempt) {
        return after(attempt, of(text));
    }

    static List<Group> of(JobText text) {
        Map<String, String> written = TypedFields.job(text);
        Map<KeySection, List<FieldView>> sections = new EnumMap<>(KeySection.class);
        for (KeyPaths.At at : KeyPaths.asked(written.getOrDefault("frame.kind", ""))) {
            sections.computeIfAbsent(at.key().field().section(), section -> new ArrayList<>())
                    .add(field(
                            at, written.getOrDefault(at.path(), ""), text.job().units()));
        }
        List<Group> out = new ArrayList<>();
        sections.forEach((section, fields) -> out.add(new Group(section, fields)));
        return List.copyOf(out);
    }

    /** The same with what was typed last, and what is wrong with it. */
    static List<Group> after(RefusedEdit attempt, List<Group> groups) {
        if (!attempt.form().equals("job")) {
            return groups;
        }
        return groups.stream()
                .map(each -> new Group(each.section(), attempt.onto("job", each.fields())))
                .toList();
    }

    private static FieldView field(KeyPaths.At at, String value, UnitSystem units) {
        Key.Field field = at.key().field();
        return FieldView.of(Look.of(at.key().type()), at.path(), field.label(), value, units)
                .hint(field.hint())
                .with(at.key().type().choices(at.mayBeEmpty()));
    }
}
