package turnalike.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import turnalike.job.answer.PlainJson;
import turnalike.web.api.Operation.Param;

/** The operations as a description that programs read (OpenAPI 3.1, from memory; the tests' client reads it back). */
final class Description {
    private static final Map<String, ?> PROBLEM = Map.of("$ref", "#/components/schemas/Problem");

    private Description() {}

    /** The description's text. */
    static String of(List<Operation> operations, boolean tokens) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("openapi", "3.1.0");
        out.put("info", info(tokens));
        out.put("servers", List.of(Map.of("url", "/api")));
        Map<String, Map<String, Object>> paths = new LinkedHashMap<>();
        for (Operation each : operations) {
            paths.computeIfAbsent(each.path(), path -> new LinkedHashMap<>())
                    .put(each.verb().name().toLowerCase(Locale.ROOT), operation(each));
        }
        out.put("paths", paths);
        Map<String, Object> schemas = new LinkedHashMap<>();
        schemas.put("Problem", problem());
        Map<String, Object> components = new LinkedHashMap<>();
        components.put("schemas", schemas);
        if (tokens) {
            components.put("securitySchemes", Map.of("device", Map.of("type", "http", "scheme", "bearer")));
            out.put("security", List.of(Map.of("device", List.of()), Map.of()));
        }
        out.put("components", components);
        return PlainJson.print(out);
    }

    private static Map<String, Object> info(boolean tokens) {
        Map<String, Object> info = new LinkedHashMap<>();
        info.put("title", "Turnalike");
        info.put("version", "1");
        info.put(
                "description",
                "Jobs that are kept, their logs and what follows from them, as the command line answers with --json. Lengths in mm, masses in g."
                        + " What is wrong is answered with 4xx and the command line's own line. An example value of a job, version or"
                        + " piece stands for what an earlier answer has under that name."
                        + (tokens ? " From other devices a token is needed; the machine that serves needs none." : ""));
        return info;
    }

    private static Map<String, Object> operation(Operation each) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("operationId", each.name());
        out.put("summary", each.summary());
        if (!each.params().isEmpty()) {
            out.put("parameters", each.params().stream().map(Description::param).toList());
        }
        each.body().ifPresent(body -> {
            Map<String, Object> content = new LinkedHashMap<>();
            content.put("schema", body.schema());
            content.put("example", body.example());
            out.put("requestBody", Map.of("required", true, "content", Map.of(body.type(), content)));
        });
        Map<String, Object> replies = new LinkedHashMap<>();
        replies.put(String.valueOf(each.reply().status()), reply(each.reply()));
        replies.put(
                "4XX",
                Map.of(
                        "description",
                        "What is wrong with what was asked, as the command line says it.",
                        "content",
                        Map.of(Operation.Reply.JSON, Map.of("schema", PROBLEM))));
        out.put("responses", replies);
        return out;
    }

    private static Map<String, Object> param(Param param) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", param.name());
        out.put("in", param.inPath() ? "path" : "query");
        out.put("required", param.needed());
        out.put("description", param.about());
        out.put("schema", param.schema());
        out.put("example", param.example());
        return out;
    }

    private static Map<String, Object> reply(Operation.Reply reply) {
        Map<String, Object> schema = new LinkedHashMap<>();
        boolean object = reply.type().equals(Operation.Reply.JSON);
        schema.put("type", object ? "object" : "string");
        if (!reply.keys().isEmpty()) {
            schema.put("required", reply.keys());
        }
        return Map.of("description", reply.about(), "content", Map.of(reply.type(), Map.of("schema", schema)));
    }

    private static Map<String, Object> problem() {
        Map<String, Object> text = Map.of("type", "string");
        Map<String, Object> parts = new LinkedHashMap<>();
        List.of("where", "what", "mend").forEach(each -> parts.put(each, text));
        Map<String, Object> one =
                Map.of("type", "object", "required", List.copyOf(parts.keySet()), "properties", parts);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("error", text);
        all.putAll(parts);
        all.put("problems", Map.of("type", "array", "items", one));
        return Map.of("type", "object", "required", new ArrayList<>(all.keySet()), "properties", all);
    }
}
