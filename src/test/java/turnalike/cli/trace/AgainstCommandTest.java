package turnalike.cli.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.cli.kit.InputFiles;
import turnalike.job.Job;

class AgainstCommandTest {
    private static final Path DEMO = Path.of("src/main/resources/turnalike/demo/fair-wheel.job.json");

    @TempDir
    Path folder;

    private final Job job = InputFiles.job(DEMO);

    private String piece(TurnedTable piece) throws IOException {
        return Files.writeString(folder.resolve("piece.csv"), piece.csv(1, 0.08, 7))
                .toString();
    }

    /** Its rim bead stands 1.2 mm low and its cove is 0.8 mm shallow. */
    private TurnedTable slipped() {
        return new TurnedTable(job.pattern())
                .with(11, "length", -1.2)
                .with(13, "length", 1.2)
                .with(4, "bottom", 1.6);
    }

    private static JsonNode json(Ran ran) throws IOException {
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void a_turner_is_told_in_words_and_the_json_has_the_figures() throws IOException {
        String table = piece(slipped());
        Ran text = Ran.here("trace", table, "--units", "mm", "--against", DEMO.toString(), "--error", "0.08");
        assertThat(text.err()).isEmpty();
        assertThat(text.out())
                .containsPattern("Its rim bead stands 1\\.[12] mm low \\(give or take 0\\.\\d+ mm\\)\\.")
                .containsPattern("Its cove is 0\\.[789] mm shallow \\(give or take 0\\.\\d+ mm\\)\\.")
                .containsPattern("Unlike the pattern by \\d+\\.\\d\\d over \\d+ measures");
        JsonNode found = json(Ran.here(
                        "trace", table, "--units", "mm", "--against", DEMO.toString(), "--error", "0.08", "--json"))
                .get("against");
        JsonNode bead = found.get("members").get(11);
        assertThat(bead.get("name").textValue()).isEqualTo("rim bead");
        assertThat(bead.get("place_off_mm").doubleValue()).isCloseTo(-1.2, within(0.1));
        assertThat(bead.get("place_off_uncertainty_mm").doubleValue()).isBetween(0.01, 0.3);
        assertThat(found.get("members").get(3).get("depth_off_mm").doubleValue())
                .isCloseTo(-0.8, within(0.1));
        assertThat(found.get("turned").booleanValue()).isFalse();
        assertThat(found.get("longer_mm").doubleValue()).isCloseTo(0, within(0.01));
        assertThat(found.get("deviation").size()).isGreaterThan(300);
        double sum = 0;
        for (JsonNode part : found.get("likeness").get("parts")) {
            sum += part.get("counts").doubleValue();
        }
        assertThat(found.get("likeness").get("figure").doubleValue()).isCloseTo(sum, within(1e-9));
        JsonNode belly = found.get("measures").get(found.get("measures").size() - 1);
        assertThat(belly.get("column").textValue()).isEqualTo("d2");
        assertThat(belly.get("found_mm").doubleValue()).isCloseTo(1.125 * 25.4, within(0.1));
    }

    @Test
    void a_piece_as_asked_for_is_said_to_be_and_its_likeness_is_of_the_size_of_chance() throws IOException {
        String table = piece(new TurnedTable(job.pattern()));
        JsonNode found = json(Ran.here("trace", table, "--against", DEMO.toString(), "--units", "mm", "--json"))
                .get("against");
        assertThat(found.get("words")).hasSize(1);
        assertThat(found.get("words").get(0).textValue()).isEqualTo("Just as asked for, as far as it was seen.");
        double figure = found.get("likeness").get("figure").doubleValue();
        assertThat(figure).isLessThan(found.get("likeness").get("by_chance").doubleValue());
    }

    @Test
    void what_was_seen_goes_into_the_log_of_a_kept_job_and_undo_takes_it_out() throws IOException {
        String store = folder.resolve("shop.db").toString();
        String id = json(Ran.here("keep", DEMO.toString(), "--store", store, "--json"))
                .get("job")
                .textValue();
        String table = piece(slipped());
        Ran logged = Ran.here("trace", table, "--units", "mm", "--against", id, "--store", store, "--log", "7");
        assertThat(logged.err()).isEmpty();
        assertThat(logged.out()).contains("Kept: what was seen of piece 7, in job " + id);
        String pieces = Ran.here("give", id, "--store", store, "--pieces").out();
        assertThat(pieces).contains("m10").contains("d2").containsPattern("(?m)^7,.*,28\\.\\d+ mm$");
        assertThat(Ran.here("history", id, "--store", store).out()).contains("log piece 7 as seen");
        assertThat(Ran.here("undo", id, "--store", store).code()).isZero();
        assertThat(Ran.here("give", id, "--store", store, "--pieces").out()).doesNotContainPattern("(?m)^7,");
    }

    @Test
    void the_picture_shows_both_and_says_it() throws IOException {
        Path out = folder.resolve("out");
        Ran ran = Ran.here(
                "trace", piece(slipped()), "--units", "mm", "--against", DEMO.toString(), "--out", out.toString());
        assertThat(ran.err()).isEmpty();
        String picture = Files.readString(out.resolve("piece.against.svg"));
        assertThat(picture)
                .contains("The piece (heavy line) over its pattern")
                .contains("times as large")
                .contains("Its rim bead stands");
    }

    @Test
    void bad_wishes_are_told_in_one_line() throws IOException {
        String table = piece(slipped());
        refused("--held, --store, --log: say how", "trace", table, "--held", "end");
        refused("--log: needs a kept job", "trace", table, "--against", DEMO.toString(), "--log", "7");
        refused("--held: was 'middle'", "trace", table, "--against", DEMO.toString(), "--held", "middle");
        refused("no such file", "trace", table, "--against", "nowhere.job.json");
        refused(
                "ID: ",
                "trace",
                table,
                "--against",
                "x",
                "--store",
                folder.resolve("s.db").toString());
        String other = Files.writeString(
                        folder.resolve("other.csv"), "x,diameter\n0,60\n100,60\n200,60\n300,20\n380,20\n")
                .toString();
        String store = folder.resolve("shop.db").toString();
        String id = json(Ran.here("keep", DEMO.toString(), "--store", store, "--json"))
                .get("job")
                .textValue();
        refused(
                "shorter; leave --log out to look",
                "trace",
                other,
                "--units",
                "mm",
                "--against",
                id,
                "--store",
                store,
                "--log",
                "7");
    }

    private static void refused(String words, String... arguments) {
        Ran ran = Ran.here(arguments);
        assertThat(ran.err()).contains(words).hasLineCount(1);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
    }
}
