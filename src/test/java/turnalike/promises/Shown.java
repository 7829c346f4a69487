package turnalike.promises;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A text the program may show.
 *
 * @param place the file it stands in
 * @param text what stands in quotes, or a line of a template
 */
record Shown(String place, String text) {
    private static final Path MAIN = Path.of("src/main");

    /** Words that promise something: of a figure, that it is exact; of a choice, that there is none better; of a bound, that it holds. */
    private static final Pattern PROMISE = Pattern.compile(
            "(?i)\\bexact(?:ly)?\\b|no fewer|fewest|proven|at worst|within what|in twenty|no other|no \\w+ has (?:fewer|less)"
                    + "|\\b(?:\\d+|nine|nineteen) (?:of|in|times in) (?:100|ten|twenty)\\b|guarantee|optimal|sure to\\b|no better");

    /** A text in quotes, group 1 or 2; or a comment or a character, which may hold what looks like one. */
    private static final Pattern QUOTED =
            Pattern.compile("(?s)\"\"\"(.*?)\"\"\"|\"((?:[^\"\\\\\\n]|\\\\.)*+)\"|'(?:[^'\\\\\\n]|\\\\.)++'"
                    + "|/\\*.*?\\*/|//[^\\n]*+");

    /** In a script both quotes and the stroke may hold a text. */
    private static final Pattern QUOTED_IN_SCRIPT =
            Pattern.compile("(?s)`([^`]*+)`|[\"']((?:[^\"'\\\\\\n]|\\\\.)*+)[\"']|/\\*.*?\\*/|//[^\\n]*+");

    static List<Shown> all() throws IOException {
        List<Shown> out = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(MAIN)) {
            for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".java")) {
                    quoted(out, name, Files.readString(file), QUOTED);
                } else if (name.endsWith(".js")) {
                    quoted(out, name, Files.readString(file), QUOTED_IN_SCRIPT);
                } else if (name.endsWith(".jte")) {
                    template(out, name, Files.readString(file));
                }
            }
        }
        return out;
    }

    static void quoted(List<Shown> out, String place, String source, Pattern texts) {
        Matcher text = texts.matcher(source);
        while (text.find()) {
            if (text.group(1) != null || text.group(2) != null) {
                out.add(new Shown(place, text.group(1) != null ? text.group(1) : text.group(2)));
            }
        }
    }

    static List<Shown> java(String place, String source) {
        List<Shown> out = new ArrayList<>();
        quoted(out, place, source, QUOTED);
        return out;
    }

    static void template(List<Shown> out, String place, String source) {
        source.replaceAll("(?s)<%--.*?--%>", "").lines().forEach(line -> out.add(new Shown(place, line.strip())));
    }

    boolean promises() {
        return PROMISE.matcher(text).find();
    }

    /** Whether nothing is left that promises once these words are taken out. */
    boolean isCovered(List<String> words) {
        String left = this.toString();
        for (String each : words) {
            left = left.replaceAll("(?i)" + Pattern.quote(each), "…");
        }
        return !PROMISE.matcher(left.substring(Math.min(left.length(), left.startsWith(place) ? place.length() : 0)))
                .find();
    }

    boolean has(String words) {
        return toString().toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }

    @Override
    public String toString() {
        return place + ": " + text;
    }
}
