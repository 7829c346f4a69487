package turnalike.job.keys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.read.JobReader;

/**
 * What the reader takes, the schema takes: good jobs with one value after the other changed to each of some odd ones; here each value to every
 * third of them, each of which comes to every third value, in a campaign of seeds all to all.
 */
class SchemaBesideReaderTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(JobSchema.write(), SchemaValidatorsConfig.builder().build());

    private static final List<JsonNode> ODD = Stream.of(
                    "0",
                    "\"0\"",
                    "-1",
                    "\"\"",
                    "\"x\"",
                    "true",
                    "[]",
                    "{}",
                    "1.5",
                    "2",
                    "2.0",
                    "1e-9",
                    "30000",
                    "\"1 1/2\"",
                    "\"3 mm\"",
                    "\"1\u00a01/2\"",
                    "[[0, 20], [1, 20]]",
                    "[1]",
                    "{\"colour\": 0.5}")
            .map(SchemaBesideReaderTest::tree)
            .toList();

    private static final int ONE_OF = Seeds.inCampaign() ? 1 : 3;

    private int asked;
    private int tried;
    private final List<String> refused = new ArrayList<>();

    @Test
    void whatever_the_reader_takes_the_schema_takes() throws IOException {
        for (String name : List.of("every", "wheel")) {
            JsonNode job = tree(Files.readString(Path.of("src/test/resources/turnalike/job/good", name + ".job.json")));
            change(job, job, name);
        }
        assertThat(tried).as("jobs changed").isGreaterThan(1_500 / ONE_OF);
        assertThat(refused).as("taken by the reader, refused by the schema").isEmpty();
    }

    private void change(JsonNode job, JsonNode at, String path) {
        if (at instanceof ObjectNode object) {
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            for (String key : keys) {
                JsonNode was = object.get(key);
                ODD.forEach(odd -> {
                    object.set(key, odd);
                    compare(job, path + "/" + key + " = " + odd);
                });
                object.set(key, was);
                change(job, was, path + "/" + key);
            }
        } else if (at instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                JsonNode was = list.get(i);
                for (JsonNode odd : ODD) {
                    list.set(i, odd);
                    compare(job, path + "/" + i + " = " + odd);
                }
                list.set(i, was);
                change(job, was, path + "/" + i);
            }
        }
    }

    private void compare(JsonNode job, String what) {
        // The odd ones are no multiple of three: which are left out is others from value to value.
        if (asked++ % ONE_OF != 0) {
            return;
        }
        tried++;
        // A refusal is what most changes bring, and finding that out is quicker than a validation.
        if (JobReader.read(job.toString()).problems().isEmpty()
                && !SCHEMA.validate(job).isEmpty()) {
            refused.add(what);
        }
    }

    private static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(text, notJson);
        }
    }
}
