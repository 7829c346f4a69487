package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which test classes {@code ./check NAME} takes: the function that the script asks, on this checkout. */
class CheckNamesTest {
    private static final String TESTS = "src/test/java/turnalike/";

    private static List<String> named(String name) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("bash", "-c", "here=. && . scripts/build.sh && tests_named \"$0\"", name)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said.lines().toList();
    }

    /** The files of that ending in one folder, looked up without the script. */
    private static List<String> in(String folder, String ending) throws IOException {
        try (Stream<Path> all = Files.list(Path.of(TESTS + folder))) {
            return all.map(Path::toString)
                    .filter(each -> each.endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void a_class_goes_by_its_name_with_or_without_its_ending() throws Exception {
        List<String> whip = List.of(TESTS + "turning/WhipTest.java");
        assertThat(named("Whip")).isEqualTo(whip);
        assertThat(named("WhipTest")).isEqualTo(whip);
        assertThat(named("Whi?Test")).isEqualTo(whip);
        assertThat(named("CheckName*")).containsExactly(TESTS + "CheckNamesTest.java");
        assertThat(named("hip")).isEmpty();
        assertThat(named("Browser")).as("what only helps tests is none").isEmpty();
    }

    @Test
    void a_package_before_it_means_the_classes_of_that_package_alone() throws Exception {
        List<String> photo = in("photo", "Test.java");
        assertThat(photo).hasSizeGreaterThan(5);
        assertThat(named("turnalike.photo.*Test")).isEqualTo(photo);
        assertThat(named("photo.*Test")).isEqualTo(photo);
        assertThat(named("turnalike.photo.*"))
                .containsAll(photo)
                .containsAll(in("photo", "IT.java"))
                .hasSize(photo.size() + in("photo", "IT.java").size());
        assertThat(named("turnalike.turning.Whip")).hasSize(1);
        assertThat(named("turnalike.photo.Whip")).isEmpty();
        assertThat(named("hoto.*")).isEmpty();
    }

    @Test
    void a_star_in_a_package_stands_for_one_of_its_words() throws Exception {
        assertThat(named("web.*.CopyPage*")).containsExactly(TESTS + "web/copy/CopyPageIT.java");
        assertThat(named("turnalike.*.CopyPage*")).isEmpty();
        assertThat(named("web.*.Pages*")).as("packages below it alone").isEmpty();
        assertThat(named("web.Pages")).containsExactly(TESTS + "web/PagesTest.java");
    }
}
