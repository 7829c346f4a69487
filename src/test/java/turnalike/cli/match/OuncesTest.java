package turnalike.cli.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

/** A set weighed in ounces is told in ounces, on the screen and on its record. */
class OuncesTest {
    private static final String PIECES = """
            piece,mass_oz,length
            1,7.9,7
            2,8.2,7
            3,7.6,7
            4,8.0,7 1/64
            5,8.4,7
            """;
    private static final String BLANKS = "blank,mass_oz\nA,14.2\nB,13.9\nC,14.5\nD,14\nE,14.1\n";

    @TempDir
    private Path folder;

    private Path job(String scale, String frame) throws IOException {
        return Files.writeString(folder.resolve("x.job.json"), """
                {"format": "turnalike-job", "version": 1, "units": "in", "count": 4,
                 "pattern": {"name": "Spoke", "stock": {"section": "square", "size": "1 3/4", "length": 9},
                  "members": [{"kind": "tenon", "length": 1, "diameter": "5/8"},
                   {"kind": "cylinder", "length": 6, "diameter": "1 1/2"}]},
                 "wood": {"density_kg_m3": 1200}, "tolerances": {"mass_pct": 12%s}, "frame": %s}
                """.formatted(scale, frame));
    }

    private String told(String command, Path job, String... more) throws IOException {
        Path pieces = Files.writeString(folder.resolve("x.csv"), command.equals("blanks") ? BLANKS : PIECES);
        String[] all = new String[3 + more.length];
        all[0] = command;
        all[1] = job.toString();
        all[2] = pieces.toString();
        System.arraycopy(more, 0, all, 3, more.length);
        Ran ran = Ran.here(all);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    @Test
    void every_frame_tells_the_tables_ounces() throws IOException {
        String wheel = "{\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 3}";
        for (String frame :
                new String[] {wheel, "{\"kind\": \"row\", \"places\": 4}", "{\"kind\": \"legs\", \"places\": 4}"}) {
            Path out = folder.resolve("set");
            String text = told("match", job("", frame), "--out", out.toString());
            assertThat(text).as(frame).contains("oz").doesNotContainPattern("\\d g\\b(?!·)");
            assertThat(Files.readString(out.resolve("set-record-us-letter.svg")))
                    .as(frame)
                    .containsPattern("\\d oz")
                    .doesNotContainPattern("\\d g\\b(?!·)");
        }
    }

    /** In a job in inches nobody reads what a mark may be off by in ten-thousandths of a millimetre. */
    @Test
    void what_may_be_off_is_told_in_the_job_s_lengths() throws IOException {
        String frame = "{\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 3}";
        String text = told("match", job(", \"mark\": \"1/64\", \"diameter\": \"1/64\"", frame));
        assertThat(text)
                .containsPattern("seats (under )?\\d+ % \\(off by up to 0\\.01 in\\)")
                .containsPattern("as diameters off by up to 1/64 in move it|off by up to a mark's 1/64 in")
                .doesNotContainPattern("off by up to (a mark's )?[\\d.]+ mm");
    }

    @Test
    void a_scale_in_ounces_is_what_the_plan_and_all_that_follows_tell() throws IOException {
        Path job = job(", \"scale_oz\": 0.1", "{\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 3}");
        assertThat(told("match", job)).contains("steps of 0.1 oz").containsPattern("masses within 0\\.\\d oz");
        assertThat(told("mend", job, "--piece", "5")).startsWith("Piece 5 weighs 8.4 oz, wanted ");
        assertThat(told("mend", job, "--piece", "5", "--to", "8.2")).startsWith("Piece 5 weighs 8.4 oz, wanted 8.2 oz");
        assertThat(told("blanks", job)).contains("weighs oz", "finished oz").containsPattern("Spread +0\\.\\d oz of");
        Ran plan = Ran.here("plan", job.toString());
        assertThat(plan.out())
                .containsPattern("weight   \\d+\\.\\d oz \\(\\d+ g\\)")
                .containsPattern("scatters them by 0\\.\\d\\d oz");
    }

    @Test
    void keep_shows_how_to_log_a_piece_of_about_that_weight() throws IOException {
        for (String[] each : new String[][] {{"", "214\\.\\d"}, {", \"scale_oz\": 0.1", "7\\.\\d"}}) {
            Ran ran = Ran.here(
                    "keep",
                    job(each[0], "null").toString(),
                    "--store",
                    folder.resolve("x.db").toString());
            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(ran.out()).containsPattern("--piece 1 --mass " + each[1] + "\n");
        }
    }

    @Test
    void no_key_of_the_file_stands_in_what_is_told_of_a_set() throws IOException {
        Path job = Files.writeString(
                folder.resolve("tight.job.json"),
                Files.readString(job("", "{\"kind\": \"legs\", \"places\": 4}"))
                        .replace("\"mass_pct\": 12", "\"mass_pct\": 1"));
        assertThat(told("match", job))
                .containsPattern("group 1: masses differ by \\S+ %, more than the tolerance for a set's weights, 1 %")
                .doesNotContain("mass_pct");
    }

    @Test
    void a_step_in_grams_and_in_ounces_is_refused() throws IOException {
        Ran ran = Ran.here(
                "plan", job(", \"scale_oz\": 0.1, \"scale_g\": 1", "null").toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("gives what the scale shows in grams and in ounces; keep scale_g or scale_oz, not both");
    }
}
