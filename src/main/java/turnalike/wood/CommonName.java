package turnalike.wood;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * A wood's name as the table prints it, taken apart into what people call it: some of its words, in any order, small letters or capitals.
 *
 * @param own the words before the brackets: northern, red, oak
 * @param other the words in brackets, another name for it or for its kind: hard, maple; may be empty
 */
record CommonName(List<String> own, List<String> other) {
    /** A word this short ends many words by chance. */
    private static final int LEAST_PART = 3;

    CommonName {
        own = List.copyOf(own);
        other = List.copyOf(other);
    }

    static CommonName of(String printed) {
        int bracket = printed.indexOf('(');
        return bracket < 0
                ? new CommonName(NearNames.words(printed), List.of())
                : new CommonName(
                        NearNames.words(printed.substring(0, bracket)), NearNames.words(printed.substring(bracket)));
    }

    /** Whether those are all the words of one of its names. */
    boolean is(List<String> asked) {
        HashSet<String> words = new HashSet<>(asked);
        return !asked.isEmpty() && (words.equals(new HashSet<>(own)) || words.equals(new HashSet<>(other)));
    }

    /** Whether each of those is one of its words, or the second part of one: cedar of redcedar. */
    boolean has(List<String> asked) {
        List<String> words = new ArrayList<>(own);
        words.addAll(other);
        return !asked.isEmpty()
                && asked.stream()
                        .allMatch(part -> words.stream().anyMatch(word -> word.equals(part) || ends(word, part)));
    }

    private static boolean ends(String word, String part) {
        return part.length() >= LEAST_PART && word.length() - part.length() >= LEAST_PART && word.endsWith(part);
    }
}
