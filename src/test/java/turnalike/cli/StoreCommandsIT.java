package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
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
