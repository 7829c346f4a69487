package turnalike.cli.boards;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

/** Invented jobs and boards. */
class BoardsCommandTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "%s", "units": "mm", "count": %d, "loss_pct": 0,
             "allowances": {"milling": 1, "trimming": 10}, %s
             "pattern": {"stock": {"section": "square", "size": %s, "length": %s}, "members": [
              {"kind": "cylinder", "length": 100, "diameter": 25}]},
             "wood": {"species": "White ash", "moisture_pct": 9}}
            """;

    private static final String HEADER = "board,thickness,width,length,count,price,species,from1,to1\n";

    @TempDir
    private Path folder = Path.of("");

    private String job(String title, int count, double size, double length, String more) throws IOException {
        Path file = folder.resolve(title + ".job.json");
        return Files.writeString(file, JOB.formatted(title, count, more, size, length))
                .toString();
    }

    private String boards(String lines) throws IOException {
        return Files.writeString(folder.resolve("boards.csv"), HEADER + lines).toString();
    }

    private static JsonNode json(String... arguments) throws IOException {
        Ran ran = Ran.here(arguments);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void json_has_the_contract_s_names() throws IOException {
        String job = job("spokes", 6, 38, 280, "\"sawing\": {\"kerf\": 4, \"edge\": 5, \"end\": 20},");
        JsonNode answer =
                json("boards", job, "--boards", boards("A,45,100,960,2,12.5,,,\nB,45,60,700,1,,,,\n"), "--json");
        assertThat(answer.at("/boards/0/board").asText()).isEqualTo("A");
        assertThat(answer.at("/boards/0/strips/0/job").asText()).isEqualTo("spokes");
        assertThat(answer.at("/boards/0/strips/0/size_mm").asDouble()).isEqualTo(40);
        assertThat(answer.at("/boards/0/strips/0/blanks/0/from_mm").asDouble()).isEqualTo(20);
        assertThat(answer.at("/boards/0/strips/0/blanks/0/length_mm").asDouble())
                .isEqualTo(300);
        assertThat(answer.at("/boards/0/strips/0/blanks/1/from_mm").asDouble()).isEqualTo(324);
        assertThat(answer.get("used").asInt()).isEqualTo(1);
        assertThat(answer.get("bound").asDouble()).isEqualTo(12.5);
        assertThat(answer.get("cost").asDouble()).isEqualTo(12.5);
        assertThat(answer.get("proven").asBoolean()).isTrue();
        assertThat(answer.get("ended_by").asText()).isEqualTo("proof");
        assertThat(answer.get("missing")).isEmpty();
        assertThat(answer.at("/left_over/0").fieldNames()).toIterable().contains("board", "width_mm", "length_mm");
    }

    @Test
    void jobs_of_one_section_share_strips_and_each_blank_says_whose_it_is() throws IOException {
        String one = job("long", 1, 38, 480, "");
        String two = job("short", 1, 38, 280, "");
        JsonNode answer = json("boards", one, two, "--boards", boards("A,45,60,830,,,,,\n"), "--json");
        assertThat(answer.at("/boards/0/strips")).hasSize(1);
        assertThat(answer.at("/boards/0/strips/0").has("job")).isFalse();
        assertThat(answer.at("/boards/0/strips/0/blanks").findValuesAsText("job"))
                .containsExactlyInAnyOrder("long", "short");
    }

    @Test
    void where_wood_is_missing_that_is_said_first_and_what_to_buy() throws IOException {
        String job = job("spokes", 9, 38, 280, "");
        Ran ran = Ran.here("boards", job, "--boards", boards("A,45,60,960,,,,,\n"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("Wood is missing\n  6 of 9 blanks for spokes")
                .contains("2 more like A would do");
        Ran thin = Ran.here("boards", job, "--boards", boards("A,20,60,960,,,,,\nB,38,60,960,,,,,\n"));
        assertThat(thin.code()).isZero();
        assertThat(thin.out())
                .startsWith("Wood is missing")
                .contains("no board is thick enough; nearest is B at 38 mm", "2 mm (0.079 in) too thin");
        assertThat(json("boards", job, "--boards", boards(""), "--json")
                        .at("/missing/0/count")
                        .asInt())
                .isEqualTo(9);
    }

    @Test
    void a_board_of_another_wood_is_ruled_out_and_that_is_said() throws IOException {
        String job = job("spokes", 1, 38, 280, "");
        Ran ran = Ran.here(
                "boards", job, "--boards", boards("A,45,60,960,,,black cherry,,\nB,45,60,700,,,white ash,,\n"));
        assertThat(ran.out())
                .contains("spokes is of White ash, so these boards do not serve it: A (Black cherry).")
                .contains("Board B:");
    }

    @Test
    void the_shop_s_order_is_told_with_cautions_once() throws IOException {
        String job = job("spokes", 3, 38, 280, "");
        Ran ran = Ran.here("boards", job, "--boards", boards("A,45,60,1000,,,,,\n"));
        assertThat(ran.out())
                .contains(
                        "1. straighten one edge",
                        "2. saw rip 1, 40 mm wide",
                        "cross-cut at 12 mm, 312 mm, 615 mm, 918 mm")
                .containsOnlyOnce("riving knife");
    }

    @Test
    void each_bad_line_is_told_with_its_place_and_its_mend() throws IOException {
        String job = job("spokes", 3, 38, 280, "");
        for (List<String> bad : List.of(
                List.of("A,-45,60,1000,,,,,\n", "line 2, column thickness: a length carries no sign"),
                List.of("A,45,0,1000,,,,,\n", "line 2, column width: a board's width is above zero"),
                List.of("A,45,60,,,,,,\n", "line 2, column length: no length is given"),
                List.of("A,45,60,1000,0,,,,\n", "line 2, column count: a count is a whole number from 1"),
                List.of("A,45,60,1000,2.5,,,,\n", "line 2, column count: a count is a whole number from 1"),
                List.of("A,45,60,1000,,-3,,,\n", "line 2, column price: '-3' is not a price"),
                List.of(
                        "A,45,60,1000,,,whiteash,,\n",
                        "line 2, column species: no wood in the table is named 'whiteash'"),
                List.of("A,45,60,1000,,,,500,400\n", "line 2, column to1: the fault ends at 400 mm, before it begins"),
                List.of(
                        "A,45,60,1000,,,,500,1400\n",
                        "line 2, column to1: the fault ends at 1400 mm, beyond the board's end"),
                List.of("A,45,60,1000,,,,500,\n", "line 2, column to1: a fault is given by both its ends"),
                List.of(",45,60,1000,,,,,\n", "line 2, column board: the board has no name"),
                List.of(
                        "A,45,60,1000,,,,,\nA,45,60,900,,,,,\n",
                        "line 3, column board: board 'A' is already on line 2"),
                List.of("A,45,60,1000,,,,,,,,\n", "line 2: 12 cells where the header has 9"))) {
            Ran ran = Ran.here("boards", job, "--boards", boards(bad.get(0)));
            assertThat(ran.code()).as(bad.get(0)).isEqualTo(2);
            assertThat(ran.err()).startsWith("turnalike: boards.csv: " + bad.get(1));
            assertThat(ran.err().lines()).hasSize(1);
        }
        Path headless = Files.writeString(folder.resolve("headless.csv"), "45,60,1000\n");
        assertThat(Ran.here("boards", job, "--boards", headless.toString()).err())
                .contains("headless.csv: line 1: the header has no column 'board'");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        assertThat(Ran.here("boards", job, "--boards", empty.toString()).err()).contains("the file is empty");
    }

    @Test
    void the_sheets_are_written() throws IOException {
        String job = job("spokes", 8, 38, 280, "");
        String boards = boards("A,90,105,1000,,,,400,450\n");
        Ran ran = Ran.here(
                "boards",
                job,
                "--boards",
                boards,
                "--out",
                folder.resolve("out").toString());
        assertThat(ran.code()).isZero();
        assertThat(folder.resolve("out/cut-sheet-a4.pdf")).exists();
        assertThat(folder.resolve("out/board-1.svg")).exists();
        assertThat(new ObjectMapper()
                        .readTree(folder.resolve("out/boards.json").toFile())
                        .get("used")
                        .asInt())
                .isEqualTo(1);
    }
}
