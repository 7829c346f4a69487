package turnalike.settings;

import java.util.Arrays;

/**
 * Counts, for a choice of openings, the fewest steps that carry a given mark to each mark: breadth first, all marks one step out, then two.
 * Built once and used for many choices; not for two threads at a time. Annealing asks by the hundred thousand: where the marks fit into the
 * bits of one number each pair is looked at once, not once for each step.
 */
final class StepCount {
    private final Spans spans;
    private final int[] steps;
    /** For each mark, those one step from it with the openings counted; of no length where the marks are too many. */
    private final long[] neighbours;

    private int[] stick;
    private int unreached;
    private int sum;

    StepCount(Spans spans) {
        this.spans = spans;
        this.steps = new int[spans.marks()];
        this.neighbours = new long[spans.marks() <= Long.SIZE ? spans.marks() : 0];
        this.stick = spans.stick;
    }

    /** From now on the stick gives these marks, besides what is given in any case; the array is not copied. */
    void useStick(int[] marks) {
        stick = marks;
    }

    /** The marks that the stick gives because the search says so, rising; a copy. */
    int[] stick() {
        int[] sorted = stick.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** Counts anew for the first {@code count} of the openings named, and the pinned ones. */
    void count(int[] chosen, int count) {
        start();
        if (neighbours.length > 0) {
            countBits(chosen, count);
            return;
        }
        for (int step = 1; step <= spans.mostSteps && unreached > 0; step++) {
            int before = unreached;
            for (int pin = 0; pin < spans.pinned; pin++) {
                extend(spans.openings.get(pin), step);
            }
            for (int i = 0; i < count; i++) {
                extend(spans.openings.get(chosen[i]), step);
            }
            if (before == unreached && step > 1) {
                return;
            }
        }
    }

    private void countBits(int[] chosen, int count) {
        Arrays.fill(neighbours, 0);
        for (int pin = 0; pin < spans.pinned; pin++) {
            join(spans.openings.get(pin));
        }
        for (int i = 0; i < count; i++) {
            join(spans.openings.get(chosen[i]));
        }
        long open = 0;
        long frontier = 0;
        for (int mark = 0; mark < steps.length; mark++) {
            if (steps[mark] == 0) {
                frontier |= 1L << mark;
            } else {
                open |= 1L << mark;
            }
        }
        for (int step = 1; step <= spans.mostSteps && open != 0 && frontier != 0; step++) {
            frontier = MarkBits.neighbours(neighbours, frontier) & open;
            open &= ~frontier;
            for (long rest = frontier; rest != 0; rest &= rest - 1) {
                reach(Long.numberOfTrailingZeros(rest), step);
            }
        }
    }

    private void join(Opening opening) {
        int[] low = opening.low();
        int[] high = opening.high();
        for (int i = 0; i < low.length; i++) {
            neighbours[low[i]] |= 1L << high[i];
            neighbours[high[i]] |= 1L << low[i];
        }
    }

    private void start() {
        Arrays.fill(steps, Integer.MAX_VALUE);
        unreached = spans.marks();
        sum = 0;
        for (int mark = 0; mark < steps.length; mark++) {
            if (spans.given[mark]) {
                reach(mark, 0);
            }
        }
        for (int mark : stick) {
            if (steps[mark] > 0) {
                reach(mark, 0);
            }
        }
    }

    private void extend(Opening opening, int step) {
        int[] low = opening.low();
        int[] high = opening.high();
        for (int i = 0; i < low.length; i++) {
            int a = steps[low[i]];
            int b = steps[high[i]];
            if (a == step - 1 && b > step) {
                reach(high[i], step);
            } else if (b == step - 1 && a > step) {
                reach(low[i], step);
            }
        }
    }

    private void reach(int mark, int step) {
        steps[mark] = step;
        sum += step;
        unreached--;
    }

    /** Steps to that mark, 0 for a given one; {@link Integer#MAX_VALUE} when no choice of at most the allowed steps gets there. */
    int steps(int mark) {
        return steps[mark];
    }

    int unreached() {
        return unreached;
    }

    /** The sum of steps over the marks reached by dividers. */
    int sum() {
        return sum;
    }

    /**
     * The longest distance that must be stepped when every mark takes the shortest of the steps that cost it nothing. Call after a
     * count that left nothing unreached.
     */
    double longestStepMm(int[] chosen, int count) {
        double[] shortest = new double[spans.marks()];
        Arrays.fill(shortest, Double.POSITIVE_INFINITY);
        for (int i = 0; i < count; i++) {
            shorten(shortest, spans.openings.get(chosen[i]));
        }
        // What a pinned opening serves costs nothing: it stands in every plan.
        for (int pin = 0; pin < spans.pinned; pin++) {
            forgive(shortest, spans.openings.get(pin));
        }
        double longest = 0;
        for (int mark = 1; mark < spans.last(); mark++) {
            if (steps[mark] > 0) {
                longest = Math.max(longest, shortest[mark]);
            }
        }
        return longest;
    }

    private void shorten(double[] shortest, Opening opening) {
        for (int i = 0; i < opening.pairs(); i++) {
            int low = opening.low()[i];
            int high = opening.high()[i];
            double distance = spans.distanceMm(low, high);
            if (steps[high] == steps[low] + 1) {
                shortest[high] = Math.min(shortest[high], distance);
            } else if (steps[low] == steps[high] + 1) {
                shortest[low] = Math.min(shortest[low], distance);
            }
        }
    }

    private void forgive(double[] shortest, Opening opening) {
        for (int i = 0; i < opening.pairs(); i++) {
            int low = opening.low()[i];
            int high = opening.high()[i];
            if (steps[high] == steps[low] + 1) {
                shortest[high] = 0;
            } else if (steps[low] == steps[high] + 1) {
                shortest[low] = 0;
            }
        }
    }
}
