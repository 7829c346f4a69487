package turnalike.match;

import java.util.function.DoubleBinaryOperator;

/**
 * Which masses complete a set whatever they are: a range [a, b] is <em>sure</em> when the set passes with every missing piece anywhere
 * between a and b.
 *
 * <p>Derived here. The set passes when max - min - p·mean ≤ 0. That is convex in the missing masses (a maximum, less a minimum, less a
 * sum), so over the box [a, b]ⁿ it is largest at a corner, and by symmetry the corners are told apart by how many stand at a. Trying each
 * is exact. Of several missing pieces one at b and the rest at a is what a single piece's range forgets.
 */
final class SureRange {
    /** Shares that differ by less are the same, as in {@link SetRule}. */
    private static final double SAME = 1e-12;

    /** Finer than any scale, in shares of a mass. */
    private static final double FINE = 1e-9;

    private static final int STEPS = 200;
    private static final int HALVINGS = 60;

    private final KeptSet kept;
    private final double share;

    /** Of kept pieces that are within the share as they are. */
    SureRange(KeptSet kept, double share) {
        this.kept = kept;
        this.share = share;
    }

    /** Whether every choice of missing masses within the range passes; the range's ends in order. */
    boolean isSure(double fromG, double toG) {
        for (int atFrom = 0; atFrom <= kept.missing(); atFrom++) {
            double least = Math.min(kept.lightestG(), atFrom > 0 ? fromG : toG);
            double most = Math.max(kept.heaviestG(), atFrom < kept.missing() ? toG : fromG);
            double allowed = share * (kept.sumG() + atFrom * fromG + (kept.missing() - atFrom) * toG);
            if ((most - least) * kept.places() > allowed + SAME * kept.sumG()) {
                return false;
            }
        }
        return true;
    }

    /** The sure range that scores highest, as {from, to}: one of a family for several missing pieces, the only widest one for one. */
    double[] best(DoubleBinaryOperator score) {
        // With all missing pieces of one mass: the lightest they may be, and the heaviest.
        double first =
                (kept.heaviestG() * kept.places() - share * kept.sumG()) / (kept.places() + share * kept.missing());
        double room = kept.places() - share * kept.missing();
        double highest =
                room > 0 ? (kept.lightestG() * kept.places() + share * kept.sumG()) / room : 2 * kept.heaviestG();
        // Beginning above the lightest kept gains nothing at the upper end: only the width shrinks.
        double last = isSure(kept.lightestG(), kept.heaviestG()) ? kept.lightestG() : highest;
        double keptMean = kept.sumG() / (kept.places() - kept.missing());
        double start = Math.min(keptMean, last);
        double[] best = {start, end(start)};
        double bestScore = score.applyAsDouble(best[0], best[1]);
        double width = (last - first) / STEPS;
        double centre = (first + last) / 2;
        double reach = (last - first) / 2;
        while (reach > FINE * last) {
            double from = Math.max(first, centre - reach);
            double to = Math.min(last, centre + reach);
            for (int i = 0; i <= STEPS; i++) {
                double a = from + (to - from) * i / STEPS;
                if (isSure(a, a)) {
                    double b = end(a);
                    double here = score.applyAsDouble(a, b);
                    if (here > bestScore) {
                        bestScore = here;
                        best = new double[] {a, b};
                    }
                }
            }
            centre = best[0];
            reach = width;
            width = 2 * reach / STEPS;
        }
        return best;
    }

    /** The farthest end of a sure range that begins there, up to twice the heaviest; a smaller range is sure too, so halving finds it. */
    private double end(double fromG) {
        double low = fromG;
        double high = 2 * Math.max(kept.heaviestG(), fromG);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (isSure(fromG, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
