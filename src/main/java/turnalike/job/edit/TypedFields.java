package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.kept.JobText;

/** The fields of a job's text as they were typed, for a form to show; a field that is left out is not among them. */
public final class TypedFields {
    private TypedFields() {}

    /**
     * {@return every field outside the run by its path, such as {@code wood.species}, in the order they stand}
     *
     * @param text the job's
     */
    public static Map<String, String> job(JobText text) {
        Map<String, String> out = new LinkedHashMap<>();
        collect("", JobTree.of(text).root(), out);
        return out;
    }

    private static void collect(String path, JsonNode node, Map<String, String> out) {
        for (Map.Entry<String, JsonNode> each : node.properties()) {
            String at = path + each.getKey();
            Optional<ListFields> list = ListFields.find(at);
            if (each.getValue().isValueNode()) {
                out.put(at, spelled(each.getValue()));
            } else if (list.isPresent()) {
                out.put(at, list.get().spelled(each.getValue()));
            } else if (each.getValue().isObject()) {
                collect(at + ".", each.getValue(), out);
            }
        }
    }

    /**
     * {@return the fields of one member by key; a curve's {@code points} with a pair a line, parted by a semicolon}
     *
     * @param text the job's
     * @param number of the member, from 1; it must be there
     */
    public static Map<String, String> member(JobText text, int number) {
        Map<String, String> out = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> each : JobTree.of(text).member(number).properties()) {
            out.put(each.getKey(), each.getValue().isArray() ? points(each.getValue()) : spelled(each.getValue()));
        }
        return out;
    }

    /** Those of the typed fields that say something else than what is written; a field left out is written as nothing. */
    static Map<String, String> changed(Map<String, String> typed, Map<String, String> written) {
        Map<String, String> out = new LinkedHashMap<>(typed);
        out.entrySet().removeIf(each -> same(each.getKey(), each.getValue(), written));
        return out;
    }

    private static boolean same(String key, String typed, Map<String, String> written) {
        String had = written.getOrDefault(key, "");
        // "false" and no tick are the same; a browser ends lines its own way.
        return typed.strip().replace("\r\n", "\n").equals(had.equals("false") ? "" : had.strip());
    }

    private static String points(JsonNode points) {
        List<String> lines = new ArrayList<>();
        points.forEach(pair -> lines.add(spelled(pair.path(0)) + " ; " + spelled(pair.path(1))));
        return String.join("\n", lines);
    }

    static String spelled(JsonNode node) {
        return node.isNumber() ? node.decimalValue().toPlainString() : node.asText();
    }
}
