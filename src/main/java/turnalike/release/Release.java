package turnalike.release;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One state of the program as it was handed out.
 *
 * @param day of its newest change
 * @param version as it was packed with; "unpacked" of one that never was
 */
public record Release(LocalDate day, String version) {
    private static final Pattern TEXT = Pattern.compile("(\\S{1,40}) of (\\d{4}-\\d\\d-\\d\\d)");

    /** {@return this program's own} */
    public static Release now() {
        String version = Optional.ofNullable(Release.class.getPackage().getImplementationVersion())
                .orElse("unpacked");
        return new Release(Changes.newest(), version);
    }

    /**
     * {@return what {@link #text} wrote; nothing of any other text}
     *
     * @param text of one
     */
    static Optional<Release> parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        return matcher.matches()
                ? Optional.of(new Release(LocalDate.parse(matcher.group(2)), matcher.group(1)))
                : Optional.empty();
    }

    /** {@return it as a person is told it: {@code 0.1.0 of 2026-11-29}} */
    public String text() {
        return version + " of " + day;
    }
}
