package turnalike.job.answer;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.units.Parsed;
import turnalike.units.Problem;

/** Small JSON objects out of maps, lists, texts, numbers and yes or no, for what no answer of its own is written for. */
public final class PlainJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(JsonParser.Feature.INCLUDE_SOURCE_IN_LOCATION)
            .build();

    private PlainJson() {}

    /**
     * JSON that is put in as it is written.
     *
     * @param text one whole value
     */
    public record Raw(String text) {}

    /**
     * {@return the object's text, ended by a line end}
     *
     * @param object its keys, in the order they are written; what stands in an {@link Optional} that is empty is left out
     */
    public static String print(Map<String, ?> object) {
        return written(node(object)) + "\n";
    }

    /**
     * {@return what is wrong as one object: {@code error}, the line that the command line prints, then its parts and, with several, all}
     *
     * @param problems at least one
     */
    public static String error(List<Problem> problems) {
        Problem first = problems.get(0);
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("error", first.line());
        out.putAll(parts(first));
        out.put("problems", problems.stream().map(PlainJson::parts).toList());
        return print(out);
    }

    private static Map<String, Object> parts(Problem problem) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("where", problem.where());
        out.put("what", problem.what());
        out.put("mend", problem.mend());
        return out;
    }

    private static String written(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of our own could not be printed", impossible);
        }
    }

    private static ObjectNode node(Map<?, ?> object) {
        ObjectNode out = MAPPER.createObjectNode();
        object.forEach((key, value) -> {
            Object plain = value instanceof Optional<?> may ? may.orElse(null) : value;
            if (plain instanceof Map<?, ?> inner) {
                out.set(String.valueOf(key), node(inner));
            } else if (plain instanceof List<?> list) {
                out.set(String.valueOf(key), node(list));
            } else if (plain instanceof Raw raw) {
                out.putRawValue(String.valueOf(key), new RawValue(raw.text()));
            } else if (plain != null) {
                out.putPOJO(String.valueOf(key), plain);
            }
        });
        return out;
    }

    private static ArrayNode node(List<?> list) {
        ArrayNode out = MAPPER.createArrayNode();
        for (Object each : list) {
            if (each instanceof Map<?, ?> inner) {
                out.add(node(inner));
            } else if (each instanceof List<?> inner) {
                out.add(node(inner));
            } else if (each instanceof Raw raw) {
                out.addRawValue(new RawValue(raw.text()));
            } else {
                out.addPOJO(each);
            }
        }
        return out;
    }

    /**
     * {@return the part of a printed answer that stands under a key, as an object's text; empty where there is none}
     *
     * @param text an object's
     * @param key of it
     */
    public static Optional<String> part(String text, String key) {
        try {
            return Optional.ofNullable(MAPPER.readTree(text).get(key)).map(node -> written(node) + "\n");
        } catch (JsonProcessingException notOurs) {
            throw new IllegalArgumentException("no JSON was printed", notOurs);
        }
    }

    /**
     * {@return the object in a text that somebody sent: texts, numbers and yes or no as texts, lists of them and objects as they are}
     *
     * @param text may be anything
     */
    public static Parsed<Map<String, Object>> parse(String text) {
        try {
            if (MAPPER.readTree(text) instanceof ObjectNode object) {
                return Parsed.of(plain(object));
            }
        } catch (JsonProcessingException notJson) {
            return Parsed.refused("is not JSON", "send one JSON object, as the description shows");
        }
        return Parsed.refused("is no JSON object", "begin it with { and end it with }");
    }

    private static Map<String, Object> plain(ObjectNode object) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> each : object.properties()) {
            if (!each.getValue().isNull()) {
                out.put(each.getKey(), plain(each.getValue()));
            }
        }
        return out;
    }

    private static Object plain(JsonNode node) {
        if (node instanceof ObjectNode object) {
            return plain(object);
        } else if (node instanceof ArrayNode array) {
            List<Object> list = new ArrayList<>();
            array.forEach(each -> list.add(plain(each)));
            return list;
        }
        return node.isNumber() ? node.decimalValue().toPlainString() : node.asText();
    }
}
