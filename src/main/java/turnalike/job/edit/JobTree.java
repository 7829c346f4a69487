package turnalike.job.edit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.job.kept.JobText;

/** A job's text as a tree that one edit works on, and back to text a person can read: what fits on a line stands on a line. */
final class JobTree {
    private static final int LINE = 118;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private final ObjectNode root;

    private JobTree(ObjectNode root) {
        this.root = root;
    }

    /** The tree of a text that was read as a job before. */
    static JobTree of(JobText text) {
        String plain = text.text().startsWith("\ufeff") ? text.text().substring(1) : text.text();
        try {
            return new JobTree((ObjectNode) MAPPER.readTree(plain));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a job's text is no longer JSON", impossible);
        }
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static ArrayNode array() {
        return MAPPER.createArrayNode();
    }

    /** What was typed as a number; what is none stays text, and the reader says so. */
    static JsonNode number(String typed) {
        String plain = typed.strip().replace(',', '.');
        boolean number = plain.matches("-?\\d{1,12}(\\.\\d{1,12})?([eE][+-]?\\d{1,3})?");
        return number ? object().numberNode(new BigDecimal(plain)) : object().textNode(typed);
    }

    ObjectNode root() {
        return root;
    }

    ObjectNode pattern() {
        return (ObjectNode) root.get("pattern");
    }

    ArrayNode members() {
        return (ArrayNode) pattern().get("members");
    }

    /** The member numbered from 1. */
    ObjectNode member(int number) {
        return (ObjectNode) members().get(number - 1);
    }

    /** Reads the tree's text as a job. */
    JobText.Read read() {
        return JobText.read(print());
    }

    String print() {
        StringBuilder out = new StringBuilder();
        print(root, "", 0, out);
        return out.append('\n').toString();
    }

    private static void print(JsonNode node, String indent, int used, StringBuilder out) {
        String line = oneLine(node);
        boolean top = indent.isEmpty() && node.isObject();
        if (!node.isContainerNode() || (!top && used + line.length() <= LINE) || node.isEmpty()) {
            out.append(line);
            return;
        }
        String inner = indent + "  ";
        out.append(node.isObject() ? "{\n" : "[\n");
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        for (int i = 0; i < node.size(); i++) {
            String key = node.isObject() ? quoted(keys.get(i)) + ": " : "";
            out.append(inner).append(key);
            print(node.isObject() ? node.get(keys.get(i)) : node.get(i), inner, inner.length() + key.length() + 1, out);
            out.append(i + 1 < node.size() ? ",\n" : "\n");
        }
        out.append(indent).append(node.isObject() ? '}' : ']');
    }

    private static String oneLine(JsonNode node) {
        List<String> parts = new ArrayList<>();
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> each : node.properties()) {
                parts.add(quoted(each.getKey()) + ": " + oneLine(each.getValue()));
            }
            return "{" + String.join(", ", parts) + "}";
        }
        if (node.isArray()) {
            node.forEach(each -> parts.add(oneLine(each)));
            return "[" + String.join(", ", parts) + "]";
        }
        return node.isTextual() ? quoted(node.textValue()) : node.toString();
    }

    private static String quoted(String text) {
        try {
            return MAPPER.writeValueAsString(text);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a text could not be quoted", impossible);
        }
    }
}
