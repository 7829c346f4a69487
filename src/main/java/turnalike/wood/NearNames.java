package turnalike.wood;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names a person may have meant. Capitals and punctuation do not count; every word is held against every word. */
final class NearNames {
    private static final int MOST = 5;

    /** Misses at or past this share of a word's letters are another word. Chosen by trying slips on the shipped names. */
    private static final double TOO_FAR = 0.4;

    private NearNames() {}

    /** At most {@value #MOST} names, nearest first; among equals in the given order. Cost: names × letters². */
    static List<String> of(String asked, Collection<String> names) {
        List<String> words = words(asked);
        if (words.isEmpty()) {
            return List.of();
        }
        record Scored(String name, double misses) {}
        return names.stream()
                .map(name -> new Scored(name, misses(words, words(name))))
                .filter(scored -> scored.misses() < TOO_FAR)
                .sorted(Comparator.comparingDouble(Scored::misses))
                .limit(MOST)
                .map(Scored::name)
                .toList();
    }

    /** The words of a text in small letters, without punctuation. */
    static List<String> words(String text) {
        return List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")).stream()
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /**
     * From 0, every word asked for is there, to 1. The best-matched word counts most, so that "english walnut" still finds walnut; a
     * share for all of them puts the fuller match first.
     */
    private static double misses(List<String> asked, List<String> name) {
        double[] each = asked.stream()
                .mapToDouble(word -> name.stream()
                        .mapToDouble(other -> miss(word, other))
                        .min()
                        .orElse(1))
                .sorted()
                .toArray();
        double mean = 0;
        for (double miss : each) {
            mean += miss / each.length;
        }
        return 0.8 * each[0] + 0.2 * mean;
    }

    private static double miss(String one, String other) {
        return (double) edits(one, other) / Math.max(one.length(), other.length());
    }

    /** Levenshtein's distance, row by row. */
    private static int edits(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int swap = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swap, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
