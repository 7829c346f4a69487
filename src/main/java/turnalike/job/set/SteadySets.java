package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import turnalike.match.Candidate;
import turnalike.match.WheelProblem;

/**
 * Sets that pass and whose moments scatter least. Each piece scatters by itself, so of the pieces no lighter than one and no heavier than what
 * passes beside it, those that scatter least are the steadiest; each piece is taken as the lightest once. Takes n² · log n steps for n pieces.
 */
final class SteadySets {
    /** More pieces are not looked through: nobody weighs so many for a wheel, and the choice of the best balanced stands. */
    private static final int MOST_PIECES = 400;

    private SteadySets() {}

    /**
     * The steadiest first, none twice.
     *
     * @param variance of a piece's moment
     * @param most how many sets at most
     */
    static List<Set<Candidate>> list(WheelProblem all, ToDoubleFunction<Candidate> variance, int most) {
        if (all.pieces().size() > MOST_PIECES) {
            return List.of();
        }
        List<Candidate> byMass = all.pieces().stream()
                .sorted(Comparator.comparingDouble(piece -> piece.mass().grams()))
                .toList();
        Set<Set<Candidate>> found = new HashSet<>();
        for (int lightest = 0; lightest + all.wheel().places() <= byMass.size(); lightest++) {
            from(all, byMass, lightest, variance).forEach(set -> found.add(Set.copyOf(set)));
        }
        return found.stream()
                .sorted(Comparator.<Set<Candidate>>comparingDouble(
                                set -> set.stream().mapToDouble(variance).sum())
                        .thenComparing(set -> listed(all, set)))
                .limit(most)
                .toList();
    }

    /** Where its pieces stand in the list, for sets that scatter alike. */
    private static String listed(WheelProblem all, Set<Candidate> set) {
        StringBuilder out = new StringBuilder();
        all.pieces().forEach(piece -> out.append(set.contains(piece) ? 'a' : 'b'));
        return out.toString();
    }

    /** The steadiest set with no lighter piece than that one; heavy ones are left out until it passes. */
    private static Stream<List<Candidate>> from(
            WheelProblem all, List<Candidate> byMass, int lightest, ToDoubleFunction<Candidate> variance) {
        int places = all.wheel().places();
        List<Candidate> window = new ArrayList<>(byMass.subList(lightest, byMass.size()));
        double share = all.tolerancePct() / 100;
        double most = share < 1 ? window.get(0).mass().grams() / (1 - share) * (1 + 1e-9) : Double.POSITIVE_INFINITY;
        window.removeIf(piece -> piece.mass().grams() > most);
        while (window.size() >= places) {
            List<Candidate> set = window.stream()
                    .sorted(Comparator.comparingDouble(variance))
                    .limit(places)
                    .toList();
            if (all.passes(set)) {
                return Stream.of(set);
            }
            Candidate heaviest = set.stream()
                    .max(Comparator.comparingDouble(piece -> piece.mass().grams()))
                    .orElseThrow();
            window.removeIf(piece -> piece.mass().compareTo(heaviest.mass()) >= 0);
        }
        return Stream.of();
    }
}
