package turnalike.match;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.Random;

/**
 * How many pieces would have to be turned for a 95 % chance that some of them complete the kept ones to a set that passes. Simulated, with
 * a fixed seed: {@link #TRIALS} times pieces are drawn until a set is there, and the number that was enough in 95 of 100 is told; its
 * chance is right to about half a per cent.
 *
 * <p>The mean and the scatter of the work are themselves known only from the pieces weighed. Each trial therefore draws them first: the
 * variance from (n - 1)s²/χ², the mean about the one found with that variance over n. Without this the number told would be too small
 * after few pieces. Source: a normal sample's posterior
 * under Jeffreys' prior, from memory.
 */
final class PiecesToTurn {
    static final double CHANCE = 0.95;
    /** Nobody turns more toward one set (common practice, no source). */
    static final int MOST = 200;

    static final int TRIALS = 8000;

    /** Beyond, the scatter is known well enough; to stop there errs toward turning more. */
    private static final int MOST_FREEDOM = 60;

    private final KeptSet kept;
    private final double share;

    PiecesToTurn(KeptSet kept, double share) {
        this.kept = kept;
        this.share = share * (1 + 1e-12);
    }

    /** The number to turn; empty when even {@link #MOST} are not enough. */
    OptionalInt number(WorkMass work, long seed) {
        Random random = new Random(seed);
        int freedom = Math.min(work.count() - 1, MOST_FREEDOM);
        int[] enough = new int[TRIALS];
        int never = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double scatterG = work.scatterG() * Math.sqrt(freedom / chiSquare(freedom, random));
            double meanG = work.meanG() + random.nextGaussian() * scatterG / Math.sqrt(work.count());
            enough[trial] = turnUntilThere(meanG, scatterG, random);
            never += enough[trial] > MOST ? 1 : 0;
            if (never > TRIALS * (1 - CHANCE)) {
                return OptionalInt.empty();
            }
        }
        Arrays.sort(enough);
        return OptionalInt.of(enough[(int) Math.ceil(CHANCE * TRIALS) - 1]);
    }

    private static double chiSquare(int freedom, Random random) {
        double sum = 0;
        for (int i = 0; i < freedom; i++) {
            double normal = random.nextGaussian();
            sum += normal * normal;
        }
        return sum;
    }

    /** How many were drawn when a set was there; more than {@link #MOST} when none came. */
    private int turnUntilThere(double meanG, double scatterG, Random random) {
        double[] drawn = new double[MOST];
        for (int count = 1; count <= MOST; count++) {
            double next = meanG + scatterG * random.nextGaussian();
            int at = count - 1;
            while (at > 0 && drawn[at - 1] > next) {
                drawn[at] = drawn[at - 1];
                at--;
            }
            drawn[at] = next;
            if (completes(drawn, count, at)) {
                return count;
            }
        }
        return MOST + 1;
    }

    /**
     * Whether a set holds the newest of the drawn, which stand in ascending order. For the heaviest taken, the next lighter ones beside it
     * give both the least spread and the greatest mean, so neighbours suffice.
     */
    private boolean completes(double[] drawn, int count, int newest) {
        for (int first = Math.max(0, newest - kept.missing() + 1);
                first <= Math.min(newest, count - kept.missing());
                first++) {
            double sum = kept.sumG();
            for (int i = first; i < first + kept.missing(); i++) {
                sum += drawn[i];
            }
            double least = Math.min(kept.lightestG(), drawn[first]);
            double most = Math.max(kept.heaviestG(), drawn[first + kept.missing() - 1]);
            if ((most - least) * kept.places() <= share * sum) {
                return true;
            }
        }
        return false;
    }
}
