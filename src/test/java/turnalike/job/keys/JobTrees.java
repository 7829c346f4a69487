package turnalike.job.keys;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Job texts with one value changed. */
final class JobTrees {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private JobTrees() {}

    /** The text without the value at the path. */
    static String without(String text, String path) {
        try {
            ObjectNode root = (ObjectNode) MAPPER.readTree(text);
            int last = path.lastIndexOf('.');
            JsonNode around =
                    last < 0 ? root : root.at("/" + path.substring(0, last).replace('.', '/'));
            if (around instanceof ObjectNode object) {
                object.remove(path.substring(last + 1));
            }
            return root.toPrettyString();
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(text, notJson);
        }
    }

    /** The text with that value at the path, objects on the way made where they are not there. */
    static String with(String text, String path, JsonNode value) {
        try {
            ObjectNode root = (ObjectNode) MAPPER.readTree(text);
            ObjectNode at = root;
            String[] keys = path.split("\\.", -1);
            for (int i = 0; i + 1 < keys.length; i++) {
                at = at.get(keys[i]) instanceof ObjectNode inner ? inner : at.putObject(keys[i]);
            }
            at.set(keys[keys.length - 1], value);
            return root.toPrettyString();
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(text, notJson);
        }
    }
}
