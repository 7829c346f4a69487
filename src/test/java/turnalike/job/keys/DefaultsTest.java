package turnalike.job.keys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.job.Job;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.read.JobReader;
import turnalike.job.set.FrameKind;

/** What the description says counts when a key is left out is what the reader takes. */
class DefaultsTest {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    @ParameterizedTest
    @EnumSource
    void a_key_left_out_reads_as_its_default_written_out(FrameKind kind) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good", kind.word() + ".job.json"));
        int tried = 0;
        for (KeyPaths.At at : KeyPaths.asked(kind.word())) {
            Optional<JsonNode> written = written(at.key().type());
            // A rocking test is more than one key, and how lengths stand means nothing where all are alike.
            boolean hasPlace = !at.path().contains("rocking") && !at.path().endsWith("lengths_stand");
            if (written.isPresent() && hasPlace) {
                tried++;
                assertThat(job(JobTrees.with(text, at.path(), written.orElseThrow())))
                        .as(at.path())
                        .isEqualTo(job(JobTrees.without(text, at.path())));
            }
        }
        assertThat(tried).as("keys with a default").isGreaterThanOrEqualTo(10);
    }

    /** The number that counts is the one that docs and form tell. */
    @Test
    void words_about_a_default_begin_with_it() {
        for (KeyPaths.At at : KeyPaths.all()) {
            Key<?> key = at.key();
            String number = written(key.type())
                    .map(node -> node.asText().replaceAll("\\.0( mm)?$", ""))
                    .orElse("");
            if (!number.isEmpty() && !key.isNeeded()) {
                assertThat(key.leftOut()).as(at.path()).startsWith(number);
            }
            if (key.field().hint().matches("left empty: [0-9].*")) {
                assertThat(key.field().hint()).as(at.path()).startsWith("left empty: " + number);
            }
        }
    }

    private static Job job(String text) {
        Job.Read read = JobReader.read(text);
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow();
    }

    private static Optional<JsonNode> written(KeyType type) {
        if (type instanceof KeyType.Size size) {
            return size.otherwise().map(length -> NODES.textNode(length.mm() + " mm"));
        }
        if (type instanceof KeyType.Word word
                && !word.words().contains("square")
                && !word.words().contains("wheel")) {
            return Optional.of(NODES.textNode(word.words().get(0)));
        }
        return type instanceof KeyType.Number number && number.otherwise().isPresent()
                ? Optional.of(NODES.numberNode(number.otherwise().getAsDouble()))
                : Optional.empty();
    }
}
