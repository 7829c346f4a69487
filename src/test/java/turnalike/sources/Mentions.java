package turnalike.sources;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Every {@link Mention} in comments of main and tests, in the texts the program shows and beside the tests' data. */
final class Mentions {
    private static final Path MAIN = Path.of("src/main/java/turnalike");
    private static final Path TEST = Path.of("src/test/java/turnalike");
    private static final Path TEST_DATA = Path.of("src/test/resources/turnalike");

    /** A string or a character, which may look like a comment, or a comment; lines of `//` that follow each other are one. */
    private static final Pattern COMMENT =
            Pattern.compile("(?s)\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*+\"|'(?:[^'\\\\\\n]|\\\\.)++'"
                    + "|(/\\*.*?\\*/|//[^\\n]*+(?:\\n\\s*+//[^\\n]*+)*+)");

    /** After a full stop that no abbreviation and no initial has, or at a new paragraph. */
    private static final Pattern END =
            Pattern.compile("(?<!\\b(?:[A-Z]|ch|eq|ed|Sci|Stat|Statist|Comput|Ann|Math|Appl|Int|Mech|Mater|Eng)\\.)"
                    + "(?<=[.?!]|[.?!]\\))\\s+(?=[\\p{Lu}{<@\"])|<p>|<li>|\\s@(?:param|return|throws)\\b");

    private static final Pattern SOURCE = Pattern.compile("\\bSources?: ");

    /** They say what the words of sureness mean, and lean on nothing. */
    private static final Set<String> WORDS = Set.of("Working.java", "Provenance.java");

    private Mentions() {}

    static List<Mention> all() throws IOException {
        List<Mention> out = new ArrayList<>();
        for (Path file : files(MAIN, ".java")) {
            comments(out, file, feature(file), Files.readString(file));
        }
        shown(out);
        for (Path file : files(TEST, ".java")) {
            if (!file.startsWith(TEST.resolve("sources"))) {
                comments(out, file, Mention.TESTS, Files.readString(file));
            }
        }
        for (Path file : files(TEST_DATA, ".csv")) {
            data(
                    out,
                    file,
                    Files.readAllLines(file).stream()
                            .filter(line -> line.startsWith("#"))
                            .map(line -> line.substring(1)));
        }
        for (Path file : files(TEST_DATA, "README.txt")) {
            data(out, file, Files.readAllLines(file).stream());
        }
        return out.stream()
                .filter(mention -> mention.leans() && !WORDS.contains(mention.place()))
                .toList();
    }

    private static List<Path> files(Path folder, String end) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(file -> file.toString().endsWith(end)).sorted().toList();
        }
    }

    private static String feature(Path file) {
        Path inside = MAIN.relativize(file);
        return inside.getNameCount() > 1 ? inside.getName(0).toString() : "turnalike";
    }

    private static void data(List<Mention> out, Path file, Stream<String> lines) {
        sentences(out, file, Mention.TESTS, String.join(" ", lines.toList()));
    }

    static void comments(List<Mention> out, Path file, String feature, String java) {
        Matcher comment = COMMENT.matcher(java);
        while (comment.find()) {
            if (comment.group(1) != null) {
                String text = comment.group(1)
                        .replaceAll("^/\\*+|\\*/$|(?m)^\\s*\\*(?!/)|(?m)^\\s*//", " ")
                        .replace("&amp;", "&");
                sentences(out, file, feature, text);
            }
        }
    }

    private static void sentences(List<Mention> out, Path file, String feature, String text) {
        for (String sentence : END.split(text.replaceAll("\\s+", " ").replace("} Source", "}. Source"), -1)) {
            Matcher source = SOURCE.matcher(sentence);
            out.add(new Mention(
                    file.getFileName().toString(), feature, sentence.strip(), source.find() && source.start() < 3));
        }
    }

    /** What the program may show: the source of every working, and every other text with a word on its source. */
    private static void shown(List<Mention> out) throws IOException {
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK, not a JRE");
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            shown(out, compiler, manager, manager.getJavaFileObjectsFromPaths(files(MAIN, ".java")));
        }
    }

    /** What one file of that text would show. */
    static List<Mention> shown(String java) throws IOException {
        List<Mention> out = new ArrayList<>();
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK, not a JRE");
        JavaFileObject file =
                new SimpleJavaFileObject(MAIN.resolve("turning/Added.java").toUri(), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return java;
                    }
                };
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            shown(out, compiler, manager, List.of(file));
        }
        return out;
    }

    private static void shown(
            List<Mention> out,
            JavaCompiler compiler,
            StandardJavaFileManager manager,
            Iterable<? extends JavaFileObject> files)
            throws IOException {
        JavacTask task = (JavacTask)
                compiler.getTask(null, manager, new DiagnosticCollector<>(), List.of("-proc:none"), null, files);
        for (CompilationUnitTree unit : task.parse()) {
            Path file = Path.of(unit.getSourceFile().getName());
            Path inside = file.isAbsolute() ? Path.of("").toAbsolutePath().relativize(file) : file;
            new ShownTexts(unit, file.getFileName().toString(), feature(inside), out).scan(unit, null);
        }
    }
}
