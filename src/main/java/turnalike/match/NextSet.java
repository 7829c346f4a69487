package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.units.Mass;

/**
 * What the left-over pieces are good for: the most of them that belong together, toward the next set.
 *
 * @param pieces the spares to keep together, by number from 0 in the list given, lightest first
 * @param missing how many more are needed
 * @param aimFrom when every missing piece weighs from this mass on …
 * @param aimTo … to this one, the set is sure to pass, whichever masses between they are; both are zero when there is no spare or
 *     nothing is missing
 * @param aim the mass to turn for: as near to where the work runs as leaves its scatter room within the range, else the middle
 * @param turning how many to turn, where enough pieces were weighed to tell
 */
public record NextSet(
        List<Integer> pieces, int missing, Mass aimFrom, Mass aimTo, Mass aim, Optional<Turning> turning) {
    /** A fixed seed: the same pieces get the same answer. */
    private static final long SEED = 20_261_128L;

    private static final Mass NO_MASS = Mass.ofGrams(0);

    public NextSet {
        pieces = List.copyOf(pieces);
    }

    /**
     * How many pieces would have to be turned for a 95 % chance that the set is complete, simulated.
     *
     * @param work where the work runs
     * @param asItRuns turned as the work runs; empty when 200 would not do
     * @param aimed turned about the aim with the same scatter; empty likewise
     */
    public record Turning(WorkMass work, OptionalInt asItRuns, OptionalInt aimed) {}

    /**
     * The largest group within the tolerance, up to {@code places}; of groups equally large, the most alike. Of the ranges sure to pass,
     * the one into which the next piece falls most likely; without weighed work, the one about the middle of the kept pieces.
     *
     * @param spares the masses left over, positive
     * @param places how many pieces the next set takes
     * @param tolerancePct a set passes when (heaviest − lightest) / mean is at most this many hundredths
     * @param work where the work runs, as far as known
     * @return the group and what new pieces for it should weigh; without spares, no group and no aim
     */
    public static NextSet of(List<Mass> spares, int places, double tolerancePct, Optional<WorkMass> work) {
        double[] massesG = spares.stream().mapToDouble(Mass::grams).toArray();
        for (int size = Math.min(places, massesG.length); size > 0; size--) {
            SetRule rule = new SetRule(massesG, size, tolerancePct / 100);
            int[] set = rule.alikest();
            if (rule.share(set) <= tolerancePct / 100 * (1 + 1e-12)) {
                List<Integer> pieces =
                        new ArrayList<>(Arrays.stream(set).boxed().toList());
                double[] keptG = Arrays.stream(set).mapToDouble(i -> massesG[i]).toArray();
                return size == places
                        ? new NextSet(pieces, 0, NO_MASS, NO_MASS, NO_MASS, Optional.empty())
                        : of(pieces, keptG, places - size, tolerancePct / 100, work);
            }
        }
        return new NextSet(List.of(), places, NO_MASS, NO_MASS, NO_MASS, Optional.empty());
    }

    private static NextSet of(
            List<Integer> pieces, double[] keptG, int missing, double share, Optional<WorkMass> work) {
        double keptMiddle = (keptG[0] + keptG[keptG.length - 1]) / 2;
        double wantedMiddle = work.map(WorkMass::meanG).orElse(keptMiddle);
        // Where the work never runs every likelihood is 0: there the width decides, then the distance.
        KeptSet kept = KeptSet.of(keptG, missing);
        double[] range = new SureRange(kept, share)
                .best((from, to) -> work.map(each -> each.likelihood(from, to)).orElse(0.0)
                        + 1e-3 * Math.min(to - from, 0.9 * share * keptMiddle) / keptMiddle
                        - 1e-6 * Math.abs((from + to) / 2 - wantedMiddle) / keptMiddle);
        double aim = work.map(each -> aim(range, each)).orElse((range[0] + range[1]) / 2);
        PiecesToTurn toTurn = new PiecesToTurn(kept, share);
        Optional<Turning> turning = work.map(each -> {
            OptionalInt asItRuns = toTurn.number(each, SEED);
            WorkMass aimed = new WorkMass(each.count(), aim, each.scatterG());
            return new Turning(each, asItRuns, aim == each.meanG() ? asItRuns : toTurn.number(aimed, SEED));
        });
        return new NextSet(pieces, missing, Mass.ofGrams(range[0]), Mass.ofGrams(range[1]), Mass.ofGrams(aim), turning);
    }

    private static double aim(double[] range, WorkMass work) {
        double from = range[0] + work.scatterG();
        double to = range[1] - work.scatterG();
        return from > to ? (range[0] + range[1]) / 2 : Math.min(Math.max(work.meanG(), from), to);
    }
}
