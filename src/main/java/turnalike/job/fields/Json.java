package turnalike.job.fields;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Text to JSON tree and back. A key written twice is refused: one of the two would be lost in silence. */
public final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(JsonParser.Feature.INCLUDE_SOURCE_IN_LOCATION)
            .build();

    private Json() {}

    /** {@return an object without keys, to be filled} */
    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /**
     * The tree as people read it, indented.
     *
     * @param node any tree
     * @return the text, ended by a line end
     */
    public static String print(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of our own could not be printed", impossible);
        }
    }

    /**
     * The object in the text.
     *
     * @param text the whole file; a byte order mark at its start is read over
     * @param reading takes the problem when the text is empty, is not JSON, or is something else than one object
     * @return the object; empty when a problem was told, with its line and column where that is known
     */
    public static Optional<ObjectNode> parse(String text, Reading reading) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        if (plain.isBlank()) {
            reading.problem("line 1", "the file is empty", "start from the demo's job file");
            return Optional.empty();
        }
        try {
            JsonNode node = MAPPER.readTree(plain);
            if (node instanceof ObjectNode object) {
                return Optional.of(object);
            }
            reading.problem("line 1", "a job file is one JSON object", "begin it with { and end it with }");
        } catch (JsonProcessingException notJson) {
            JsonLocation at = notJson.getLocation();
            String where = at == null ? "line 1" : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr());
            reading.problem(where, "is not JSON: " + JsonFaults.words(notJson), "mend the JSON there");
        }
        return Optional.empty();
    }
}
