package turnalike.web.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.units.Problem;

/**
 * An edit that was refused: what was typed stays in the form, with each problem beside its field.
 *
 * @param form which form was sent: {@code member} or {@code job}
 * @param typed the fields as they were sent and not kept
 * @param problems why they were not kept; empty when nothing was refused
 * @param kept the field that was kept just now, perhaps beside others that were refused
 */
record RefusedEdit(String form, Map<String, String> typed, List<Problem> problems, Optional<String> kept) {
    static final RefusedEdit NONE = new RefusedEdit("", Map.of(), List.of());

    RefusedEdit(String form, Map<String, String> typed, List<Problem> problems) {
        this(form, typed, problems, Optional.empty());
    }

    /** Nothing was refused, and that field was kept. */
    static RefusedEdit keeping(String form, String field) {
        return new RefusedEdit(form, Map.of(), List.of(), Optional.of(field));
    }

    /** The same refusal, beside one field that was kept all the same. */
    RefusedEdit beside(String field) {
        Map<String, String> left = new LinkedHashMap<>(typed);
        left.remove(field);
        return new RefusedEdit(form, left, problems, Optional.of(field));
    }

    RefusedEdit {
        typed = Map.copyOf(typed);
        problems = List.copyOf(problems);
    }

    /** The fields, each with what was typed and what is wrong with it. */
    List<FieldView> onto(String thisForm, List<FieldView> fields) {
        if (!thisForm.equals(form)) {
            return fields;
        }
        return fields.stream()
                .map(field -> field.typed(Optional.ofNullable(typed.get(field.name())), wrong(field.name()))
                        .kept(kept.filter(field.name()::equals).isPresent()))
                .toList();
    }

    private Optional<String> wrong(String name) {
        return problems.stream()
                .filter(problem -> isAt(problem, name))
                .map(problem -> problem.what() + "; " + problem.mend())
                .findFirst();
    }

    /** A problem names its place as the job file does: {@code member 3 (ring): crown}, {@code wood: moisture_pct}. */
    private static boolean isAt(Problem problem, String name) {
        String where = problem.where();
        String key = name.substring(name.lastIndexOf('.') + 1);
        String path = name.replace(".", ": ");
        return where.equals(path)
                || where.startsWith(path + " ")
                || where.startsWith(path + ": ")
                || (where.startsWith("member ") && where.endsWith(": " + key))
                || (key.equals("points") && where.contains(": point"));
    }

    /** What belongs to no field of that form. */
    List<Problem> others(List<FieldView> fields) {
        List<Problem> out = new ArrayList<>(problems);
        out.removeIf(problem -> fields.stream().anyMatch(field -> isAt(problem, field.name())));
        return out;
    }
}
