package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code blanks} on a plain cylinder of half the blank's volume, so that every figure can be told by hand. */
class BlanksCommandTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Dowels (invented)", "units": "mm", "count": %d,
             "pattern": {"name": "Dowel", "stock": {"section": "round", "size": 40, "length": 250},
              "members": [{"kind": "cylinder", "length": 200, "diameter": %s}]},
             "wood": %s}
            """;
    private static final String ASH = "{\"species\": \"White ash\", \"moisture_pct\": 8}";

    /** The blank's volume in cm³; the cylinder has half of it. */
    private static final double BLANK_CM3 = Math.PI * 4 * 25;

    private static final String DIAMETER = String.valueOf(Math.sqrt(0.5 * 40 * 40 * 250 / 200));

    @TempDir
    Path folder;

    private String job(int count) throws IOException {
        return Files.writeString(folder.resolve("dowel.job.json"), JOB.formatted(count, DIAMETER, ASH))
                .toString();
    }

    private String csv(String text) throws IOException {
        return Files.writeString(folder.resolve("blanks.csv"), text).toString();
    }

    private JsonNode json(int count, String text) throws IOException {
        return Ran.here("blanks", job(count), csv(text), "--json").json();
    }

    private static List<String> labels(JsonNode list) {
        List<String> out = new ArrayList<>();
        list.forEach(each -> out.add(each.asText()));
        return out;
    }

    @Test
    void each_blank_gives_its_density_and_half_its_weight() throws IOException {
        JsonNode answer = json(2, "blank,mass_g\nA,200\nB,260\nC,204\nD,300\n");
        JsonNode first = answer.get("blanks").get(0);
        assertThat(first.get("density_kg_m3").asDouble()).isEqualTo(200 / BLANK_CM3 * 1000, within(1e-9));
        assertThat(first.get("finished_g").asDouble()).isEqualTo(100, within(1e-9));
        assertThat(first.get("from_g").asDouble()).isBetween(93.0, 99.0);
        assertThat(first.get("to_g").asDouble())
                .isEqualTo(200 - first.get("from_g").asDouble(), within(1e-9));
        assertThat(labels(answer.get("choose"))).containsExactly("A", "C");
        assertThat(labels(answer.get("spares"))).containsExactly("B", "D");
        assertThat(answer.get("spread_g").asDouble()).isEqualTo(2, within(1e-9));
        assertThat(answer.get("expected_spread_g").asDouble()).isGreaterThan(2);
        assertThat(answer.get("missing").asInt()).isZero();
        assertThat(answer.get("questions")).isEmpty();
    }

    @Test
    void finished_pieces_correct_the_rest_and_may_be_left_out() throws IOException {
        JsonNode answer = json(2, "blank,mass_g,finished_g\nA,200,104\nB,260,135.2\nC,204,\nD,300,156\nE,206,\n");
        // Three pieces at 1.04 and one piece's worth of belief in 1 make 1.03.
        assertThat(answer.get("share_mean").asDouble()).isEqualTo(1.03, within(1e-9));
        JsonNode third = answer.get("blanks").get(2);
        assertThat(third.get("finished_g").asDouble()).isEqualTo(102 * 1.03, within(1e-9));
        JsonNode done = answer.get("blanks").get(0);
        assertThat(done.get("finished_g").asDouble()).isEqualTo(104);
        assertThat(done.get("from_g").asDouble()).isEqualTo(104);
        assertThat(labels(answer.get("choose"))).containsExactly("C", "E");
        assertThat(Ran.here("blanks", job(2), csv("blank,mass_g,finished_g\nA,200,104\nB,260,135.2\nC,204,\nE,206,\n"))
                        .out())
                .contains(
                        "left out: too far from the others",
                        "nine in ten between",
                        "Turn       C\n",
                        "Finished   A, in the set");
    }

    @Test
    void what_is_lost_too_short_or_too_thin_is_not_chosen() throws IOException {
        JsonNode answer = json(
                2,
                "blank,mass_g,length,size,lost\nA,200,,,yes\nB,200,150,,\nC,200,,30,\nD,230,,,\nE,240,260 mm,41,no\n");
        assertThat(labels(answer.get("choose"))).containsExactly("D", "E");
        assertThat(answer.get("blanks").get(0).get("unusable").asText()).isEqualTo("lost");
        assertThat(answer.get("blanks").get(1).get("unusable").asText()).startsWith("shorter than the piece");
        assertThat(answer.get("blanks").get(2).get("unusable").asText()).startsWith("thinner than the piece");
        double own = 240 / (Math.PI * 20.5 * 20.5 * 260) * 1e6;
        assertThat(answer.get("blanks").get(4).get("density_kg_m3").asDouble()).isEqualTo(own, within(1e-6));
        // Told 5 % as of 20 blanks, then 1 lost.
        assertThat(answer.get("loss_rate").asDouble()).isEqualTo(2.0 / 21, within(1e-9));
    }

    @Test
    void too_few_one_and_all_alike_are_answered() throws IOException {
        JsonNode one = json(3, "blank,mass_oz\nA,7\n");
        assertThat(labels(one.get("choose"))).containsExactly("A");
        assertThat(one.get("missing").asInt()).isEqualTo(2);
        assertThat(one.get("spread_g").asDouble()).isZero();
        assertThat(one.get("chance_of_enough").asDouble()).isZero();
        assertThat(Ran.here("blanks", job(3), csv("blank;mass_g\nA;200,5\n")).out())
                .contains("Too few blanks: 1 blank");
        JsonNode alike = json(2, "blank,mass_g\nA,200\nB,200\nC,200\n");
        assertThat(labels(alike.get("choose"))).containsExactly("A", "B");
        assertThat(alike.get("spread_g").asDouble()).isZero();
    }

    @Test
    void wood_heavier_than_full_of_water_is_asked_about_and_heavier_than_any_is_refused() throws IOException {
        String out = Ran.here("blanks", job(1), csv("blank,mass_g,moisture_pct\nA,390,70\nB,200,8\n"))
                .out();
        assertThat(out).contains("Please check", "more than this wood has full of water", "blanks of 8.0 to 70.0 %");
        Ran heavy = Ran.here("blanks", job(1), csv("blank,mass_g\nA,2000\n"));
        assertThat(heavy.code()).isEqualTo(2);
        assertThat(heavy.err())
                .contains("blanks.csv: blank A: ", "heavier than any wood full of water", "1540 kg/m3 (Wood Handbook");
    }

    @Test
    void every_bad_table_is_one_line_with_its_place() throws IOException {
        String[][] bad = {
            {"", "the file is empty"},
            {"blank,mass_g\n", "there is a header and no blank"},
            {"piece,mass_g\nA,1\n", "no column 'blank'"},
            {"blank,weight\nA,1\n", "no column of masses"},
            {"blank,mass_g,mass_oz\nA,1,1\n", "in grams and in ounces"},
            {"blank,mass_g,mass_g\nA,1,1\n", "two columns bear this name"},
            {"blank,mass_g\nA,\n", "line 2, column mass: the blank was not weighed"},
            {"blank,mass_g\nA,-5\n", "line 2, column mass_g: a mass is above zero"},
            {"blank,mass_g\nA,200\nA,210\n", "line 3, column blank: blank 'A' is already on line 2"},
            {"blank,mass_g\n,200\n", "line 2, column blank"},
            {"blank,mass_g\nA,200,3\n", "line 2: 3 cells where the header has 2"},
            {"blank,mass_g,finished_g\nA,200,201\n", "more than the 200.0 g of its blank"},
            {"blank,mass_g,moisture_pct\nA,200,301\n", "line 2, column moisture_pct: moisture must be from 0 to 300"},
            {"blank,mass_g,moisture_pct\nA,200,wet\n", "'wet' is not a moisture"},
            {"blank,mass_g,length\nA,200,0\n", "a size is above zero"},
            {"blank,mass_g,lost\nA,200,perhaps\n", "does not say whether it is lost"},
        };
        for (String[] each : bad) {
            Ran ran = Ran.here("blanks", job(1), csv(each[0]));
            assertThat(ran.code()).as(each[0]).isEqualTo(2);
            assertThat(ran.err())
                    .as(each[0])
                    .startsWith("turnalike: blanks.csv: ")
                    .contains(each[1]);
            assertThat(ran.err().strip().lines()).as(each[0]).hasSize(1);
        }
    }

    @Test
    void ten_thousand_blanks_are_read_and_shown_in_part() throws IOException {
        StringBuilder text = new StringBuilder("blank,mass_g\n");
        for (int i = 0; i < 10_000; i++) {
            text.append(i).append(',').append(190 + (i * 7919 % 1000) / 50.0).append('\n');
        }
        assertThat(Ran.here("blanks", job(5), csv(text.toString())).out())
                .contains("… and 9940 more; --json has them all");
        text.append("10000,200\n");
        assertThat(Ran.here("blanks", job(5), csv(text.toString())).err()).contains("10001 blanks are more than 10000");
    }
}
