package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The marks and every opening worth trying, as bare numbers for the searches.
 *
 * <p>One opening serves a window of distances twice the match tolerance wide. Of two windows the one that serves all the other serves
 * and more is never the worse, so only the widest are kept: at most one per distinct distance.
 */
final class Spans {
    /**
     * Distances are differences of places, so the same distance met twice may differ by rounding: up to about 1e-12 mm at 20 m. A
     * comparison with a tolerance gives way by this much, a thousand times more and far below what any tool can hold.
     */
    static final double SLACK_MM = 1e-9;

    final double[] placesMm;
    final int mostSteps;
    /** Marks laid out from the stick: one mark error, no dividers. */
    final boolean[] onTheStick;

    final List<Opening> openings;
    /** How many of the openings, from the first, stand in every plan because the turner asked for them. */
    final int pinned;

    private final boolean[][] barred;

    /**
     * @param openings the pinned ones first
     * @param barred by two marks, both ways round: no opening may step from one to the other
     */
    Spans(
            double[] placesMm,
            int mostSteps,
            boolean[] onTheStick,
            List<Opening> openings,
            int pinned,
            boolean[][] barred) {
        this.placesMm = placesMm;
        this.mostSteps = mostSteps;
        this.onTheStick = onTheStick;
        this.openings = openings;
        this.pinned = pinned;
        this.barred = barred;
    }

    /** The openings that places along a piece allow. */
    static Spans along(
            double[] placesMm,
            double toleranceMm,
            int mostSteps,
            boolean[] onTheStick,
            double[] pinnedMm,
            double[] forbiddenMm) {
        boolean[][] barred = barred(placesMm, toleranceMm, forbiddenMm);
        List<double[]> pairs = pairs(placesMm, barred);
        List<Opening> openings = new ArrayList<>();
        for (double pin : pinnedMm) {
            openings.add(new Opening(pairs.stream()
                    .filter(pair -> Math.abs(pair[0] - pin) <= toleranceMm + SLACK_MM)
                    .toList()));
        }
        addWindows(openings, pairs, 2 * toleranceMm + SLACK_MM);
        return new Spans(placesMm, mostSteps, onTheStick, openings, pinnedMm.length, barred);
    }

    int marks() {
        return placesMm.length;
    }

    int last() {
        return placesMm.length - 1;
    }

    boolean isEnd(int mark) {
        return mark == 0 || mark == last();
    }

    double distanceMm(int one, int other) {
        return Math.abs(placesMm[one] - placesMm[other]);
    }

    /** Whether a forbidden opening takes this step away. */
    boolean isBarred(int one, int other) {
        return barred[one][other];
    }

    private static boolean[][] barred(double[] placesMm, double toleranceMm, double[] forbiddenMm) {
        boolean[][] barred = new boolean[placesMm.length][placesMm.length];
        for (int low = 0; low < placesMm.length; low++) {
            for (int high = low + 1; high < placesMm.length; high++) {
                double distance = placesMm[high] - placesMm[low];
                barred[low][high] =
                        Arrays.stream(forbiddenMm).anyMatch(f -> Math.abs(f - distance) <= toleranceMm + SLACK_MM);
                barred[high][low] = barred[low][high];
            }
        }
        return barred;
    }

    /** Every pair of marks a step may join, as (distance, lower, higher), the shortest first. */
    private static List<double[]> pairs(double[] placesMm, boolean[][] barred) {
        List<double[]> pairs = new ArrayList<>();
        int last = placesMm.length - 1;
        for (int low = 0; low < last; low++) {
            for (int high = low + 1; high <= last; high++) {
                if (!barred[low][high] && !(low == 0 && high == last)) {
                    pairs.add(new double[] {placesMm[high] - placesMm[low], low, high});
                }
            }
        }
        pairs.sort((a, b) -> Double.compare(a[0], b[0]));
        return pairs;
    }

    private static void addWindows(List<Opening> openings, List<double[]> pairs, double widthMm) {
        int end = 0;
        for (int start = 0; start < pairs.size() && end < pairs.size(); start++) {
            if (start > 0 && pairs.get(start)[0] - pairs.get(start - 1)[0] <= SLACK_MM) {
                continue;
            }
            int reach = end;
            while (reach < pairs.size() && pairs.get(reach)[0] - pairs.get(start)[0] <= widthMm) {
                reach++;
            }
            if (reach > end) {
                end = reach;
                openings.add(new Opening(pairs.subList(start, end)));
            }
        }
    }
}
