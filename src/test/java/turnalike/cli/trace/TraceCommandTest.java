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

class TraceCommandTest {
    private static final String TABLE = """
            x,diameter,side
            0,,1 3/4
            4,,1 3/4
            4,1 1/8,
            4 1/4,1 1/8,
            4 1/4,1 1/4,
            4 5/8,1 1/2,
            5,1 1/4,
            5,1,
            11,1 1/2,
            11,1 3/8,
            11 3/4,1 3/8,
            11 3/4,3/4,
            12 3/4,3/4,
            """;

    @TempDir
    Path folder;

    private String table(String text) throws IOException {
        return Files.writeString(folder.resolve("leg.csv"), text).toString();
    }

    private static JsonNode json(Ran ran) throws IOException {
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void the_json_has_every_name_and_its_members_are_a_job_files() throws IOException {
        JsonNode found = json(Ran.here("trace", table(TABLE), "--units", "in", "--json"));
        assertThat(found.get("source").textValue()).isEqualTo("table");
        assertThat(found.get("length_mm").doubleValue()).isCloseTo(12.75 * 25.4, within(1e-3));
        JsonNode outline = found.get("outline");
        for (int i = 1; i < outline.size(); i++) {
            double gap = outline.get(i).get(0).doubleValue()
                    - outline.get(i - 1).get(0).doubleValue();
            assertThat(gap).isBetween(0.0, 0.5001);
        }
        assertThat(found.get("uncertainty_mm").doubleValue()).isEqualTo(0.1);
        assertThat(found.get("hidden")).isEmpty();
        assertThat(found.get("scale").get("from").textValue()).isNotBlank();
        assertThat(found.get("fit").get("rms_mm").doubleValue()).isLessThan(0.1);
        assertThat(found.get("fit").get("worst_mm").doubleValue()).isLessThan(0.3);
        assertThat(found.get("fit").has("worst_at_mm")).isTrue();
        assertThat(found.get("warnings").isArray()).isTrue();
        assertThat(found.get("members").findValuesAsText("kind"))
                .containsExactly("square", "fillet", "bead", "taper", "cylinder", "tenon");
        JsonNode bead = found.get("members").get(2);
        assertThat(bead.get("length").doubleValue()).isCloseTo(0.75 * 25.4, within(0.02));
        assertThat(bead.get("crown").doubleValue()).isCloseTo(1.5 * 25.4, within(0.2));
    }

    /** In the table, in words and in the JSON, whose names stay as they were. */
    @Test
    void a_dip_of_three_rows_is_marked_with_the_reading_that_tells_what_it_is() throws IOException {
        String dip = "x,diameter\n0,24\n20,24\n40,24\n43,18\n46,24\n66,24\n80,24\n";
        Ran told = Ran.here("trace", table(dip));
        assertThat(told.out())
                .contains("  2  cove ? ")
                .contains(
                        "! Member 2 (cove) may as well be a vee, by its 3 rows: one more reading tells, best at 41.2 mm");
        JsonNode found = json(Ran.here("trace", table(dip), "--json"));
        assertThat(found.get("member_fits").findValuesAsText("uncertain")).containsExactly("false", "true", "false");
        assertThat(found.get("warnings").get(0).textValue()).startsWith("Member 2 (cove)");
    }

    /** Rows up to 0.6 mm off, where 0.2 mm is usual: said by --error, that is taken, and nothing is said of it. */
    @Test
    void rows_that_stray_by_more_than_is_usual_are_taken_to_be_off_by_that() throws IOException {
        StringBuilder rows = new StringBuilder("x,diameter\n");
        double[] off = {0.5, -0.3, -0.6, 0.4, 0.1, -0.5, 0.6, -0.2};
        for (int k = 0; k < 32; k++) {
            rows.append(3 * k + k % 3)
                    .append(',')
                    .append((k < 16 ? 20 : 40) + off[k % 8])
                    .append('\n');
        }
        JsonNode found = json(Ran.here("trace", table(rows.toString()), "--json"));
        assertThat(found.get("members").findValuesAsText("kind")).containsExactly("tenon", "cylinder");
        assertThat(2 * found.get("uncertainty_mm").doubleValue()).isCloseTo(0.45, within(0.06));
        assertThat(found.get("warnings").toString()).contains("The rows stray by more than the usual 0.2 mm");
        JsonNode said = json(Ran.here("trace", table(rows.toString()), "--json", "--error", "0.2"));
        assertThat(said.get("warnings").toString()).doesNotContain("The rows stray");
    }

    @Test
    void what_it_writes_is_a_job_that_plan_takes() throws IOException {
        for (String units : new String[] {"in", "mm"}) {
            Path out = folder.resolve(units);
            String text = units.equals("in") ? TABLE : TABLE.replaceAll("(?m)\\d[\\d /]*", "$0 in");
            Ran ran = Ran.here("trace", table(text), "--units", units, "--snap", "--out", out.toString());
            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).contains("6 members explain it");
            Ran plan = Ran.here("plan", out.resolve("leg.job.json").toString(), "--seconds", "0", "--json");
            assertThat(plan.err()).isEmpty();
            assertThat(plan.code()).isZero();
            assertThat(Files.readString(out.resolve("leg.trace.svg"))).contains("What was read");
        }
    }

    @Test
    void rows_so_far_apart_that_a_swell_would_fall_below_the_axis_become_a_curve() throws IOException {
        String rows = "x,diameter\n0,20 mm\n9,1 1/8 in\n20,30\n30,28\n40,20\n";
        JsonNode found = json(Ran.here("trace", table(rows), "--units", "in", "--json"));
        assertThat(found.get("members").findValuesAsText("kind")).contains("curve");
        for (JsonNode point : found.get("outline")) {
            assertThat(point.get(1).doubleValue()).isPositive();
        }
    }

    @Test
    void a_drawing_is_traced_as_a_table_is() throws IOException {
        Path drawing = Files.writeString(
                folder.resolve("half.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='100mm' viewBox='0 0 300 100'>"
                        + "<path d='M0 50V40H25V34H31A9 6 0 0 1 49 34V36L200 42V44H225V50Z'/></svg>");
        JsonNode found = json(Ran.here("trace", drawing.toString(), "--json"));
        assertThat(found.get("source").textValue()).isEqualTo("drawing");
        assertThat(found.get("length_mm").doubleValue()).isCloseTo(225, within(1e-6));
        assertThat(found.get("members").findValuesAsText("kind"))
                .containsExactly("tenon", "fillet", "bead", "taper", "tenon");
        assertThat(found.get("members").get(2).get("crown").doubleValue()).isCloseTo(44, within(0.05));
        assertThat(found.get("scale").get("mm_per_px").doubleValue()).isCloseTo(1, within(1e-9));
        JsonNode scaled = json(Ran.here("trace", drawing.toString(), "--span", "9 in", "--json"));
        assertThat(scaled.get("length_mm").doubleValue()).isCloseTo(228.6, within(1e-6));
    }

    @Test
    void bad_input_is_told_in_one_line_with_exit_code_2() throws IOException {
        refused("leg.csv: line 3: diameter: 'soft' is not a length", "x,diameter\n0,20\n1,soft\n2,3\n3,3\n4,3\n");
        refused("leg.csv: table: has 1 row", "x,diameter\n0,20\n");
        refused("--units: was 'ft'", TABLE, "--units", "ft");
        refused("--error: must be above zero", TABLE, "--error", "0");
        refused(
                "--error: 1.969 in is more than a quarter of the thickest diameter, 1 3/4 in",
                TABLE,
                "--units",
                "in",
                "--error",
                "50mm");
        refused(
                "line 4: diameter: 210 mm stands among 20 mm and 22 mm; write 21 mm",
                "x,diameter\n0,20\n5,20\n9,210\n15,22\n20,22\n");
        refused("--span: a table gives its own lengths", TABLE, "--span", "300");
        Ran other = Ran.here("trace", folder.resolve("spindle.stl").toString());
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains("neither a photograph").hasLineCount(1);
        Path picture = Files.write(folder.resolve("leg.JPG"), new byte[] {(byte) 0xFF, (byte) 0xD8, 1, 2, 3});
        Ran photograph = Ran.here("trace", picture.toString(), "--span", "400 mm");
        assertThat(photograph.code()).isEqualTo(2);
        assertThat(photograph.err()).contains("leg.JPG: ").hasLineCount(1);
        Ran erring = Ran.here("trace", picture.toString(), "--error", "0.1");
        assertThat(erring.err())
                .contains("a photograph tells its own uncertainty")
                .hasLineCount(1);
    }

    private void refused(String words, String table, String... options) throws IOException {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "trace";
        arguments[1] = table(table);
        System.arraycopy(options, 0, arguments, 2, options.length);
        Ran ran = Ran.here(arguments);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(words).hasLineCount(1);
    }
}
