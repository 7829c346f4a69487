package turnalike.web.news;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.release.Changes;
import turnalike.release.Release;

/**
 * What changed.
 *
 * @param now this release
 * @param days the newest first
 */
public record NewsView(Release now, List<Changes> days) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    public NewsView {
        days = List.copyOf(days);
    }

    static NewsView of(Release now, List<Changes> days) {
        return new NewsView(now, days);
    }

    /** A day as it is read. */
    public static String words(LocalDate day) {
        return DAY.format(day);
    }

    /**
     * A part of an entry.
     *
     * @param typed whether it is something to type
     */
    public record Part(String text, boolean typed) {}

    /** An entry in its parts, without the marks between them. */
    public List<Part> parts(String entry) {
        List<Part> parts = new ArrayList<>();
        String[] pieces = entry.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1").split("`", -1);
        for (int i = 0; i < pieces.length; i++) {
            if (!pieces[i].isEmpty()) {
                parts.add(new Part(pieces[i], i % 2 == 1));
            }
        }
        return parts;
    }
}
