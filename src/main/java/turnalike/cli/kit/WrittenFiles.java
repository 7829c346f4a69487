package turnalike.cli.kit;

import java.nio.file.Path;
import java.util.List;

/** Where each file is. */
public final class WrittenFiles {
    private WrittenFiles() {}

    public static String text(List<Path> files) {
        return list(files) + "Print sheets at 100 % (no \"fit to page\"), then lay a rule on the check bar.\n";
    }

    /** The same where nothing is at full size. */
    public static String list(List<Path> files) {
        StringBuilder out = new StringBuilder("\nWritten\n");
        files.forEach(file -> out.append("  ").append(file).append('\n'));
        return out.toString();
    }
}
