package turnalike.units;

import java.util.List;

/** Names in a sentence, no more of them than anybody reads: {@code 3, 7, 12 and 4 more}. */
public final class Listing {
    private Listing() {}

    /**
     * {@return the first of them, and how many more there are}
     *
     * @param names in their order
     * @param most how many are told at most
     */
    public static String of(List<String> names, int most) {
        String first = String.join(", ", names.subList(0, Math.min(most, names.size())));
        return names.size() > most ? "%s and %d more".formatted(first, names.size() - most) : first;
    }
}
