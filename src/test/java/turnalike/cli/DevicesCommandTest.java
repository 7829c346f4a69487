package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tokens for programs, made where the host's page is not open. */
class DevicesCommandTest {
    @TempDir
    private Path folder;

    private Ran devices(String... more) throws Exception {
        String[] arguments = new String[more.length + 3];
        arguments[0] = "devices";
        arguments[1] = "--store";
        arguments[2] = folder.resolve("shop.db").toString();
        System.arraycopy(more, 0, arguments, 3, more.length);
        return Ran.asProcess(folder, arguments);
    }

    @Test
    void a_token_is_made_listed_and_shown_out() throws Exception {
        assertThat(devices().out()).contains("No device is paired.");
        Ran made = devices("--token", "ledger");
        assertThat(made.code()).isZero();
        assertThat(made.out())
                .contains("ledger  may only log and turn")
                .containsPattern("Token, shown this once: [\\w-]{43}\\R");
        assertThat(devices("--token", "planner", "--may", "patterns").out()).contains("planner  may change patterns");
        String listed = devices().out();
        assertThat(listed).contains("ledger").contains("planner").doesNotContain("Token");
        String id = listed.substring(0, listed.indexOf(' '));
        assertThat(devices("--show-out", id).out()).doesNotContain("ledger").contains("planner");
    }

    @Test
    void what_a_token_may_not_be_is_told() throws Exception {
        assertThat(devices("--token", "x", "--may", "fly").err()).contains("--may: was 'fly'; give log or patterns");
        assertThat(devices("--may", "log").err()).contains("make one with --token NAME");
        assertThat(devices("--token", " ").err()).contains("--token: is no device's name");
    }
}
