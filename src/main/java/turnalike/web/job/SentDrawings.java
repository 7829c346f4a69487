package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.web.kit.Recent;

/**
 * The drawings that scripts were sent lately, group by group: of the next one only those groups are sent that have changed. May be used by
 * several threads. Who shows one that is forgotten here is sent the next whole.
 */
final class SentDrawings {
    private static final int KEPT = 48;
    private static final String OPENS = "<g ";
    private static final String CLOSES = "</g>";
    private static final String SAME = "<g data-same></g>";

    private final Map<String, List<String>> recent = Recent.of(KEPT);

    /**
     * What to send of a drawing; it is remembered.
     *
     * @param shown the digest of the one that stands in the browser
     * @param digest this one's
     * @param text this one, whole
     */
    String since(String shown, String digest, String text) {
        List<String> now;
        List<String> before;
        synchronized (recent) {
            now = recent.getOrDefault(digest, List.of());
            before = recent.getOrDefault(shown, List.of());
        }
        if (now.isEmpty()) {
            now = split(text);
            synchronized (recent) {
                recent.put(digest, now);
            }
        }
        return isAlike(before, now) ? changed(before, now, text.length()) : text;
    }

    /** What lies between groups, and groups that hold no others, in turns: every second one is a group. */
    private static List<String> split(String text) {
        List<String> out = new ArrayList<>();
        int from = 0;
        for (int open = text.indexOf(OPENS); open >= 0; open = text.indexOf(OPENS, open + 1)) {
            int close = text.indexOf(CLOSES, open);
            int inner = text.indexOf(OPENS, open + 1);
            if (close < 0 || (inner >= 0 && inner < close)) {
                continue;
            }
            int end = close + CLOSES.length();
            out.add(text.substring(from, open));
            out.add(text.substring(open, end));
            from = end;
        }
        out.add(text.substring(from));
        return out;
    }

    /** Whether each group of the one has its place in the other: as many elements stand before it. */
    private static boolean isAlike(List<String> before, List<String> now) {
        if (before.size() != now.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i += 2) {
            if (elements(before.get(i)) != elements(now.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static long elements(String text) {
        return text.chars().filter(letter -> letter == '<').count();
    }

    private static String changed(List<String> before, List<String> now, int letters) {
        StringBuilder out = new StringBuilder(letters);
        for (int i = 0; i < now.size(); i++) {
            boolean same = i % 2 == 1 && now.get(i).equals(before.get(i));
            out.append(same ? SAME : now.get(i));
        }
        return out.toString();
    }
}
