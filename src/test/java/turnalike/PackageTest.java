package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
        // Nothing is made ready: what it is made by is a stand-in.
        return startIn("/dev/null", script, javaHome, arguments);
    }

    private Started startWithCache(Path script, Path cache, String... arguments) throws Exception {
        return startIn(cache.toString(), script, "", arguments);
    }

    private Started startIn(String cache, Path script, String javaHome, String... arguments) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(script.toString());
        builder.command().addAll(List.of(arguments));
        builder.environment().clear();
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().put("XDG_CACHE_HOME", cache);
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

    /** A Java that writes down what it was asked, one line each, and makes the archives it is asked for. */
    private Path archivist(String home) throws IOException {
        Path java = java(home, "17.0.15");
        Files.writeString(java, """
                #!/bin/sh
                printf '%%s\\n' "$*" >> '%1$s'
                for each in "$@"; do
                    case $each in
                        -Xshare:dump) dump=yes ;;
                        -XX:ArchiveClassesAtExit=*) : > "${each#*=}" ;;
                        -XX:SharedArchiveFile=*) [ -z "${dump:-}" ] || : > "${each#*=}" ;;
                    esac
                done
                """.formatted(folder.resolve("asked.txt")));
        return java;
    }

    private List<String> asked() throws IOException {
        Path asked = folder.resolve("asked.txt");
        return Files.exists(asked) ? Files.readAllLines(asked) : List.of();
    }

    /** What the last start goes by, once the first one's archives are there. */
    private String startedAgain(Path script, Path cache, int lines) throws Exception {
        assertThat(startWithCache(script, cache, "--version").code()).isZero();
        long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (asked().size() < lines || made(cache, ".jsa") < lines - 1) {
            assertThat(System.nanoTime()).as("%s", asked()).isLessThan(last);
            Thread.sleep(20);
        }
        assertThat(startWithCache(script, cache, "--version").err()).isEmpty();
        return asked().get(lines);
    }

    private static long made(Path cache, String ending) throws IOException {
        try (Stream<Path> files = Files.list(cache.resolve("turnalike"))) {
            return files.filter(each -> each.toString().endsWith(ending)).count();
        }
    }

    /** The Java of the package comes without: its archive would come out another in each build. */
    @Test
    void the_first_start_has_java_s_own_classes_made_ready_and_the_program_s_upon_them() throws Exception {
        Path script = unpacked();
        archivist("a folder/runtime");
        Path cache = Files.createDirectories(folder.resolve("cache of mine"));
        String again = startedAgain(script, cache, 3);
        List<String> making = asked().stream()
                .filter(each -> each.contains("-Xshare:dump") || each.endsWith("warm-up"))
                .toList();
        assertThat(making).hasSize(2);
        assertThat(making.get(0)).contains("-Xshare:dump -XX:SharedArchiveFile=" + cache);
        assertThat(making.get(1)).contains(".java.jsa -XX:ArchiveClassesAtExit=" + cache);
        assertThat(again)
                .containsPattern("-XX:SharedArchiveFile=" + cache + "/turnalike/\\S+\\.java\\.jsa:" + cache
                        + "/turnalike/\\S+\\.jsa ");
        assertThat(asked()).hasSize(4);
    }

    @Test
    void a_java_whose_own_classes_are_ready_has_the_program_s_made_upon_them() throws Exception {
        Path script = unpacked();
        archivist("a folder/runtime");
        Path server = Files.createDirectories(folder.resolve("a folder/runtime/lib/server"));
        Files.createFile(server.resolve("classes.jsa"));
        Path cache = Files.createDirectories(folder.resolve("cache"));
        String again = startedAgain(script, cache, 2);
        assertThat(asked()).noneMatch(each -> each.contains("-Xshare:dump")).hasSize(3);
        assertThat(again).containsPattern("-XX:SharedArchiveFile=" + cache + "/turnalike/[^ :]+\\.jsa ");
    }

    /** Between two archives Java reads a colon, so no cache may have one in its path. */
    @Test
    void a_cache_folder_with_a_colon_goes_unused() throws Exception {
        Path script = unpacked();
        archivist("a folder/runtime");
        Path cache = Files.createDirectories(folder.resolve("a:b"));
        assertThat(startWithCache(script, cache, "--version").err()).isEmpty();
        assertThat(asked()).hasSize(1).noneMatch(each -> each.contains("SharedArchiveFile"));
        assertThat(cache).isEmptyDirectory();
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

    private static Set<String> words(String script, String list) {
        Matcher found = Pattern.compile(list).matcher(script);
        assertThat(found.find()).as(list).isTrue();
        return new TreeSet<>(List.of(found.group(1).strip().split("[ |]+")));
    }

    /** What is wrong with a Java is told alike, and one without a file beside it is asked what it is. */
    @Test
    void both_scripts_refuse_in_the_same_words() throws IOException {
        String unix = Files.readString(Path.of("scripts/packed/turnalike"));
        String windows = Files.readString(Path.of("scripts/packed/turnalike.bat"));
        for (String each : List.of(
                "JAVA_HOME has no Java at",
                "let it name one, 17 or later, or unset it",
                "no Java found; install one, 17 or later",
                "does not start; install Java 17 or later",
                "install 17 or later, or name one in JAVA_HOME")) {
            assertThat(unix).contains(each);
            assertThat(windows).contains(each);
        }
        assertThat(windows).contains(".\\java.exe -version", "%JAVA_HOME:\"=%").doesNotContain("major=17");
        // "Aktive Codepage: 850." is no number with its point.
        assertThat(windows).contains("tokens=2 delims=:.");
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
                "-Xms160m -Xmn96m",
                "--illegal-native-access=allow")) {
            assertThat(unix).contains(each);
            assertThat(windows).contains(each);
        }
        assertThat(windows).contains("LSS 17", "GEQ 24", "exit /b 2").doesNotContain("findstr");
        assertThat(words(windows, "in \\(([a-z ]+)\\) do if \"%asked%\"==\"%%c\" set \"heap=-Xms64m -Xmn40m\""))
                .isEqualTo(words(unix, "(?m)^ *([a-z |]+)\\) heap='-Xms64m -Xmn40m'"))
                .hasSize(8);
        assertThat(words(windows, "in \\(([a-z ]+)\\) do if \"%asked%\"==\"%%c\" set \"mode=\""))
                .containsOnlyOnceElementsOf(words(unix, "(?m)^ *([a-z |]+)\\) mode= ;;"))
                .containsOnlyOnceElementsOf(words(unix, "(?m)^ *([a-z |]+)\\) mode= heap"))
                .hasSize(4);
        assertThat(unix).startsWith("#!/bin/sh\n").contains("-ge 17", "-ge 24");
    }
}
