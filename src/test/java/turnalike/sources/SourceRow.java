package turnalike.sources;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A row of docs/sources.md.
 *
 * @param what is taken from the source
 * @param names as the code spells them, each letter by letter
 * @param where the features that use it
 * @param status VERIFIED, FROM MEMORY, …
 * @param checkedBy test classes, or {@code turnalike.} and a feature
 */
record SourceRow(String what, List<String> names, String where, String status, List<String> checkedBy) {
    static final Path PAGE = Path.of("docs/sources.md");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    static List<SourceRow> page() throws IOException {
        return parse(Files.readString(PAGE));
    }

    static List<SourceRow> parse(String page) {
        List<SourceRow> rows = new ArrayList<>();
        for (String line : page.lines().toList()) {
            if (line.startsWith("| ") && !line.startsWith("| what |")) {
                rows.add(row(line));
            }
        }
        return rows;
    }

    private static SourceRow row(String line) {
        String[] cells = line.substring(2).split(" \\|(?: |$)", -1);
        if (cells.length != 7) {
            throw new IllegalArgumentException("six cells wanted, the row has " + (cells.length - 1) + ": " + line);
        }
        return new SourceRow(cells[0], code(cells[2]), cells[3], cells[4], code(cells[5]));
    }

    private static List<String> code(String cell) {
        List<String> out = new ArrayList<>();
        Matcher code = CODE.matcher(cell);
        while (code.find()) {
            out.add(code.group(1));
        }
        return out;
    }

    boolean names(String text) {
        return names.stream().anyMatch(text::contains);
    }

    String without(String text) {
        String out = text;
        for (String name : names) {
            out = out.replace(name, "…");
        }
        return out;
    }
}
