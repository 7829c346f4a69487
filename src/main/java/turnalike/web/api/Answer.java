package turnalike.web.api;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import turnalike.job.answer.PlainJson;

/**
 * What comes back of an operation that was done.
 *
 * @param type as HTTP writes it
 * @param bytes the body
 */
record Answer(String type, byte[] bytes) {
    static Answer json(String text) {
        return new Answer(Operation.Reply.JSON, text.getBytes(StandardCharsets.UTF_8));
    }

    static Answer json(Map<String, ?> object) {
        return json(PlainJson.print(object));
    }
}
