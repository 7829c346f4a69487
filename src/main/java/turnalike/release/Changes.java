package turnalike.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was changed on one day, as CHANGELOG.md tells it, which is packed with the program.
 *
 * @param day of the changes
 * @param groups what was added, changed and mended
 */
public record Changes(LocalDate day, List<Group> groups) {
    private static final Pattern DAY = Pattern.compile("## (\\d{4}-\\d\\d-\\d\\d)");

    public Changes {
        groups = List.copyOf(groups);
    }

    /**
     * Changes of one sort.
     *
     * @param title of the sort
     * @param entries each a sentence or two, with words to type between backticks
     */
    public record Group(String title, List<String> entries) {
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /** Read once: it is asked for with every page. */
    private static final class Read {
        static final List<Changes> ALL = parse(Packed.text("/turnalike/release/CHANGELOG.md"));

        private Read() {}
    }

    /** {@return the day of the newest} */
    static LocalDate newest() {
        return Read.ALL.get(0).day();
    }

    /**
     * {@return the days after that one, the newest first; the newest day where there is none after it}
     *
     * @param day up to which all is known
     */
    public static List<Changes> since(LocalDate day) {
        List<Changes> later =
                Read.ALL.stream().filter(each -> each.day().isAfter(day)).toList();
        return later.isEmpty() ? Read.ALL.subList(0, 1) : later;
    }

    static List<Changes> parse(String text) {
        List<Changes> out = new ArrayList<>();
        for (String part : text.split("(?m)^(?=## )", -1)) {
            Matcher day = DAY.matcher(part.lines().findFirst().orElse(""));
            if (day.matches()) {
                out.add(new Changes(LocalDate.parse(day.group(1)), groups(part)));
            }
        }
        return out;
    }

    private static List<Group> groups(String part) {
        List<Group> groups = new ArrayList<>();
        String[] pieces = part.split("(?m)^### ", -1);
        for (int i = 1; i < pieces.length; i++) {
            String[] entries = pieces[i].split("(?m)^- ", -1);
            List<String> words = new ArrayList<>();
            for (int each = 1; each < entries.length; each++) {
                words.add(entries[each].strip().replaceAll("\\s+", " "));
            }
            groups.add(new Group(entries[0].strip(), words));
        }
        return groups;
    }
}
