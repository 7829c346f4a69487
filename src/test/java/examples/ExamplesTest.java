package examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples of docs/library.md run as they stand, from outside our packages. */
class ExamplesTest {
    private static final Path JOB = Path.of("src/main/resources/turnalike/demo/fair-wheel.job.json");
    private static final Path PIECES = Path.of("src/main/resources/turnalike/demo/fair-wheel-pieces.csv");

    @TempDir
    Path folder;

    private interface Example {
        void run(PrintStream out) throws IOException;
    }

    private static String told(Example example) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            example.run(out);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void a_pattern_is_weighed() throws IOException {
        assertThat(told(out -> WeighAPattern.print(JOB, out)))
                .contains("141", "balances 190", "dividers at ", "ace shield");
    }

    @Test
    void a_bad_job_file_is_told_line_by_line() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.job.json"), "{}");
        assertThat(told(out -> WeighAPattern.print(bad, out))).contains("format: is missing");
    }

    @Test
    void a_set_is_placed() throws IOException {
        assertThat(told(out -> PlaceASet.print(JOB, PIECES, out))).contains("place 14: piece ", "left over: ");
    }

    @Test
    void a_master_is_written() throws IOException {
        PrintAMaster.write(JOB, folder);
        assertThat(folder.resolve("piece.3mf")).isNotEmptyFile();
        assertThat(folder.resolve("stations.csv")).content().startsWith("x,diameter,side,mark");
    }
}
