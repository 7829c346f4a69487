package turnalike.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A client that knows nothing but the description: which addresses there are, what is sent and what comes back. */
final class DescribedClient {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonSchemaFactory SCHEMAS = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

    private HttpClient http = HttpClient.newHttpClient();
    private final String server;
    private final JsonNode description;
    private final Optional<String> token;
    private Optional<String> language = Optional.empty();

    /** What earlier answers said, by its name: a job's id, its version. */
    private final Map<String, String> seen = new HashMap<>();

    DescribedClient(String server, Optional<String> token) throws IOException, InterruptedException {
        this.server = server;
        this.token = token;
        this.description = MAPPER.readTree(send(HttpRequest.newBuilder(URI.create(server + "/openapi.json")))
                .body());
    }

    /** One operation of the description. */
    record Asked(String verb, String path, JsonNode told) {
        String name() {
            return told.get("operationId").textValue();
        }

        boolean sends() {
            return told.has("requestBody");
        }

        boolean asks(String param) {
            return told.path("parameters").findValuesAsText("name").contains(param);
        }
    }

    JsonNode description() {
        return description;
    }

    List<Asked> operations() {
        List<Asked> out = new ArrayList<>();
        description.get("paths").properties().forEach(path -> path.getValue()
                .properties()
                .forEach(each ->
                        out.add(new Asked(each.getKey().toUpperCase(Locale.ROOT), path.getKey(), each.getValue()))));
        return out;
    }

    Asked operation(String name) {
        return operations().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Asks it with its examples; what an earlier answer named stands in their place. */
    HttpResponse<byte[]> call(Asked asked) throws IOException, InterruptedException {
        return call(asked, Map.of(), Optional.empty());
    }

    /** The same with other values of some parameters, and another body if one is given. */
    HttpResponse<byte[]> call(Asked asked, Map<String, String> values, Optional<String> body)
            throws IOException, InterruptedException {
        String path = asked.path();
        StringBuilder query = new StringBuilder();
        for (JsonNode param : asked.told().path("parameters")) {
            String name = param.get("name").textValue();
            String value = values.getOrDefault(
                    name, seen.getOrDefault(name, param.get("example").asText()));
            String written = URLEncoder.encode(value, StandardCharsets.UTF_8);
            if (param.get("in").textValue().equals("path")) {
                path = path.replace("{%s}".formatted(name), written);
            } else {
                query.append(query.isEmpty() ? '?' : '&')
                        .append(name)
                        .append('=')
                        .append(written);
            }
        }
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server + path + query));
        request.method(asked.verb(), publisher(asked, body, request));
        HttpResponse<byte[]> answer = send(request);
        if (body.isPresent()) {
            http = HttpClient.newHttpClient(); // after a form that breaks off the server closes the connection
        }
        if (answer.statusCode() < 300 && isJson(answer)) {
            JsonNode told = MAPPER.readTree(answer.body());
            for (String name : List.of("job", "version")) {
                Optional.ofNullable(told.get(name)).ifPresent(value -> seen.put(name, value.asText()));
            }
        }
        return answer;
    }

    private static HttpRequest.BodyPublisher publisher(
            Asked asked, Optional<String> body, HttpRequest.Builder request) {
        if (!asked.sends()) {
            return HttpRequest.BodyPublishers.noBody();
        }
        Map.Entry<String, JsonNode> content = asked.told()
                .get("requestBody")
                .get("content")
                .properties()
                .iterator()
                .next();
        boolean form = content.getKey().equals("multipart/form-data");
        request.header("Content-Type", form ? "multipart/form-data; boundary=edge" : content.getKey());
        return HttpRequest.BodyPublishers.ofString(body.orElseGet(() -> form
                ? form(content.getValue())
                : content.getValue().get("example").toString()));
    }

    private static String form(JsonNode content) {
        StringBuilder out = new StringBuilder();
        JsonNode fields = content.get("schema").get("properties");
        content.get("example").properties().forEach(each -> {
            String type = fields.get(each.getKey()).path("contentMediaType").asText("");
            String file = type.isEmpty()
                    ? ""
                    : "; filename=\"original.%s\"\r\nContent-Type: %s".formatted(type.substring(5), type);
            out.append("--edge\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n%s\r\n"
                    .formatted(each.getKey(), file, each.getValue().textValue()));
        });
        return out.append("--edge--\r\n").toString();
    }

    /** Asks from now on to be told what is wrong in that language. */
    void speak(String code) {
        language = Optional.of(code);
    }

    HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        language.ifPresent(each -> request.header("Accept-Language", each));
        token.ifPresent(each -> request.header("Authorization", "Bearer " + each));
        return http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    static boolean isJson(HttpResponse<byte[]> answer) {
        return answer.headers().firstValue("Content-Type").orElse("").startsWith("application/json");
    }

    static JsonNode json(HttpResponse<byte[]> answer) throws IOException {
        return MAPPER.readTree(answer.body());
    }

    /** The one good answer that is described, by its status. */
    static Map.Entry<String, JsonNode> reply(Asked asked) {
        return asked.told().get("responses").properties().iterator().next();
    }

    /** What of a value is not as a schema of the description has it. */
    List<String> unlike(JsonNode schema, JsonNode value) {
        ObjectNode whole = MAPPER.createObjectNode();
        whole.set("allOf", MAPPER.createArrayNode().add(schema));
        whole.set("components", description.get("components"));
        return SCHEMAS.getSchema(whole).validate(value).stream()
                .map(each -> each.getMessage())
                .toList();
    }
}
