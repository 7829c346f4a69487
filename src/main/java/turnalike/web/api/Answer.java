package turnalike.web.api;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import turnalike.job.answer.PlainJson;

/** What comes back of an operation that was done. */
final class Answer {
    private final String type;
    private final byte[] bytes;

    /**
     * An answer of these bytes.
     *
     * @param type as HTTP writes it
     * @param bytes the body, which nobody changes any more
     */
    Answer(String type, byte[] bytes) {
        this.type = type;
        this.bytes = bytes;
    }

    static Answer json(String text) {
        return new Answer(Operation.Reply.JSON, text.getBytes(StandardCharsets.UTF_8));
    }

    static Answer json(Map<String, ?> object) {
        return json(PlainJson.print(object));
    }

    String type() {
        return type;
    }

    byte[] bytes() {
        return bytes;
    }
}
