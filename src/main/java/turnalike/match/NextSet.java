package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.units.Mass;

/**
 * What the left-over pieces are good for: the most of them that belong together, toward the next set.
 *
 * @param pieces the spares to keep together, by number from 0 in the list given, lightest first
 * @param missing how many more are needed
 * @param aimFrom a new piece from this mass on …
 * @param aimTo … to this one keeps the set within the tolerance, and so do several of one mass; both are zero when there is no spare
 */
public record NextSet(List<Integer> pieces, int missing, Mass aimFrom, Mass aimTo) {
    public NextSet {
        pieces = List.copyOf(pieces);
    }

    /**
     * The largest group within the tolerance, up to {@code places}; of groups equally large, the most alike.
     *
     * @param spares the masses left over, positive
     * @param places how many pieces the next set takes
     * @param tolerancePct a set passes when (heaviest − lightest) / mean is at most this many hundredths
     * @return the group and what a new piece for it should weigh; without spares, no group and no aim
     */
    public static NextSet of(List<Mass> spares, int places, double tolerancePct) {
        double[] massesG = spares.stream().mapToDouble(Mass::grams).toArray();
        for (int size = Math.min(places, massesG.length); size > 0; size--) {
            SetRule rule = new SetRule(massesG, size, tolerancePct / 100);
            int[] set = rule.alikest();
            if (rule.share(set) <= tolerancePct / 100 * (1 + 1e-12)) {
                double lightestG = massesG[set[0]];
                double heaviestG = massesG[set[size - 1]];
                // The mean lies between lightest and heaviest, so the lightest keeps the promise.
                double roomG = tolerancePct / 100 * lightestG;
                List<Integer> pieces =
                        new ArrayList<>(Arrays.stream(set).boxed().toList());
                return new NextSet(
                        pieces,
                        places - size,
                        Mass.ofGrams(Math.min(lightestG, heaviestG / (1 + tolerancePct / 100))),
                        Mass.ofGrams(Math.max(heaviestG, lightestG + roomG)));
            }
        }
        return new NextSet(List.of(), places, Mass.ofGrams(0), Mass.ofGrams(0));
    }
}
