package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;

/** An invented spindle whose ends are 20 and 20.5 mm long: half a millimetre makes them one opening. */
class NudgeCommandTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Nearly even", "units": "mm", "tolerances": {"mark": 0.5},
             "pattern": {"stock": {"section": "round", "size": 40, "length": 130}, "members": [
              {"kind": "cylinder", "length": 20, "diameter": 30}, {"kind": "cylinder", "length": 80, "diameter": 25},
              {"kind": "cylinder", "length": %s, "diameter": 30}]},
             "wood": {"density_kg_m3": 700}}
            """;

    @TempDir
    private Path folder = Path.of("");

    private String file(String length) throws IOException {
        return Files.writeString(folder.resolve("even.job.json"), JOB.formatted(length))
                .toString();
    }

    @Test
    void nudges_are_listed_numbered_with_their_cost() throws IOException {
        Ran ran = Ran.here("nudge", file("20.5"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(
                        " 1  let mark ",
                        "1 divider opening does instead of 2",
                        "cost to the eye 3.00",
                        "--take and its number",
                        "moves of one line or of two at once were looked for");
    }

    @Test
    void what_is_taken_is_a_job_that_plans_with_as_few_openings_as_was_claimed() throws IOException {
        String file = file("20.5");
        JsonNode json =
                new ObjectMapper().readTree(Ran.here("nudge", file, "--json").out());
        assertThat(json.path("nudges")).isNotEmpty();
        assertThat(json.path("fewest_proven").asBoolean()).isTrue();
        for (JsonNode nudge : json.path("nudges")) {
            Ran taken = Ran.here("nudge", file, "--take", nudge.path("number").asText());
            assertThat(taken.code()).isZero();
            Plan plan = Plan.of(JobReader.read(taken.out()).job().orElseThrow(), Effort.unlimited());
            assertThat(plan.settings().dividers().settings())
                    .hasSize(nudge.path("after").asInt());
            assertThat(nudge.path("moves").get(0).path("by_mm").asDouble()).isIn(0.5, -0.5);
        }
        assertThat(Files.readString(Path.of(file))).isEqualTo(JOB.formatted("20.5"));
    }

    @Test
    void one_that_is_not_there_is_an_error_of_the_input() throws IOException {
        Ran none = Ran.here("nudge", file("20"), "--take", "1");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("there is no nudge to take");
        Ran ninth = Ran.here("nudge", file("20.5"), "--take", "9");
        assertThat(ninth.code()).isEqualTo(2);
        assertThat(ninth.err()).contains("none of number 9");
        assertThat(Ran.here("nudge", file("20.5"), "--take", "1", "--json").code())
                .isEqualTo(2);
        assertThat(Ran.here("nudge", file("20")).out()).contains("No change within the tolerances");
    }
}
