package turnalike.language;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The language that sheets are being drawn in. Words are measured and broken into lines while a sheet is laid out, so they must be in its
 * language by then; which it is belongs to the reader and to none of the hundred places that draw. Bound to the thread that draws, for as long as it
 * does.
 */
public final class Speech {
    private static final ThreadLocal<@Nullable Speech> NOW = new ThreadLocal<>();

    private final Language language;

    /** Lines that are in the language already, and whether as a whole: what was broken to a width is handed on line by line. */
    private final Map<String, Boolean> said = new HashMap<>();

    private Speech(Language language) {
        this.language = language;
    }

    /** {@return what the work gives, done in that language} */
    public static <T> T in(Language language, Supplier<T> work) {
        return with(new Speech(language), work);
    }

    /** {@return every line that the work has to say, in English, before it is broken to a width} */
    public static Set<String> heardIn(Runnable work) {
        Speech listening = new Speech(Language.ENGLISH);
        with(listening, () -> {
            work.run();
            return listening;
        });
        return listening.said.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static <T> T with(Speech speech, Supplier<T> work) {
        Speech before = NOW.get();
        NOW.set(speech);
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
        if (now == null || now.said.containsKey(words)) {
            return words;
        }
        String out = now.language.say(words);
        now.said.put(out, true);
        return out;
    }

    /** {@return whether these words are in the language that is being drawn in, since they came from here} */
    public static boolean isSaid(String words) {
        Speech now = NOW.get();
        return now != null && now.said.containsKey(words);
    }

    /** {@return the line, remembered as one that is in the language already: a part of what {@link #of} gave} */
    public static String done(String line) {
        Speech now = NOW.get();
        if (now != null) {
            now.said.putIfAbsent(line, false);
        }
        return line;
    }
}
