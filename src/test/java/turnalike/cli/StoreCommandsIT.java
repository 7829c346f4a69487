package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code keep}, {@code log}, {@code give} and {@code check}, as the file format's document has them. */
class StoreCommandsIT {
    private static final String DEMO_JOB = "src/main/resources/turnalike/demo/fair-wheel.job.json";

    @TempDir
    Path folder;

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private static JsonNode good(String... arguments) {
        Ran ran = Ran.here(arguments);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        return ran.json();
    }

    private String kept(String store) {
        return good("keep", DEMO_JOB, "--store", path(store), "--json")
                .get("job")
                .textValue();
    }

    private String given(String id, String store) {
        Ran ran = Ran.here("give", id, "--store", path(store));
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    private static String refused(String... arguments) {
        Ran ran = Ran.here(arguments);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
        return ran.err().strip();
    }

    @Test
    void a_job_is_kept_logged_given_and_taken_back_unchanged() throws IOException {
        String id = kept("shop.db");
        JsonNode logged = good(
                "log",
                id,
                "--store",
                path("shop.db"),
                "--piece",
                "7",
                "--mass",
                "8.6 oz",
                "--measure",
                "d1=1 1/2",
                "--measure",
                "length=400 mm",
                "--minutes",
                "22.5",
                "--json");
        assertThat(logged.get("kept").booleanValue()).isTrue();
        good("log", id, "--store", path("shop.db"), "--piece", "8", "--json");
        String first = given(id, "shop.db");
        Files.writeString(folder.resolve("carried.json"), first);
        JsonNode again = good("keep", path("carried.json"), "--store", path("other.db"), "--json");
        assertThat(given(again.get("job").textValue(), "other.db")).isEqualTo(first);
        assertThat(good("keep", path("carried.json"), "--store", path("shop.db"), "--json")
                        .get("job"))
                .isEqualTo(again.get("job"));
        JsonNode check = good("check", "--store", path("other.db"), "--json");
        assertThat(check.get("sound").booleanValue()).isTrue();
        assertThat(check.get("jobs").intValue()).isEqualTo(1);
        assertThat(check.get("pieces").intValue()).isEqualTo(2);
        assertThat(check.get("faults")).isEmpty();
    }

    /** One bit of a weight that was kept, turned: the file is one SQLite has nothing against. */
    @Test
    void nothing_is_said_to_be_kept_in_a_damaged_store() throws IOException {
        String id = kept("shop.db");
        good("log", id, "--store", path("shop.db"), "--piece", "7", "--mass", "243.1", "--json");
        byte[] bytes = Files.readAllBytes(folder.resolve("shop.db"));
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        for (int at = text.indexOf("243.1"); at >= 0; at = text.indexOf("243.1", at + 1)) {
            bytes[at] ^= 1;
        }
        Files.write(folder.resolve("shop.db"), bytes);
        assertThat(Ran.here("check", "--store", path("shop.db")).out()).contains("NOT sound");
        for (String[] arguments : new String[][] {
            {"log", id, "--store", path("shop.db"), "--piece", "8", "--mass", "200"},
            {"keep", DEMO_JOB, "--store", path("shop.db")},
            {"undo", id, "--store", path("shop.db")}
        }) {
            assertThat(refused(arguments)).contains("shop.db: is damaged", "turnalike check");
        }
        Ran typed = typing("200\n", "log", id, "--store", path("shop.db"), "--keyed", "mass_g");
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.out()).doesNotContainIgnoringCase("kept");
        assertThat(Files.readAllBytes(folder.resolve("shop.db"))).isEqualTo(bytes);
    }

    @Test
    void what_is_given_holds_the_job_and_the_pieces_with_their_units() throws IOException {
        String id = kept("shop.db");
        good("log", id, "--store", path("shop.db"), "--piece", "7", "--mass", "243.1", "--json");
        good("log", id, "--store", path("shop.db"), "--piece", "7", "--measure", "d1=1 1/2", "--json");
        JsonNode given = new ObjectMapper().readTree(given(id, "shop.db"));
        JsonNode job = new ObjectMapper().readTree(Files.readString(Path.of(DEMO_JOB)));
        assertThat(given.get("job")).isEqualTo(job);
        assertThat(given.at("/pieces/0/piece").textValue()).isEqualTo("7");
        assertThat(given.at("/pieces/0/mass_g").doubleValue()).isEqualTo(243.1);
        assertThat(given.at("/pieces/0/d1_mm").doubleValue()).isCloseTo(38.1, within(1e-9));
        assertThat(given.get("history")).hasSize(3);
    }

    private static Ran typing(String text, String... arguments) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.here(arguments);
        } finally {
            System.setIn(before);
        }
    }

    private String pieces(String id) {
        Ran ran = Ran.here("give", id, "--store", path("shop.db"), "--pieces");
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    @Test
    void edits_are_undone_brought_back_and_stay_in_the_history() {
        String id = kept("shop.db");
        good("log", id, "--store", path("shop.db"), "--piece", "7", "--mass", "142", "--json");
        good("log", id, "--store", path("shop.db"), "--piece", "7", "--mass", "143", "--json");
        JsonNode undone = good("undo", id, "--store", path("shop.db"), "--json");
        assertThat(undone.get("what").textValue()).isEqualTo("log piece 7");
        assertThat(undone.get("next_redo").textValue()).isEqualTo("log piece 7");
        assertThat(pieces(id)).contains("7,142");
        assertThat(Ran.here("redo", id, "--store", path("shop.db")).out()).startsWith("Done again: log piece 7\n");
        assertThat(pieces(id)).contains("7,143");
        assertThat(refused("redo", id, "--store", path("shop.db"))).contains("has nothing to redo");
        JsonNode history = good("history", id, "--store", path("shop.db"), "--json");
        assertThat(history.get("steps"))
                .extracting(step -> step.get("did").textValue())
                .containsExactly("edit", "edit", "edit", "undo", "redo");
        assertThat(Ran.here("history", id, "--store", path("shop.db")).out()).contains("undo step 3: log piece 7");
        assertThat(refused("undo", "0000-0000-0000", "--store", path("shop.db")))
                .contains("no job 0000-0000-0000");
    }

    @Test
    void a_table_is_logged_whole_or_not_at_all_and_undone_at_one_stroke() throws IOException {
        String id = kept("shop.db");
        String table = "piece\tmass_g\tlength\tcolour\n1\t142,5\t15\tred\n2\t139,2\t14 63/64\t\n";
        JsonNode logged = typing(table, "log", id, "--store", path("shop.db"), "--from", "-", "--json")
                .json();
        assertThat(logged.get("kept").booleanValue()).isTrue();
        assertThat(logged.get("pieces")).hasSize(2);
        assertThat(pieces(id)).contains("1,142.5,15,red");
        Files.writeString(folder.resolve("more.csv"), "piece,d1,note\n2,1.001,knot\n3,0.998,\n");
        assertThat(Ran.here("log", id, "--store", path("shop.db"), "--from", path("more.csv"))
                        .out())
                .startsWith("Kept: 2 pieces");
        assertThat(pieces(id)).contains("2,139.2,14.984375,1.001,,knot");
        good("undo", id, "--store", path("shop.db"), "--json");
        assertThat(pieces(id)).doesNotContain("knot", "\n3,");
        String before = given(id, "shop.db");
        Files.writeString(folder.resolve("bad.csv"), "piece,mass_g\n4,141\n5,heavy\n");
        assertThat(refused("log", id, "--store", path("shop.db"), "--from", path("bad.csv")))
                .contains("bad.csv: ", "'heavy' is not a mass");
        assertThat(refused("log", id, "--store", path("shop.db"), "--from", path("bad.csv"), "--piece", "4"))
                .contains("stand by themselves");
        assertThat(refused("log", id, "--store", path("shop.db"))).contains("--piece: is missing");
        assertThat(given(id, "shop.db")).isEqualTo(before);
    }

    @Test
    void an_instrument_that_types_and_presses_enter_logs_piece_after_piece() {
        String id = kept("shop.db");
        String typed = "+  142.1 g\r\n143.0\nabc\n1432\nundo\n\n=9\n5 oz\n";
        Ran ran = typing(typed, "log", id, "--store", path("shop.db"), "--keyed", "mass_g", "--piece", "3");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out().lines())
                .anyMatch(line -> line.equals("kept piece 3: 142.1 g"))
                .anyMatch(line -> line.startsWith("not kept, still at piece 5: 'abc' is not a mass"))
                .anyMatch(line -> line.contains("143.2 g meant?"))
                .anyMatch(line -> line.equals("taken back: log piece 5"));
        assertThat(pieces(id).lines().skip(1))
                .extracting(line -> line.substring(0, line.indexOf(',')))
                .containsExactly("3", "4", "9");
        Ran json = typing("1.001\n", "log", id, "--store", path("shop.db"), "--keyed", "d1", "--json");
        assertThat(json.json().get("pieces")).hasSize(1);
        assertThat(refused("log", id, "--store", path("shop.db"), "--keyed", "girth"))
                .contains("names no measure");
        assertThat(refused("log", id, "--store", path("shop.db"), "--keyed", "d1", "--piece", "seven"))
                .contains("is no number");
    }

    @Test
    void what_the_job_judges_by_eye_is_logged_beside_what_is_measured() throws IOException {
        Files.writeString(
                folder.resolve("judged.json"),
                Files.readString(Path.of(DEMO_JOB))
                        .replaceFirst(
                                "\"count\": 14",
                                "\"count\": 14, \"likeness\": {\"noted\": {\"colour\": 0.5, \"grain\": 1}}"));
        String id = good("keep", path("judged.json"), "--store", path("shop.db"), "--json")
                .get("job")
                .textValue();
        String[] log = {"log", id, "--store", path("shop.db"), "--piece", "7"};
        good(with(log, "--measure", "colour=2", "--measure", "d1=1 1/2", "--measure", "grain= wavy ", "--json"));
        good(with(log, "--measure", "colour=3", "--json"));
        assertThat(pieces(id).lines().toList())
                .satisfiesExactly(heading -> assertThat(heading).contains("colour", "grain"), piece -> assertThat(piece)
                        .isEqualTo("7,,1.5,3,wavy"));
        assertThat(refused(with(log, "--measure", "colour= "))).contains("--measure colour: is empty");
        assertThat(refused(with(log, "--measure", "colour=2", "--measure", "colour=3")))
                .contains("--measure colour: is given twice");
        assertThat(refused(with(log, "--measure", "figure=3")))
                .contains("--measure figure: names no measure", "colour=2, grain=2");
        assertThat(refused("log", kept("shop.db"), "--store", path("shop.db"), "--piece", "7", "--measure", "colour=2"))
                .contains("--measure colour: names no measure", "likeness.noted");
    }

    private static String[] with(String[] some, String... more) {
        return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void a_figure_that_reads_like_a_slip_is_kept_and_asked_about() {
        String id = kept("shop.db");
        JsonNode logged = good("log", id, "--store", path("shop.db"), "--piece", "1", "--mass", "1409", "--json");
        assertThat(logged.get("kept").booleanValue()).isTrue();
        assertThat(logged.at("/questions/0/question").textValue()).contains("140.9 g meant?");
        assertThat(logged.at("/questions/0/kind").textValue()).isEqualTo("decimal point");
        assertThat(good("log", id, "--store", path("shop.db"), "--piece", "1", "--mass", "140.9", "--json")
                        .get("questions"))
                .isEmpty();
    }

    @Test
    void another_job_file_takes_the_first_ones_place_and_the_pieces_stay() throws IOException {
        String id = kept("shop.db");
        good("log", id, "--store", path("shop.db"), "--piece", "1", "--mass", "141", "--json");
        String changed = Files.readString(Path.of(DEMO_JOB)).replace("\"count\": 14", "\"count\": 28");
        Files.writeString(folder.resolve("changed.json"), changed);
        good("keep", path("changed.json"), "--store", path("shop.db"), "--into", id, "--json");
        assertThat(Ran.here("give", id, "--store", path("shop.db"), "--job-file")
                        .out())
                .isEqualTo(changed);
        assertThat(pieces(id)).contains("1,141");
        good("undo", id, "--store", path("shop.db"), "--json");
        assertThat(Ran.here("give", id, "--store", path("shop.db"), "--job-file")
                        .out())
                .isEqualTo(Files.readString(Path.of(DEMO_JOB)));
        assertThat(refused("give", id, "--store", path("shop.db"), "--job-file", "--pieces"))
                .contains("are two files");
    }

    @Test
    void each_job_file_is_a_job_of_its_own() {
        assertThat(kept("shop.db")).isNotEqualTo(kept("shop.db"));
        assertThat(good("check", "--store", path("shop.db"), "--json")
                        .get("jobs")
                        .intValue())
                .isEqualTo(2);
    }

    @Test
    void a_decimal_comma_in_the_machines_language_changes_nothing() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            String id = kept("shop.db");
            good("log", id, "--store", path("shop.db"), "--piece", "7", "--mass", "243,1", "--json");
            assertThat(given(id, "shop.db")).contains("\"mass_g\" : 243.1");
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "--mass | -3 | --mass: a mass is above zero",
                "--mass | heavy | --mass: 'heavy' is not a mass",
                "--mass | `` | --mass: is empty",
                "--measure | d1 | --measure d1: names no measure",
                "--measure | girth=3 | --measure girth: names no measure",
                "--measure | mass_g=3 | --measure mass_g: names no measure",
                "--measure | d1= | --measure d1: is empty",
                "--measure | d1=1/0 | --measure d1: ",
                "--measure | d1=0 | --measure d1: a measure is above zero",
                "--minutes | -1 | --minutes: was -1.0",
                "--minutes | soon | command line: "
            })
    void what_cannot_be_logged_is_refused_and_changes_nothing(String option, String value, String line) {
        String id = kept("shop.db");
        String before = given(id, "shop.db");
        assertThat(refused("log", id, "--store", path("shop.db"), "--piece", "7", option, value))
                .startsWith("turnalike: " + line);
        assertThat(given(id, "shop.db")).isEqualTo(before);
    }

    @Test
    void wrong_names_are_told() throws IOException {
        String id = kept("shop.db");
        assertThat(refused("log", id, "--store", path("none.db"), "--piece", "7"))
                .contains("no such file");
        assertThat(refused("log", "seven", "--store", path("shop.db"), "--piece", "7"))
                .isEqualTo("turnalike: ID: 'seven' is no job's id; give it as keep printed it, like 7k3m-2x9q-ht4d");
        assertThat(refused("give", "0000-0000-0000", "--store", path("shop.db")))
                .contains("no job 0000-0000-0000");
        assertThat(refused("log", id, "--store", path("shop.db"), "--piece", " "))
                .contains("--piece: is no label");
        assertThat(refused("check", "--store", path("none.db"))).contains("no such file");
        assertThat(refused("keep", DEMO_JOB, "--store", path("no/shop.db"))).contains("its folder does not exist");
        Files.writeString(folder.resolve("bad.json"), "{\"format\": \"turnalike-job\"}");
        assertThat(refused("keep", path("bad.json"), "--store", path("new.db"))).contains("bad.json: version");
        assertThat(folder.resolve("new.db")).doesNotExist();
        Files.writeString(folder.resolve("bad.json"), "{\"format\": \"turnalike-kept-job\"}");
        assertThat(refused("keep", path("bad.json"), "--store", path("new.db"))).contains("bad.json: format");
    }

    @Test
    void a_damaged_store_is_counted_told_of_and_not_written_to() throws IOException {
        String id = kept("shop.db");
        byte[] bytes = Files.readAllBytes(folder.resolve("shop.db"));
        byte[] cut = Arrays.copyOf(bytes, bytes.length - 5000);
        Files.write(folder.resolve("shop.db"), cut);
        Ran check = Ran.here("check", "--store", path("shop.db"), "--json");
        assertThat(check.code()).isEqualTo(2);
        assertThat(check.json().get("sound").booleanValue()).isFalse();
        assertThat(check.json().get("faults")).isNotEmpty();
        assertThat(check.err()).startsWith("turnalike: ").contains("is damaged");
        assertThat(refused("log", id, "--store", path("shop.db"), "--piece", "7"))
                .contains("is damaged");
        assertThat(refused("keep", DEMO_JOB, "--store", path("shop.db"))).contains("is damaged");
        assertThat(Files.readAllBytes(folder.resolve("shop.db"))).isEqualTo(cut);
    }

    @Test
    void for_people_it_says_the_same_in_words() {
        Ran keep = Ran.here("keep", DEMO_JOB, "--store", path("shop.db"));
        assertThat(keep.out()).startsWith("Kept 'Harrowmead fair wheel");
        assertThat(Ran.here("check", "--store", path("shop.db")).out())
                .isEqualTo(path("shop.db") + ": sound; 1 job and 0 pieces can be read.\n");
    }
}
