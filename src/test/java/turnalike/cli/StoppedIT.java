package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A long search ended by a signal, as by Ctrl-C: what was found by then is printed whole. */
class StoppedIT {
    private static final int SIGTERM = 128 + 15;

    @TempDir
    Path folder;

    @Test
    void a_plan_that_is_stopped_prints_the_best_found_with_its_bound() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("long.job.json"), job());
        Path out = folder.resolve("out.json");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(
                        Ran.command("-Dturnalike.terminal=true", "plan", "long.job.json", "--json", "--seconds", "600"))
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        for (int tenths = 0; tenths < 600 && !Files.readString(err).contains("found, at least 7"); tenths++) {
            Thread.sleep(100);
        }
        assertThat(err).content().contains("found, at least 7");
        assertThat(process.isAlive()).isTrue();
        process.destroy();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(SIGTERM);
        JsonNode settings = new ObjectMapper().readTree(out.toFile()).get("settings");
        assertThat(settings.get("fewest_proven").booleanValue()).isFalse();
        assertThat(settings.get("dividers").size()).isGreaterThan(7);
        assertThat(Files.readString(err)).contains("fewest divider settings: ").endsWith(" \r");
    }

    /** An invented turning of 58 marks without repeats: its proof takes hours. */
    private static String job() {
        List<String> members = new ArrayList<>();
        for (int i = 0; i < 57; i++) {
            members.add("{\"kind\": \"cylinder\", \"length\": \"%d.%d mm\", \"diameter\": %d}"
                    .formatted(5 + i * i % 23, i * 7 % 10, 30 + i % 2));
        }
        return """
                {"format": "turnalike-job", "version": 1, "title": "Many rings (invented)", "units": "mm", "count": 2,
                 "settings": {"largest": "1500 mm"}, "wood": {"species": "White ash"},
                 "pattern": {"stock": {"section": "square", "size": 40, "length": 1500}, "members": [%s]}}
                """.formatted(String.join(", ", members));
    }
}
