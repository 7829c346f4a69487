package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code ./package} hands out starts by its script, with stand-ins for Java that say what they were asked; {@code ./package} itself runs the
 * whole of it.
 */
class PackageTest {
    @TempDir
    private Path folder;

    private record Started(int code, String out, String err) {}

    /** The unpacked folder, with nothing but the script in it. */
    private Path unpacked() throws IOException {
        Path bin = Files.createDirectories(folder.resolve("a folder/bin"));
        Files.copy(Path.of("scripts/packed/turnalike"), bin.resolve("turnalike"));
        run(bin.resolve("turnalike"));
        Files.writeString(folder.resolve("a folder/SHA256SUMS"), "0  nothing\n");
        return bin.resolve("turnalike");
    }

    private static void run(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** A Java of that version, that only says what it was asked. */
    private Path java(String home, String version) throws IOException {
        Path java = Files.createDirectories(folder.resolve(home).resolve("bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$0\" \"$@\"\n");
        run(java);
        Files.writeString(folder.resolve(home).resolve("release"), "X=\"1\"\nJAVA_VERSION=\"" + version + "\"\n");
        return java;
    }

    private Started start(Path script, String javaHome, String... arguments) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(script.toString());
        builder.command().addAll(List.of(arguments));
        builder.environment().clear();
        builder.environment().put("PATH", "/usr/bin:/bin");
        // Nothing is made ready: what it is made by is a stand-in.
        builder.environment().put("XDG_CACHE_HOME", "/dev/null");
        if (!javaHome.isEmpty()) {
            builder.environment().put("JAVA_HOME", folder.resolve(javaHome).toString());
        }
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process =
                builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Started(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    @Test
    void it_starts_by_the_java_beside_it_before_any_other_and_hands_on_what_was_asked() throws Exception {
        Path script = unpacked();
        java("other", "21.0.1");
        java("a folder/runtime", "17.0.15");
        Started started = start(script, "other", "plan", "two words.json");
        assertThat(started.err()).isEmpty();
        assertThat(started.code()).isZero();
        assertThat(started.out().lines())
                .startsWith(
                        folder.toRealPath().resolve("a folder/runtime/bin/java").toString())
                .contains("turnalike.Main", folder.toRealPath() + "/a folder/lib/*")
                .doesNotContain("--illegal-native-access=allow", "-XX:TieredStopAtLevel=1")
                .endsWith("plan", "two words.json");
    }

    @Test
    void a_link_to_it_finds_the_folder_and_a_later_java_is_told_to_be_quiet() throws Exception {
        java("later", "25.0.1");
        Path link = Files.createSymbolicLink(folder.resolve("link"), unpacked());
        Started started = start(link, "later", "--version");
        assertThat(started.out().lines())
                .startsWith(folder.resolve("later/bin/java").toString())
                .contains(
                        "--illegal-native-access=allow",
                        folder.toRealPath() + "/a folder/lib/*",
                        "-XX:TieredStopAtLevel=1");
    }

    @Test
    void without_a_java_that_will_do_it_says_so_on_one_line() throws Exception {
        Path script = unpacked();
        java("old", "11.0.2");
        Started old = start(script, "old", "demo");
        assertThat(old.code()).isEqualTo(2);
        assertThat(old.err()).hasLineCount(1).contains("is Java 11; install 17 or later");
        Started none = start(script, "nowhere", "demo");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).hasLineCount(1).contains("JAVA_HOME has no Java at");
    }

    /** The two scripts ask for the same program; what Windows lacks is that classes are made ready. */
    @Test
    void both_scripts_start_the_same_program() throws IOException {
        String unix = Files.readString(Path.of("scripts/packed/turnalike"));
        String windows = Files.readString(Path.of("scripts/packed/turnalike.bat"));
        for (String each : List.of(
                "turnalike.Main",
                "-XX:+UseSerialGC",
                "-Xlog:all=error:stderr",
                "-Djava.awt.headless=true",
                "--illegal-native-access=allow")) {
            assertThat(unix).contains(each);
            assertThat(windows).contains(each);
        }
        assertThat(windows).contains("LSS 17", "GEQ 24", "exit /b 2").doesNotContain("findstr");
        assertThat(unix).startsWith("#!/bin/sh\n").contains("-ge 17", "-ge 24");
    }
}
