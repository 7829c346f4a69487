package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;

/** Each figure of good jobs changed to each of some that no turner writes: taken and planned for, or refused in words; never a fault. */
class ExtremeFiguresTest {
    /**
     * Here one change in so many is made, and a plan of one in five of those that are taken: one for a neck of a thousandth of a millimetre
     * takes seconds. In {@code ./campaign figures} every one.
     */
    private static final int ONE_OF = Integer.getInteger("turnalike.figures.one.of", 7);

    private static final int PLANNED_ONE_OF = ONE_OF == 1 ? 1 : 5;

    private static final Pattern NO_FIGURE = Pattern.compile("\\b(NaN|Infinity)\\b");

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final List<JsonNode> EXTREME = Stream.of(
                    "0",
                    "-0.0",
                    "5e-324",
                    "1e-300",
                    "1e-20",
                    "-1e-20",
                    "1e-9",
                    "1e-5",
                    "0.001",
                    "1e5",
                    "1e9",
                    "1e18",
                    "1e308",
                    "1e400",
                    "\"1e-20\"",
                    "\"0.00000000000000000001 mm\"",
                    "\"1/99999999999\"",
                    "\"NaN\"")
            .map(ExtremeFiguresTest::tree)
            .toList();

    private int tried;
    private int taken;
    private final List<String> faults = new ArrayList<>();

    @Test
    void every_figure_may_be_anything() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/turnalike/job/good"))) {
            for (Path file : files.sorted().toList()) {
                JsonNode job = tree(Files.readString(file));
                change(job, job, file.getFileName().toString());
            }
        }
        assertThat(tried).as("figures changed").isGreaterThan(3_000);
        assertThat(taken).as("of these taken").isGreaterThan(300 / ONE_OF);
        assertThat(faults).isEmpty();
    }

    private void change(JsonNode job, JsonNode at, String path) {
        if (at instanceof ObjectNode object) {
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            for (String key : keys) {
                JsonNode was = object.get(key);
                if (was.isNumber() || (was.isTextual() && was.asText().matches(".*\\d.*"))) {
                    EXTREME.forEach(each -> {
                        object.set(key, each);
                        plan(job, path + "/" + key + " = " + each);
                    });
                    object.set(key, was);
                }
                change(job, was, path + "/" + key);
            }
        } else if (at instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                JsonNode was = list.get(i);
                if (was.isNumber()) {
                    for (JsonNode each : EXTREME) {
                        list.set(i, each);
                        plan(job, path + "/" + i + " = " + each);
                    }
                    list.set(i, was);
                }
                change(job, was, path + "/" + i);
            }
        }
    }

    private void plan(JsonNode job, String what) {
        if (++tried % ONE_OF != 0) {
            return;
        }
        try {
            JobReader.read(job.toString())
                    .job()
                    .filter(read -> ++taken % PLANNED_ONE_OF == 0)
                    .ifPresent(read -> plan(read, what));
        } catch (RuntimeException | StackOverflowError fault) {
            faults.add(what + ": " + fault);
        }
    }

    private void plan(Job job, String what) {
        Plan plan = Plan.of(job, () -> true);
        if (NO_FIGURE.matcher(PlanJson.print(plan)).find()
                || NO_FIGURE.matcher(PlanSummary.text(plan)).find()) {
            faults.add(what + ": something that is no figure is told");
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
