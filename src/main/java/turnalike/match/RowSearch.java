package turnalike.match;

import java.util.Arrays;
import turnalike.effort.Effort;

/**
 * A short open path through a passing set, without proof: from the nearest neighbour each time, of the set most alike in mass or of one grown so, then by turning stretches round, moving
 * stretches of up to three pieces and exchanging pieces for spares as long as that helps; then again and again from the best with two
 * stretches swapped. Each pass over a row of n costs n² steps.
 */
final class RowSearch {
    /** A gain must pass rounding, or two moves could undo one another for ever. */
    private static final double GAIN = 1e-12;

    private final Differences difference;
    private final SetRule rule;
    private final SplitMix64 dice = new SplitMix64(2);
    private final double least;
    private int[] row = new int[0];
    private int[] spares = new int[0];

    RowSearch(Differences difference, SetRule rule) {
        this.difference = difference;
        this.rule = rule;
        least = GAIN * difference.largest() + Double.MIN_NORMAL;
    }

    /**
     * Improves until the effort is spent, {@code bound} is met or {@code rounds} kicks in a row found nothing; from where it ended if called
     * again.
     */
    int[] solve(double bound, int rounds, Effort effort) {
        if (row.length == 0) {
            start(rule.alikest());
            improve();
            startFromGrown();
        }
        int[] best = row.clone();
        int[] bestSpares = spares.clone();
        double bestTotal = total(best);
        int nothing = 0;
        while (bestTotal > bound && nothing < rounds && row.length > 3 && !effort.spent()) {
            row = best.clone();
            spares = bestSpares.clone();
            kick();
            improve();
            nothing++;
            if (total(row) < bestTotal - least) {
                best = row.clone();
                bestSpares = spares.clone();
                bestTotal = total(best);
                nothing = 0;
            }
        }
        return best;
    }

    double total(int[] path) {
        double sum = 0;
        for (int i = 1; i < path.length; i++) {
            sum += difference.between(path[i - 1], path[i]);
        }
        return sum;
    }

    /** Where another start is better from the outset: pieces alike in mass may look nothing like one another, and thousands hide those that do. */
    private void startFromGrown() {
        if (spares.length == 0) {
            return;
        }
        int[] best = new GrownRow(difference, rule).best(row.length);
        if (best.length > 0 && total(best) < total(row) - least) {
            start(best);
            improve();
        }
    }

    private void start(int[] set) {
        boolean[] inSet = new boolean[difference.count()];
        for (int piece : set) {
            inSet[piece] = true;
        }
        spares = new int[difference.count() - set.length];
        int filled = 0;
        for (int i = 0; i < inSet.length; i++) {
            if (!inSet[i]) {
                spares[filled++] = i;
            }
        }
        for (int i = 1; i < set.length; i++) {
            int nearest = i;
            for (int j = i + 1; j < set.length; j++) {
                if (difference.between(set[i - 1], set[j]) < difference.between(set[i - 1], set[nearest])) {
                    nearest = j;
                }
            }
            int held = set[i];
            set[i] = set[nearest];
            set[nearest] = held;
        }
        row = set;
    }

    private void improve() {
        boolean moved = true;
        while (moved) {
            moved = turnStretches();
            moved |= moveStretches();
            moved |= exchangeSpares();
        }
    }

    /** The difference across a joint; beyond the ends there is none. */
    private double joint(int left, int right) {
        return left < 0 || right >= row.length ? 0 : difference.between(row[left], row[right]);
    }

    private double across(int piece, int place) {
        return place < 0 || place >= row.length ? 0 : difference.between(piece, row[place]);
    }

    private boolean turnStretches() {
        boolean moved = false;
        for (int i = 0; i < row.length; i++) {
            for (int j = i + 1; j < row.length; j++) {
                double gain = joint(i - 1, i) + joint(j, j + 1) - across(row[j], i - 1) - across(row[i], j + 1);
                if (gain > least) {
                    turn(i, j);
                    moved = true;
                }
            }
        }
        return moved;
    }

    private void turn(int from, int to) {
        for (int i = from, j = to; i < j; i++, j--) {
            int held = row[i];
            row[i] = row[j];
            row[j] = held;
        }
    }

    private boolean moveStretches() {
        boolean moved = false;
        for (int size = 1; size <= 3; size++) {
            for (int from = 0; from + size <= row.length; from++) {
                moved |= moveStretch(from, from + size - 1);
            }
        }
        return moved;
    }

    /** Moves one stretch to where it adds least, turned if that is better. Moving is three turns at most. */
    private boolean moveStretch(int from, int to) {
        double freed = joint(from - 1, from) + joint(to, to + 1) - gapClosed(from, to);
        double bestGain = least;
        int bestAfter = -2;
        boolean turned = false;
        for (int after = -1; after < row.length; after++) {
            if (after >= from - 1 && after <= to) {
                continue;
            }
            double straight = freed + joint(after, after + 1) - across(row[from], after) - across(row[to], after + 1);
            double round = freed + joint(after, after + 1) - across(row[to], after) - across(row[from], after + 1);
            if (Math.max(straight, round) > bestGain) {
                bestGain = Math.max(straight, round);
                bestAfter = after;
                turned = round > straight;
            }
        }
        if (bestAfter == -2) {
            return false;
        }
        int size = to - from + 1;
        if (bestAfter < from) {
            turn(bestAfter + 1, to);
            turn(bestAfter + 1 + size, to);
            if (!turned) {
                turn(bestAfter + 1, bestAfter + size);
            }
        } else {
            turn(from, bestAfter);
            turn(from, bestAfter - size);
            if (!turned) {
                turn(bestAfter - size + 1, bestAfter);
            }
        }
        return true;
    }

    private double gapClosed(int from, int to) {
        return from == 0 || to == row.length - 1 ? 0 : difference.between(row[from - 1], row[to + 1]);
    }

    private boolean exchangeSpares() {
        boolean moved = false;
        for (int place = 0; place < row.length && spares.length > 0; place++) {
            moved |= exchangeAt(place, difference.beside(row, place - 1), difference.beside(row, place + 1));
        }
        return moved;
    }

    private boolean exchangeAt(int place, double[] left, double[] right) {
        boolean moved = false;
        double now = left[row[place]] + right[row[place]];
        for (int s = 0; s < spares.length; s++) {
            int spare = spares[s];
            if (now - (left[spare] + right[spare]) > least) {
                spares[s] = row[place];
                row[place] = spare;
                if (rule.passes(row)) {
                    now = left[spare] + right[spare];
                    moved = true;
                } else {
                    row[place] = spares[s];
                    spares[s] = spare;
                }
            }
        }
        return moved;
    }

    /** Swaps two neighbouring stretches somewhere, or brings in a spare: what the moves above cannot undo in one. */
    private void kick() {
        if (spares.length > 0 && dice.below(3) == 0) {
            int place = dice.below(row.length);
            int s = dice.below(spares.length);
            int held = row[place];
            row[place] = spares[s];
            if (rule.passes(row)) {
                spares[s] = held;
            } else {
                row[place] = held;
            }
        }
        int[] cuts = {dice.below(row.length + 1), dice.below(row.length + 1), dice.below(row.length + 1)};
        Arrays.sort(cuts);
        int[] kicked = new int[row.length];
        int filled = 0;
        int[][] parts = {{0, cuts[0]}, {cuts[1], cuts[2]}, {cuts[0], cuts[1]}, {cuts[2], row.length}};
        for (int[] part : parts) {
            System.arraycopy(row, part[0], kicked, filled, part[1] - part[0]);
            filled += part[1] - part[0];
        }
        row = kicked;
    }
}
