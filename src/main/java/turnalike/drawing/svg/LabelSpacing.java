package turnalike.drawing.svg;

import java.util.List;

/** Moves labels apart, and no farther than they must. */
public final class LabelSpacing {
    private LabelSpacing() {}

    /**
     * Places in the same order, each at least {@code gap} from the next and all within bounds, with the least sum of squared moves.
     *
     * <p>With i·gap taken off the i-th place the rule reads "never falling", which is isotonic regression; pooling neighbours that
     * break it solves that exactly (Ayer and others, Ann. Math. Statist. 26 (1955) 641–647; from memory; checked against brute force in
     * the tests). Bounds that are too close together win over the gap: the labels then stand evenly, closer than asked.
     *
     * @param wantedMm where each label would like to be, never falling
     */
    public static double[] apart(List<Double> wantedMm, double gap, double leastMm, double mostMm) {
        int n = wantedMm.size();
        double step = n > 1 ? Math.min(gap, (mostMm - leastMm) / (n - 1)) : 0;
        double[] sum = new double[n];
        int[] count = new int[n];
        int pools = 0;
        for (int i = 0; i < n; i++) {
            sum[pools] = wantedMm.get(i) - i * step;
            count[pools] = 1;
            pools++;
            while (pools > 1 && sum[pools - 2] / count[pools - 2] >= sum[pools - 1] / count[pools - 1]) {
                sum[pools - 2] += sum[pools - 1];
                count[pools - 2] += count[pools - 1];
                pools--;
            }
        }
        double[] out = new double[n];
        int i = 0;
        for (int pool = 0; pool < pools; pool++) {
            double at = Math.max(leastMm, Math.min(sum[pool] / count[pool], mostMm - (n - 1) * step));
            for (int k = 0; k < count[pool]; k++, i++) {
                out[i] = at + i * step;
            }
        }
        return out;
    }
}
