package turnalike;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The program's own sources, parsed: for tests that hold something against every text that they may say. */
public final class ParsedSources {
    private static final Path MAIN = Path.of("src", "main", "java", "turnalike");

    private ParsedSources() {}

    /**
     * Hands over each of them that is wanted.
     *
     * @param wanted by its absolute path and its text
     * @param use what is done with one, by its absolute path
     */
    public static void each(BiPredicate<Path, String> wanted, BiConsumer<Path, CompilationUnitTree> use)
            throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> all = Files.walk(MAIN)) {
            for (Path file :
                    all.filter(each -> each.toString().endsWith(".java")).toList()) {
                if (wanted.test(file.toAbsolutePath(), Files.readString(file))) {
                    files.add(file);
                }
            }
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                use.accept(Path.of(unit.getSourceFile().toUri()), unit);
            }
        }
    }
}
