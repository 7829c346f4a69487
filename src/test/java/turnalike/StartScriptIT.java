package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The start script in a checkout of its own, with a program of three small classes: what it builds again, and when. */
class StartScriptIT {
    private static final Path HERE = Path.of("").toAbsolutePath();

    /** Not a temporary folder: the first start of each build leaves work behind that outlives it by a second. */
    private static final Path CHECKOUT =
            HERE.resolve("target/start-script-" + ProcessHandle.current().pid());

    private static final String MAIN = """
            package turnalike;

            public final class Main {
                public static void main(String[] arguments) throws Exception {
                    System.out.println(Word.SAID + " " + Main.class.getPackage().getImplementationVersion() + there());
                }

                private static String there() {
                    try {
                        return " " + Class.forName("turnalike.Extra").getSimpleName();
                    } catch (ClassNotFoundException absent) {
                        return "";
                    }
                }
            }
            """;

    /** The word last written: a build that stands is taken over by the next test. */
    private static String word = "one";

    /** The whole one: the checkout begins with a library less, which one test then adds. */
    private static String pom = "";

    private record Started(int code, String out, String err) {}

    @BeforeAll
    static void checkout() throws IOException {
        for (String each : List.of(
                "turnalike",
                "scripts/build.sh",
                "scripts/libraries.sha256",
                "pom.xml",
                "CHANGELOG.md",
                ".mvn/jvm.config",
                ".mvn/maven.config")) {
            Files.createDirectories(CHECKOUT.resolve(each).getParent());
            Files.copy(HERE.resolve(each), CHECKOUT.resolve(each));
        }
        pom = Files.readString(CHECKOUT.resolve("pom.xml"));
        write(
                "pom.xml",
                pom.replaceFirst("(?s)<dependency>\\s*<groupId>org.webjars.npm</groupId>.*?</dependency>", ""));
        write("src/main/resources/turnalike/word.txt", "a resource");
        write("src/main/jte/page.jte", "@param String word\n<p>${word}</p>\n");
        write("src/main/jte/second.jte", "<p>second</p>\n");
        write("src/main/java/turnalike/Main.java", MAIN);
        withExtra();
        says("one");
        withoutReadyClasses();
    }

    /** Making classes ready takes longer than a build, and one test alone asks for it: for the others its first word stands for nothing. */
    private static void withoutReadyClasses() throws IOException {
        write("tools/nice", "#!/bin/sh\nexit 1\n");
        assertThat(CHECKOUT.resolve("tools/nice").toFile().setExecutable(true)).isTrue();
    }

    @AfterAll
    static void away() throws IOException {
        try (Stream<Path> all = Files.walk(CHECKOUT)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                // What is being written just now stays for the next clean build.
                each.toFile().delete();
            }
        }
    }

    private static Started saying(String out) {
        return new Started(0, word + " 0.1.0" + out + "\n", "");
    }

    private static void built() throws Exception {
        assertThat(start()).isEqualTo(saying(" Extra"));
    }

    private static void write(String name, String text) throws IOException {
        Path file = CHECKOUT.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static void withExtra() throws IOException {
        write("src/main/java/turnalike/Extra.java", "package turnalike;\n\nfinal class Extra {}\n");
    }

    /** The word is a constant: whoever uses it holds a copy of it. */
    private static void says(String next) throws IOException {
        word = next;
        write(
                "src/main/java/turnalike/Word.java",
                "package turnalike;\n\nfinal class Word {\n    static final String SAID = \"%s\";\n}\n"
                        .formatted(next));
    }

    private static Process process(Path checkout, Path output) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                        checkout.resolve("turnalike").toString())
                .redirectOutput(Path.of(output + ".out").toFile())
                .redirectError(Path.of(output + ".err").toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().merge("PATH", CHECKOUT.resolve("tools").toString(), (path, tools) -> tools + ":" + path);
        return builder.start();
    }

    private static Started end(Process process, Path output) throws IOException, InterruptedException {
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Started(
                process.exitValue(),
                Files.readString(Path.of(output + ".out"), StandardCharsets.UTF_8),
                Files.readString(Path.of(output + ".err"), StandardCharsets.UTF_8));
    }

    private static Started start() throws IOException, InterruptedException {
        return start(CHECKOUT);
    }

    private static Started start(Path checkout) throws IOException, InterruptedException {
        Path output = CHECKOUT.resolve("said");
        return end(process(checkout, output), output);
    }

    /** Until the given work is done, Maven stands in the way of whoever calls it. */
    private static void withoutMaven(Work work) throws Exception {
        inPlaceOfMaven("#!/bin/sh\necho no Maven here\nexit 1\n", work);
    }

    /** Until the given work is done, what Maven is asked for is what it gave before: itself it takes ten times as long, and others ask it. */
    private static void bringingWhatThereWas(Work work) throws Exception {
        Path kept = Files.createTempDirectory(CHECKOUT, "kept");
        run("cp", "-R", CHECKOUT.resolve("target/lib").toString(), kept.toString());
        run("cp", "-R", CHECKOUT.resolve("target/run/generated-sources").toString(), kept.toString());
        inPlaceOfMaven("""
                #!/bin/sh
                for each; do
                    case "$each" in
                        -Dlib=*) cp -R '%1$s/lib' "${each#-Dlib=}" || exit 1 ;;
                        jte:generate@*) cp -R '%1$s/generated-sources' target/run || exit 1 ;;
                    esac
                done
                """.formatted(kept), work);
    }

    private static void run(String... command) throws Exception {
        assertThat(new ProcessBuilder(command).inheritIO().start().waitFor()).isZero();
    }

    private static void inPlaceOfMaven(String script, Work work) throws Exception {
        Path maven = CHECKOUT.resolve("tools/mvn");
        write("tools/mvn", script);
        assertThat(maven.toFile().setExecutable(true)).isTrue();
        try {
            work.run();
        } finally {
            Files.delete(maven);
        }
    }

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    private static FileTime builtAt() throws IOException {
        return Files.getLastModifiedTime(CHECKOUT.resolve("target/run/turnalike.jar"));
    }

    @Test
    void a_changed_constant_reaches_its_users_without_maven_whatever_its_date_and_a_touched_file_is_no_change()
            throws Exception {
        built();
        Path file = CHECKOUT.resolve("src/main/java/turnalike/Word.java");
        withoutMaven(() -> {
            says("old");
            Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
            built();
            FileTime built = builtAt();
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            built();
            assertThat(builtAt()).isEqualTo(built);
        });
    }

    @Test
    void a_class_whose_source_is_gone_is_gone_and_what_does_not_compile_is_told_and_once_mended_forgotten()
            throws Exception {
        built();
        Files.delete(CHECKOUT.resolve("src/main/java/turnalike/Extra.java"));
        assertThat(start()).isEqualTo(saying(""));
        Files.delete(CHECKOUT.resolve("src/main/java/turnalike/Word.java"));
        Started failed = start();
        assertThat(failed.code()).isEqualTo(70);
        assertThat(failed.out()).isEmpty();
        assertThat(failed.err()).contains("Main.java:5: error: cannot find symbol", "turnalike: build: failed");
        withExtra();
        says("mended");
        built();
    }

    @Test
    void three_starts_at_once_all_run_what_was_written() throws Exception {
        says("three");
        List<Process> started = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            started.add(process(CHECKOUT, CHECKOUT.resolve("said" + i)));
        }
        for (int i = 0; i < 3; i++) {
            assertThat(end(started.get(i), CHECKOUT.resolve("said" + i))).isEqualTo(saying(" Extra"));
        }
    }

    @Test
    void libraries_follow_the_pom_and_are_kept_until_it_changes_and_templates_come_and_go() throws Exception {
        Path lib = CHECKOUT.resolve("target/lib");
        Path library = lib.resolve("htmx.org-2.0.10.jar");
        Path made = CHECKOUT.resolve("target/run/generated-sources/jte/templates");
        built();
        assertThat(library).doesNotExist();
        assertThat(made.resolve("JtesecondGenerated.java")).exists();
        Path marker = Files.writeString(lib.resolve("kept.txt"), "");
        says("again");
        built();
        assertThat(marker).exists();
        write("pom.xml", pom);
        Files.delete(CHECKOUT.resolve("src/main/jte/second.jte"));
        built();
        assertThat(library).exists();
        assertThat(marker).doesNotExist();
        assertThat(made.resolve("JtesecondGenerated.java")).doesNotExist();
        assertThat(made.resolve("JtepageGenerated.java")).exists();
    }

    /** A library that comes anew and is not to the letter the one listed. */
    @Test
    void a_library_other_than_the_one_listed_is_refused() throws Exception {
        built();
        String listed = Files.readString(CHECKOUT.resolve("scripts/libraries.sha256"));
        bringingWhatThereWas(() -> {
            write("scripts/libraries.sha256", listed.replaceFirst("(?m)^[0-9a-f]{64}(?=  picocli-)", "0".repeat(64)));
            try {
                Started refused = start();
                assertThat(refused.code()).isEqualTo(70);
                assertThat(refused.out()).isEmpty();
                assertThat(refused.err()).contains("picocli-4.7.7.jar is not the library");
            } finally {
                write("scripts/libraries.sha256", listed);
            }
            built();
        });
    }

    @Test
    void a_moved_checkout_starts_as_it_is() throws Exception {
        built();
        FileTime built = builtAt();
        Path moved = CHECKOUT.resolveSibling(CHECKOUT.getFileName() + "-moved");
        withoutMaven(() -> {
            Files.move(CHECKOUT, moved);
            try {
                ProcessBuilder builder =
                        new ProcessBuilder(moved.resolve("turnalike").toString());
                builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
                Process process = builder.start();
                assertThat(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                        .isEqualTo(saying(" Extra").out());
                assertThat(process.waitFor()).isZero();
            } finally {
                Files.move(moved, CHECKOUT);
            }
        });
        assertThat(builtAt()).isEqualTo(built);
    }

    @Test
    void what_a_killed_build_or_a_careless_hand_left_is_made_good() throws Exception {
        built();
        Path run = CHECKOUT.resolve("target/run");
        Files.delete(run.resolve("stamp"));
        Files.writeString(run.resolve("turnalike.jar"), "half a file");
        Files.createDirectories(run.resolve("classes.new/turnalike"));
        Files.writeString(run.resolve("classes.new/turnalike/Extra.class"), "half a file");
        built();
        Path picocli = CHECKOUT.resolve("target/lib/picocli-4.7.7.jar");
        bringingWhatThereWas(() -> {
            Files.delete(picocli);
            built();
        });
        assertThat(picocli).exists();
    }

    @Test
    void the_first_start_does_not_wait_for_the_classes_that_it_has_made_ready() throws Exception {
        says("ready");
        Files.delete(CHECKOUT.resolve("tools/nice"));
        try {
            built();
        } finally {
            withoutReadyClasses();
        }
        Path run = CHECKOUT.resolve("target/run");
        String build = Files.readString(run.resolve("stamp")).strip();
        boolean ready = false;
        for (int tenths = 0; tenths < 600 && !ready; tenths++) {
            Thread.sleep(100);
            try (Stream<Path> all = Files.list(run)) {
                ready = all.anyMatch(each -> each.toString().endsWith(build + ".jsa"));
            }
        }
        assertThat(ready).isTrue();
        built();
    }
}
