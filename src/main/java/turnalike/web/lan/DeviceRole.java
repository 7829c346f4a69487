package turnalike.web.lan;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a paired device may do; to look at everything is given to each. */
public enum DeviceRole {
    /** May change patterns, settings and everything else of a job. */
    CHANGE("change", "may change patterns"),
    /** May log pieces and times, and take an entry of its own back. */
    LOG("log", "may only log and turn");

    /** Where such a device may send something to: the bench view, the log, what checks a finished piece, the clocks, a search, its own walk. */
    private static final Pattern LOGGING = Pattern.compile(
            "/pair|/tour|/api/(pair|trace|jobs/[^/]+/(pieces(/[^/]+)?|entries/[^/]+|boards|blanks|price))|/jobs/[^/]+/(tour|pieces(/table|/remove)?"
                    + "|check(/.*)?|match(/stop)?|wood/times/(row|remove))");

    private final String word;
    private final String words;

    DeviceRole(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** As it is written and typed. */
    public String word() {
        return word;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }

    static Optional<DeviceRole> find(String word) {
        return Stream.of(values()).filter(each -> each.word.equals(word)).findFirst();
    }

    /** Whether it may send something there that changes anything. */
    boolean maySend(String path) {
        return this == CHANGE || LOGGING.matcher(path).matches();
    }

    /** The other of the two. */
    public DeviceRole other() {
        return this == CHANGE ? LOG : CHANGE;
    }
}
