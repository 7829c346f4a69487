package turnalike.trace.fit;

import java.util.Arrays;
import java.util.List;

/**
 * A run fitted as a whole: the sizes of all forms at once, radii that two neighbours share being one size, by weighted least squares.
 * Its cost is Schwarz's criterion: χ² plus ln n for each size, each joint's place and each form (G. Schwarz, Annals of Statistics 6 (1978)
 * 461–464; from memory), plus which of the kinds each form is and its rarity.
 */
final class JointFit {
    private static final double LEAST_RADIUS_MM = 0.05;

    private final Data data;
    private final Run run;
    private final boolean[] tied;
    private final double perSize;
    /** Which unknown each form's each size is. */
    private final int[][] unknown;

    private final FormSums[] sums;
    private final double[] solved;
    private final int unknowns;
    private final double[] missOf;
    private final double chi;

    private JointFit(Data data, Run run, boolean[] tied, double perSize, List<FormSums> known) {
        this.data = data;
        this.run = run;
        this.tied = tied.clone();
        this.perSize = perSize;
        this.unknown = new int[run.size()][];
        this.unknowns = number();
        this.sums = sums(known);
        this.solved = solve();
        this.missOf = new double[run.size()];
        this.chi = miss();
    }

    /**
     * Fits a run.
     *
     * @param tied for each seam but the ends' whether the radii on both sides of it are one
     * @param perSize what a size costs, ln n
     */
    static JointFit of(Data data, Run run, boolean[] tied, double perSize) {
        return new JointFit(data, run, tied, perSize, List.of());
    }

    /** Numbers the unknowns; ties go forward, so a joint's radius is the one that the form before it ends with. */
    private int number() {
        int next = 0;
        for (int i = 0; i < run.size(); i++) {
            Form form = run.forms().get(i);
            unknown[i] = new int[form.sizes()];
            for (int k = 0; k < form.sizes(); k++) {
                boolean shared = k == 0 && i > 0 && tied[i];
                unknown[i][k] = shared ? unknown[i - 1][run.forms().get(i - 1).endSize()] : next++;
            }
        }
        return next;
    }

    /** The sums of each form, those of a run that this one was made from where they are the same. */
    private FormSums[] sums(List<FormSums> known) {
        FormSums[] out = new FormSums[run.size()];
        for (int i = 0; i < out.length; i++) {
            Form form = run.forms().get(i);
            Seam from = run.seams().get(i);
            Seam to = run.seams().get(i + 1);
            out[i] = known.stream()
                    .filter(each -> each.isOf(form, from, to))
                    .findFirst()
                    .orElseGet(() -> new FormSums(data, form, from, to));
        }
        return out;
    }

    private double[] solve() {
        double[][] m = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        for (int i = 0; i < sums.length; i++) {
            sums[i].addTo(m, right, unknown[i]);
        }
        for (int i = 0; i < unknowns; i++) {
            m[i][i] += 1e-9 * (m[i][i] + 1);
        }
        return Cholesky.solve(m, right, 1e-13);
    }

    private double miss() {
        if (solved.length == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int i = 0; i < sums.length; i++) {
            if (!isSound(i)) {
                return Double.POSITIVE_INFINITY;
            }
            missOf[i] = sums[i].chi(solved, unknown[i]);
            sum += missOf[i];
        }
        return sum;
    }

    private boolean isSound(int index) {
        Form form = run.forms().get(index);
        for (int k = 0; k < form.sizes(); k++) {
            if (size(index, k) < LEAST_RADIUS_MM) {
                return false;
            }
        }
        boolean flat = form.sizes() == 2
                && form != Form.STRAIGHT
                && Math.abs(size(index, 1) - size(index, 0)) < data.leastRise();
        Seam from = run.seams().get(index);
        Seam to = run.seams().get(index + 1);
        if (flat || !data.isTellable(form, from, to)) {
            return false;
        }
        double length = to.placeMm() - from.placeMm();
        return length > 0 && (form != Form.POINT || size(index, 1) < size(index, 0));
    }

    double size(int form, int k) {
        return solved[unknown[form][k]];
    }

    double startRadius(int form) {
        return size(form, 0);
    }

    double endRadius(int form) {
        return size(form, run.forms().get(form).endSize());
    }

    double radius(int form, double u) {
        double[] weights = new double[3];
        run.forms().get(form).weights(u, weights);
        double sum = 0;
        for (int k = 0; k < unknown[form].length; k++) {
            sum += weights[k] * size(form, k);
        }
        return sum;
    }

    double chi() {
        return chi;
    }

    double chiOf(int form) {
        return missOf[form];
    }

    double cost() {
        double sum = chi + perSize * unknowns + data.perForm(perSize) * run.size();
        for (int i = 0; i < run.size(); i++) {
            sum += rarity(i) + (i > 0 && isTiedUnseen(i) ? perSize : 0);
        }
        for (Seam each : run.seams()) {
            sum += perSize * each.unmeasured(data);
        }
        return sum;
    }

    /** That radii meet where nothing was seen says nothing for it: a step there is as easily had, and what hides it mostly is one. */
    private boolean isTiedUnseen(int seam) {
        return tied[seam] && data.gaps.isAfter(run.seams().get(seam).last());
    }

    double rarity(int form) {
        Seam from = run.seams().get(form);
        double length = run.seams().get(form + 1).placeMm() - from.placeMm();
        double thick = 2 * data.r[Math.min(from.first(), data.size() - 1)];
        boolean hollow = run.forms().get(form) == Form.BELLY && 2 * size(form, 1) < size(form, 0) + size(form, 2);
        double rise = size(form, run.forms().get(form).sizes() - 1) - size(form, 0);
        return run.forms().get(form).rarity(length, thick, rise) + (hollow ? data.hollow(length, thick) : 0);
    }

    Run run() {
        return run;
    }

    boolean isTied(int seam) {
        return tied[seam];
    }

    JointFit with(Run other) {
        return with(other, tied);
    }

    JointFit with(Run other, boolean[] ties) {
        return new JointFit(data, other, ties, perSize, Arrays.asList(sums));
    }

    boolean[] ties() {
        return Arrays.copyOf(tied, tied.length);
    }
}
