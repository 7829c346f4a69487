package turnalike.language;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The language that sheets are being drawn in. Words are measured and broken into lines while a sheet is laid out, so they must be in its
 * language by then; which it is belongs to the reader and to none of the hundred places that draw. Bound to the thread that draws, for as long as it
 * does.
 */
public final class Speech {
    private static final ThreadLocal<@Nullable Speech> NOW = new ThreadLocal<>();

    private final Language language;

    /** Lines that are in the language already: what was broken to a width is handed on line by line. */
    private final Set<String> said = new HashSet<>();

    private Speech(Language language) {
        this.language = language;
    }

    /** {@return what the work gives, done in that language} */
    public static <T> T in(Language language, Supplier<T> work) {
        if (language == Language.ENGLISH) {
            return work.get();
        }
        Speech before = NOW.get();
        NOW.set(new Speech(language));
        try {
            return work.get();
        } finally {
            if (before == null) {
                NOW.remove();
            } else {
                NOW.set(before);
            }
        }
    }

    /** {@return the words in the language that is being drawn in} */
    public static String of(String words) {
        Speech now = NOW.get();
        if (now == null || now.said.contains(words)) {
            return words;
        }
        String out = now.language.say(words);
        now.said.add(out);
        return out;
    }

    /** {@return the line, remembered as one that is in the language already: a part of what {@link #of} gave} */
    public static String done(String line) {
        Speech now = NOW.get();
        if (now != null) {
            now.said.add(line);
        }
        return line;
    }
}
