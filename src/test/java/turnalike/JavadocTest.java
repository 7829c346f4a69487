package turnalike;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.DocumentationTool;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packages whose public documentation is complete stay so: the JDK's own documentation tool finds nothing missing in them. One
 * warning is let by: a record's compact constructor repeats no parameter, since the record's own {@code @param} lines say them.
 */
class JavadocTest {
    private static final Path SOURCES = Path.of("src/main/java");

    /** Complete; a package is added here once it is. */
    private static final List<String> COMPLETE = List.of(
            "turnalike.api",
            "turnalike.effort",
            "turnalike.frame",
            "turnalike.job",
            "turnalike.job.answer",
            "turnalike.job.boards",
            "turnalike.job.price",
            "turnalike.job.edit",
            "turnalike.job.fields",
            "turnalike.job.kept",
            "turnalike.job.keys",
            "turnalike.job.nudge",
            "turnalike.job.original",
            "turnalike.job.pieces",
            "turnalike.job.read",
            "turnalike.job.set",
            "turnalike.match",
            "turnalike.outline",
            "turnalike.photo",
            "turnalike.pattern",
            "turnalike.pieces",
            "turnalike.pieces.blanks",
            "turnalike.price",
            "turnalike.reach",
            "turnalike.release",
            "turnalike.pieces.control",
            "turnalike.pieces.mend",
            "turnalike.settings",
            "turnalike.solid",
            "turnalike.stock",
            "turnalike.stock.boards",
            "turnalike.trace",
            "turnalike.trace.against",
            "turnalike.trace.drawn",
            "turnalike.trace.fit",
            "turnalike.trace.table",
            "turnalike.turning",
            "turnalike.units",
            "turnalike.wood",
            "turnalike.year");

    private static final Pattern COMPACT_CONSTRUCTOR = Pattern.compile("\\s*public [A-Z]\\w* \\{");

    @TempDir
    Path out;

    @Test
    void the_complete_packages_have_no_documentation_missing() throws IOException {
        assertThat(warnings(sources())).isEmpty();
    }

    /** The tool of JDK 17 asks for a method's parameters alone; that of 25 asks for a record's components as well. */
    @Test
    void the_complete_packages_say_what_each_component_of_a_record_is() throws IOException {
        assertThat(ParamTags.missing(sources())).isEmpty();
    }

    @Test
    void what_is_missing_is_told() throws IOException {
        String source = """
                /**
                 * A size.
                 * @param mm millimetres
                 */
                public record Size(double mm) {
                    public Size {
                    }
                    public double inches() { return mm / 25.4; }
                }
                """;

        assertThat(warnings(List.of(size(source)))).singleElement().asString().contains("Size.java:8", "no comment");
    }

    @Test
    void a_component_and_a_type_that_are_not_said_are_told() throws IOException {
        String source = """
                /**
                 * A size.
                 * @param mm millimetres
                 */
                public record Size(double mm, double inches) {
                    /** A hole. */ public interface Hole<T> {
                        /** Bored. */ record Bored(double mm) {}
                    }
                    private record Hidden(double mm) {}
                }
                """;

        assertThat(ParamTags.missing(List.of(size(source))))
                .containsExactly("/Size.java:5 inches", "/Size.java:6 <T>", "/Size.java:7 mm");
    }

    private static JavaFileObject size(String source) {
        return new SimpleJavaFileObject(URI.create("string:///Size.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source;
            }
        };
    }

    private static List<JavaFileObject> sources() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String name : COMPLETE) {
            try (Stream<Path> inside = Files.list(SOURCES.resolve(name.replace('.', '/')))) {
                inside.filter(file -> file.toString().endsWith(".java"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        List<JavaFileObject> out = new ArrayList<>();
        try (StandardJavaFileManager manager = tool().getStandardFileManager(null, Locale.ROOT, null)) {
            manager.getJavaFileObjectsFromPaths(files).forEach(out::add);
        }
        return out;
    }

    private List<String> warnings(List<JavaFileObject> sources) throws IOException {
        DiagnosticCollector<JavaFileObject> told = new DiagnosticCollector<>();
        List<String> options = List.of(
                "-quiet",
                "-public",
                "-Xdoclint:all",
                "-Xmaxwarns",
                "9999",
                "-notimestamp",
                // Of the pages only what the comments ask for: nobody reads these.
                "-noindex",
                "-notree",
                "-nohelp",
                "-nonavbar",
                "-nodeprecatedlist",
                "-encoding",
                "UTF-8",
                "-d",
                out.toString(),
                "-sourcepath",
                SOURCES.toString(),
                "-classpath",
                classPath());
        StringWriter words = new StringWriter();
        try (StandardJavaFileManager manager = tool().getStandardFileManager(told, Locale.ROOT, null)) {
            boolean ran =
                    tool().getTask(words, manager, told, null, options, sources).call();
            assertThat(ran).as(words + " " + told.getDiagnostics()).isTrue();
        }
        List<String> left = new ArrayList<>();
        for (Diagnostic<? extends JavaFileObject> each : told.getDiagnostics()) {
            if (each.getSource() == null ? !isCount(each) : !isCompactConstructor(each)) {
                left.add(line(each));
            }
        }
        return left;
    }

    private static String line(Diagnostic<? extends JavaFileObject> each) {
        String file = each.getSource() == null ? "" : each.getSource().getName();
        return file + ":" + each.getLineNumber() + " " + each.getMessage(Locale.ROOT);
    }

    private static boolean isCompactConstructor(Diagnostic<? extends JavaFileObject> each) throws IOException {
        String line = each.getSource()
                .getCharContent(true)
                .toString()
                .lines()
                .skip(each.getLineNumber() - 1)
                .findFirst()
                .orElse("");
        return each.getMessage(Locale.ROOT).contains("no comment")
                && COMPACT_CONSTRUCTOR.matcher(line).matches();
    }

    /** The tool's own last line, {@code 2 warnings}. */
    private static boolean isCount(Diagnostic<? extends JavaFileObject> each) {
        return each.getMessage(Locale.ROOT).matches("\\d+ warnings?");
    }

    /** What these tests themselves were loaded from: a starter's own loader names its places, else the system's path does. */
    private static String classPath() {
        if (JavadocTest.class.getClassLoader() instanceof URLClassLoader loader) {
            return Stream.of(loader.getURLs())
                    .map(url -> Path.of(URI.create(url.toString())).toString())
                    .collect(Collectors.joining(File.pathSeparator));
        }
        return System.getProperty("java.class.path");
    }

    private static DocumentationTool tool() {
        return ToolProvider.getSystemDocumentationTool();
    }
}
