package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.job.edit.TypedFields;
import turnalike.job.kept.JobText;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.units.UnitSystem;
import turnalike.web.job.FieldView.Look;
import turnalike.web.kit.FiguresIn;

/** The form of one member: the keys of its kind, and what every member may carry. */
final class MemberForm {
    /** What may be sent; anything else is passed over. */
    static final Set<String> FIELDS = Stream.concat(
                    Stream.of(MemberKey.NAME, MemberKey.BY_EYE),
                    MemberKind.all().stream()
                            .flatMap(kind -> kind.keys().stream())
                            .map(MemberKey::name))
            .collect(Collectors.toUnmodifiableSet());

    private static final Set<String> FIGURES = MemberKind.all().stream()
            .flatMap(kind -> kind.keys().stream())
            .map(MemberKey::name)
            .collect(Collectors.toUnmodifiableSet());

    private MemberForm() {}

    /** Where figures stand in the field of that name. */
    static FiguresIn figures(String name) {
        return FIGURES.contains(name) ? FiguresIn.ALL : FiguresIn.NOWHERE;
    }

    static List<FieldView> of(JobText text, int number) {
        Map<String, String> written = TypedFields.member(text, number);
        UnitSystem units = text.job().units();
        List<FieldView> out = new ArrayList<>();
        for (MemberKey key :
                text.job().pattern().members().get(number - 1).kind().keys()) {
            String value = written.getOrDefault(key.name(), "");
            out.add(
                    switch (key.type()) {
                        case LENGTH ->
                            FieldView.length(key.name(), key.label(), value, units)
                                    .hint(key.hint());
                        case POINTS -> FieldView.of(Look.TABLE, key.name(), key.label(), value);
                    });
        }
        out.add(FieldView.of(Look.TEXT, MemberKey.NAME, "Name", written.getOrDefault(MemberKey.NAME, "")));
        out.add(FieldView.of(
                Look.TICK, MemberKey.BY_EYE, "Cut by eye, not measured", written.getOrDefault(MemberKey.BY_EYE, "")));
        return out;
    }
}
