package turnalike.job.kept;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;

/** Writes a given job step by step, so that a history of any length takes no more room than one step. Not for two threads. */
public final class GivenWriter {
    private final Writer out;
    private final JsonGenerator json;

    private GivenWriter(Writer out, JsonGenerator json) {
        this.out = out;
        this.json = json;
    }

    private interface Writing {
        void write() throws IOException;
    }

    private static void written(Writing writing) {
        try {
            writing.write();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * Writes the job as it stands; its steps follow.
     *
     * @param out stays open in the end; what it throws is thrown on as {@link UncheckedIOException}
     * @param kept what the steps come to
     * @return takes the steps
     */
    public static GivenWriter begin(Writer out, KeptJob kept) {
        GivenWriter writer = new GivenWriter(out, KeptJson.pageTo(out));
        written(() -> {
            writer.json.writeStartObject();
            for (Map.Entry<String, JsonNode> each : GivenTree.standing(kept).properties()) {
                writer.json.writeFieldName(each.getKey());
                writer.json.writeTree(each.getValue());
            }
            writer.json.writeArrayFieldStart(GivenTree.HISTORY);
        });
        return writer;
    }

    /**
     * Writes the next step.
     *
     * @param step from the first on, in order
     */
    public void step(StepText step) {
        written(() -> json.writeTree(GivenTree.step(step)));
    }

    /** Writes the end, after the last step. */
    public void end() {
        written(() -> {
            json.writeEndArray();
            json.writeEndObject();
            json.flush();
            out.write("\n");
            out.flush();
        });
    }
}
