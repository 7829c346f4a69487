package turnalike.job.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** docs/job-file.md and the shipped schema say what the program reads; {@code -Dturnalike.renew=true} writes them anew. */
class JobFileDocsTest {
    private static final Path DOCS = Path.of("docs/job-file.md");
    private static final Path SCHEMA = Path.of("docs/job-file.schema.json");
    private static final String BEGIN = "<!-- every key -->\n";
    private static final String END = "<!-- end of every key -->\n";

    @Test
    void the_table_of_keys_is_the_descriptions() throws IOException {
        String docs = Files.readString(DOCS);
        int begin = docs.indexOf(BEGIN) + BEGIN.length();
        int end = docs.indexOf(END);
        assertThat(end).as("%s holds the table between its two comments", DOCS).isGreaterThanOrEqualTo(begin);
        String renewed = docs.substring(0, begin) + KeyRows.table() + docs.substring(end);
        holds(DOCS, renewed);
    }

    @Test
    void the_shipped_schema_is_the_descriptions() throws IOException {
        holds(SCHEMA, JobSchema.print());
    }

    private static void holds(Path file, String renewed) throws IOException {
        if (Boolean.getBoolean("turnalike.renew")) {
            Files.writeString(file, renewed);
        }
        assertThat(Files.exists(file) ? Files.readString(file) : "")
                .as("%s is not what the description says; run this test with -Dturnalike.renew=true", file)
                .isEqualTo(renewed);
    }
}
