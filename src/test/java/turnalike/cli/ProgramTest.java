package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.sheets.PlanSheet;

class ProgramTest {
    private static final String DEMO_JOB = "src/main/resources/turnalike/demo/fair-wheel.job.json";
    private static final String DEMO_PIECES = "src/main/resources/turnalike/demo/fair-wheel-pieces.csv";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    /** One line that names the place and the mend, exit code 2, nothing on standard output, never a stack trace. */
    private static void assertToldOnOneLine(Ran ran, String... parts) {
        assertThat(ran.code()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err())
                .startsWith("turnalike: ")
                .contains("; ")
                .contains(parts)
                .doesNotContain("Exception", "\tat ");
    }

    @Test
    void a_bad_job_file_is_told_with_file_place_and_mend() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB)).replace("\"crown\": \"1 1/4\"", "\"crown\": \"7/8\"");
        assertToldOnOneLine(
                Ran.here("plan", file("x.job.json", job).toString(), "--json"),
                "x.job.json: member 7 (ring): crown: must exceed the root",
                "make the crown larger");
    }

    @Test
    void what_is_wrong_is_told_in_german_where_that_is_asked_for() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB)).replace("\"crown\": \"1 1/4\"", "\"crown\": \"7/8\"");
        assertToldOnOneLine(
                Ran.here("plan", file("x.job.json", job).toString(), "--language", "de"),
                "Glied 7 (Ring)",
                "den Scheitel größer machen");
        assertToldOnOneLine(Ran.here("plan", "nowhere.job.json", "--language", "fr"), "give en or de");
    }

    @Test
    void every_problem_is_listed_on_request() {
        String file = "src/test/resources/turnalike/job/bad/five-at-once.json";
        assertToldOnOneLine(Ran.here("plan", file), "and 3 more");
        Ran all = Ran.here("plan", file, "--every-problem");
        assertThat(all.code()).isEqualTo(2);
        assertThat(all.err().lines()).hasSize(4).allMatch(line -> line.startsWith("turnalike: five-at-once.json: "));
    }

    @Test
    void files_that_cannot_be_read_are_told() throws IOException {
        assertToldOnOneLine(Ran.here("plan", "nowhere.job.json"), "no such file");
        assertToldOnOneLine(Ran.here("plan", folder.toString()), "is a folder");
        Path latin = Files.write(
                folder.resolve("latin.job.json"), "{\"title\": \"Bär\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertToldOnOneLine(Ran.here("plan", latin.toString()), "is not UTF-8");
        Path blocked = file("blocked", "x");
        assertToldOnOneLine(Ran.here("plan", DEMO_JOB, "--out", blocked.toString()), "cannot be made a folder");
    }

    @Test
    void arguments_it_does_not_know_are_told_with_what_comes_near() {
        assertToldOnOneLine(Ran.here("turn", "x.json"), "there is no command 'turn'; see 'turnalike --help'");
        assertToldOnOneLine(Ran.here("frobnicate"), "there is no command 'frobnicate'; see 'turnalike --help'");
        assertToldOnOneLine(Ran.here("pln", "x.json"), "there is no command 'pln'; is it plan? else see");
        assertToldOnOneLine(
                Ran.here("plan", "--jsn", DEMO_JOB),
                "there is no option '--jsn'; is it --json?",
                "'turnalike plan --help'");
        assertToldOnOneLine(Ran.here("plan", DEMO_JOB, DEMO_PIECES), DEMO_PIECES + "' is one argument too many");
        assertToldOnOneLine(Ran.here("plan", DEMO_JOB, "--seconds", "soon"), "'soon' is not a number");
    }

    @ParameterizedTest
    @CsvSource({
        "plan",
        "match",
        "frobnicate",
        "plan --colour",
        "plan a b",
        "match a.json",
        "demo extra",
        "plan x --paper a5"
    })
    void wrong_arguments_are_told(String arguments) {
        assertToldOnOneLine(Ran.here(arguments.split(" ")), "command line", "--help");
    }

    @ParameterizedTest
    @CsvSource({"-1", "NaN", "1e99"})
    void a_time_that_cannot_be_waited_for_is_told(String seconds) {
        assertToldOnOneLine(Ran.here("plan", DEMO_JOB, "--seconds", seconds), "--seconds");
        assertToldOnOneLine(Ran.here("match", DEMO_JOB, DEMO_PIECES, "--seconds=" + seconds), "--seconds");
    }

    @Test
    void pieces_that_cannot_be_placed_are_told() throws IOException {
        assertToldOnOneLine(
                Ran.here(
                        "match",
                        DEMO_JOB,
                        file("few.csv", "piece,mass_g\n1,140\n2,141\n").toString()),
                "few.csv: pieces: 2 pieces for 14 places");
        assertToldOnOneLine(
                Ran.here(
                        "match",
                        DEMO_JOB,
                        file("no-mass.csv", "piece,mass_g\n1,140\n2,\n").toString()),
                "piece 2",
                "has no mass");
        assertToldOnOneLine(
                Ran.here(
                        "match",
                        DEMO_JOB,
                        file("odd.csv", "piece,mass_g\n1,heavy\n").toString()),
                "odd.csv: line 2");
        assertToldOnOneLine(Ran.here("match", DEMO_JOB, file("empty.csv", "").toString()), "empty.csv");
        String noFrame = Files.readString(Path.of(DEMO_JOB)).replaceAll(",\\s*\"frame\": \\{[^}]*}", "");
        assertToldOnOneLine(
                Ran.here("match", file("no-frame.job.json", noFrame).toString(), DEMO_PIECES),
                "no frame",
                "add \"frame\"");
    }

    @Test
    void help_teaches() {
        Ran top = Ran.here("--help");
        assertThat(top.code()).isZero();
        assertThat(top.out())
                .contains("First time?", "plan", "match", "demo", "Exit codes")
                .doesNotContain("warm-up");
        assertThat(Ran.here("plan", "--help").out()).contains("Example: turnalike plan", "--json", "--out");
        assertThat(Ran.here("match", "--help").out()).contains("mass_oz", "--strict", "--seconds");
    }

    @Test
    void json_is_one_object_and_nothing_else() {
        assertThat(Ran.here("plan", DEMO_JOB, "--json").json().isObject()).isTrue();
        assertThat(Ran.here("match", DEMO_JOB, DEMO_PIECES, "--json", "--seconds", "0")
                        .json()
                        .isObject())
                .isTrue();
    }

    @Test
    void a_plan_fits_a_screen_and_explains_itself_on_request() {
        Ran plan = Ran.here("plan", DEMO_JOB);
        // The frame's figures are a screen's foot of their own: what a wheel asks for beside its pieces.
        int frame = plan.out().indexOf("\nFrame ");
        int afterFrame = plan.out().indexOf("\n\n", frame + 1);
        assertThat(plan.out().substring(frame, afterFrame).lines().count()).isLessThan(13);
        String rest = plan.out().substring(0, frame) + plan.out().substring(afterFrame);
        assertThat(rest.lines().count()).isLessThan(60);
        assertThat(plan.out())
                .contains("15 in (381 mm)", "Dividers", "Calipers", "Stock", "Turning", "slender stretches")
                .doesNotContain("null", "Optional");
        assertThat(Ran.here("plan", DEMO_JOB, "--workings").out()).contains("How this was found", "source:");
    }

    @Test
    void json_and_sheets_may_be_asked_for_together() {
        Path out = folder.resolve("sheets");
        Ran ran = Ran.here("plan", DEMO_JOB, "--json", "--out", out.toString(), "--paper", "both");
        assertThat(ran.json().has("solid")).isTrue();
        assertThat(out.resolve("bench-card-a4.pdf")).isNotEmptyFile();
        assertThat(out.resolve("marking-stick-us-letter.pdf")).isNotEmptyFile();
        assertThat(out.resolve("marking-stick-a4.svg")).isNotEmptyFile();
        assertThat(out.resolve("cut-order-a4.pdf")).isNotEmptyFile();
        assertThat(out.resolve("cut-order-us-letter-1.svg")).isNotEmptyFile();
        assertThat(out.toFile().list()).noneMatch(name -> name.endsWith(".part"));
        // A wheel has every sheet but those of a row, of legs and of a home that is told.
        int sheets = PlanSheet.values().length
                - EnumSet.of(PlanSheet.RAIL_STICK, PlanSheet.LEG_GUIDE, PlanSheet.SEAT_TEMPLATE, PlanSheet.JOINTS)
                        .size();
        assertThat(out.toFile().list((dir, name) -> name.endsWith(".pdf"))).hasSize(2 * sheets);
    }

    @Test
    void control_letters_in_a_name_do_not_reach_the_terminal() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB))
                .replace(
                        "\"name\": \"ring\", \"length\": \"1/2\"",
                        "\"name\": \"ri\\u001b[2Jng\\n\", \"length\": \"0\"");
        Ran ran = Ran.here("plan", file("esc.job.json", job).toString());
        assertToldOnOneLine(ran, "must be above zero");
        assertThat(ran.err()).doesNotContain("\u001b");
    }
}
