package turnalike.trace.fit;

import java.util.Arrays;
import java.util.List;

/** The cheapest run of forms from the first of some seams to the last: dynamic programming, exact over these seams and forms. */
final class CheapestRun {
    /**
     * Between forms that meet without a step both radii there are one size, which is not known before all are fitted together. Of turned runs
     * some three joints in five are such: so much of a size less each joint costs here, lest two members go for one from the start.
     */
    private static final double MEET = 0.6;

    private CheapestRun() {}

    static Run of(Data data, List<Seam> seams, double perSize) {
        Stretches stretches = new Stretches(data, perSize);
        int n = seams.size();
        double[] cost = new double[n];
        int[] before = new int[n];
        Form[] form = new Form[n];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(form, Form.LEVEL);
        cost[0] = 0;
        double shared = data.swept ? MEET * perSize : 0;
        for (int to = 1; to < n; to++) {
            for (int from = 0; from < to; from++) {
                double soFar = cost[from] + seams.get(to).unmeasured(data) * perSize - shared;
                if (soFar + 2 * perSize < cost[to]) {
                    Stretches.Best best = stretches.best(seams.get(from), seams.get(to));
                    if (soFar + best.cost() < cost[to]) {
                        cost[to] = soFar + best.cost();
                        before[to] = from;
                        form[to] = best.form();
                    }
                }
            }
        }
        return Run.back(seams, before, form);
    }
}
