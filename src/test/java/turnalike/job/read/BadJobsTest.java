package turnalike.job.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.units.Problem;

/**
 * Every bad job file we know of, each with the lines it must bring, in {@code expected.txt}. A file found to slip through joins the
 * folder and stays for ever.
 */
class BadJobsTest {
    private static final Path FOLDER = Path.of("src/test/resources/turnalike/job/bad");

    @Test
    void each_bad_file_brings_its_own_message() throws IOException {
        StringBuilder actual = new StringBuilder();
        for (Path file : files()) {
            Job.Read read = JobReader.read(Files.readString(file));
            assertThat(read.job()).as("%s is refused", file).isEmpty();
            actual.append(file.getFileName()).append('\n');
            read.problems()
                    .forEach(problem ->
                            actual.append("  ").append(problem.line()).append('\n'));
        }
        Path expected = FOLDER.resolve("expected.txt");
        if (!Files.exists(expected)) {
            Files.writeString(expected, actual.toString());
            fail("no expected.txt; wrote one, read it before keeping it");
        }
        assertThat(actual.toString()).isEqualTo(Files.readString(expected));
    }

    @Test
    void there_are_at_least_forty_and_no_two_alike() throws IOException {
        List<Path> files = files();
        assertThat(files).hasSizeGreaterThanOrEqualTo(40);
        List<String> contents = files.stream().map(BadJobsTest::read).toList();
        assertThat(contents).doesNotHaveDuplicates();
    }

    @Test
    void every_message_names_its_place_and_its_mend_on_one_line() throws IOException {
        for (Path file : files()) {
            for (Problem problem : JobReader.read(read(file)).problems()) {
                assertThat(problem.where()).isNotBlank();
                assertThat(problem.what()).isNotBlank();
                assertThat(problem.mend()).isNotBlank();
                assertThat(problem.line()).doesNotContain("\n", "\r", "Exception", "turnalike.");
            }
        }
    }

    @Test
    void cutting_a_good_file_anywhere_never_throws() throws IOException {
        String good = read(Path.of("src/main/resources/turnalike/demo/fair-wheel.job.json"));
        assertThat(JobReader.read(good).problems()).isEmpty();
        for (int end = 0; end < good.length() - 2; end++) {
            assertThat(JobReader.read(good.substring(0, end)).job())
                    .as("cut at %d", end)
                    .isEmpty();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .collect(Collectors.toList());
        }
    }
}
