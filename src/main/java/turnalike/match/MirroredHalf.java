package turnalike.match;

import java.util.Arrays;

/**
 * All ways to put some pieces on mirrored pairs of places, as far as they differ along the line of the mirror: there it makes no difference
 * which of two pieces stands to the left. An odd piece stands alone on half a pair. The pairs are halved into head and tail: for every
 * choice of the pieces of the head, each way to deal them there adds to each way to deal the others in the tail, so that the sums along
 * the line can be gone through without being stored.
 */
final class MirroredHalf {
    /** What the tail takes if there are so many: dealt in 30 or 90 ways, long enough to be gone through quickly. */
    private static final int TAIL = 6;

    /** Which pairs of the line, as many as half the pieces, rounded up. */
    final int[] pairs;

    final int[] pieces;

    /** The sums of the heads, choice after choice, and how many there are to a choice; the tails likewise. */
    final int[] heads;

    final int headWays;
    final int[] tails;
    final int tailWays;

    /** The smallest and largest tail of each choice. */
    final int[] tailLow;

    final int[] tailHigh;

    private final int headSize;
    private final int[] choices;
    private final int[] chosen;
    private final int[] part = new int[TAIL / 2 * TAIL];

    MirroredHalf(int size) {
        pairs = new int[(size + 1) / 2];
        pieces = new int[size];
        chosen = new int[size];
        int tailSize = Math.min(size, TAIL - size % 2);
        headSize = size - tailSize;
        choices = Permutations.masks(size, headSize);
        headWays = Permutations.pairedCount(headSize);
        tailWays = Permutations.pairedCount(tailSize);
        heads = new int[choices.length * headWays];
        tails = new int[choices.length * tailWays];
        tailLow = new int[choices.length];
        tailHigh = new int[choices.length];
    }

    int size() {
        return pieces.length;
    }

    /** How many ways there are. */
    int ways() {
        return heads.length * tailWays;
    }

    int choices() {
        return choices.length;
    }

    /** How far each piece's place lies along the line, two to a pair. */
    double[] slots(MirrorLine line) {
        double[] slots = new double[pieces.length];
        Arrays.setAll(slots, i -> line.along[line.left[pairs[i / 2]]]);
        return slots;
    }

    /** The smallest sum there is along the line: the heaviest lie farthest back (rearrangement inequality). */
    double least(double[] momentsGMm, MirrorLine line) {
        return opposed(momentsGMm, line, 1);
    }

    double most(double[] momentsGMm, MirrorLine line) {
        return -opposed(momentsGMm, line, -1);
    }

    private double opposed(double[] momentsGMm, MirrorLine line, int sign) {
        double[] slots = slots(line);
        double[] moments = new double[pieces.length];
        Arrays.setAll(moments, i -> sign * momentsGMm[pieces[i]]);
        Arrays.sort(slots);
        Arrays.sort(moments);
        double sum = 0;
        for (int i = 0; i < moments.length; i++) {
            sum += slots[i] * moments[moments.length - 1 - i];
        }
        return sum;
    }

    /** No part of a sum is larger than this, when pieces and places count from their means as in {@link #lay}. */
    double reach(double[] momentsGMm, MirrorLine line) {
        double[] slots = slots(line);
        double mean = mean(momentsGMm);
        double middle = Arrays.stream(slots).average().orElse(0);
        double farthest = 0;
        double sum = 0;
        for (int i = 0; i < slots.length; i++) {
            farthest = Math.max(farthest, Math.abs(slots[i] - middle));
            sum += Math.abs(momentsGMm[pieces[i]] - mean);
        }
        return farthest * sum;
    }

    private double mean(double[] momentsGMm) {
        double sum = 0;
        for (int piece : pieces) {
            sum += momentsGMm[piece];
        }
        return sum / Math.max(1, pieces.length);
    }

    /**
     * Sums up heads and tails in whole steps. Moments and places count from their means, so that parts of a sum stay small; what that leaves
     * out is the same in every way and is added to the start.
     *
     * @param sign 1 for the sums themselves, −1 for their opposites
     * @param startGMm added to every sum
     */
    void lay(double[] momentsGMm, MirrorLine line, double stepGMm, int sign, double startGMm) {
        double[] slots = slots(line);
        double mean = mean(momentsGMm);
        double middle = Arrays.stream(slots).average().orElse(0);
        int size = pieces.length;
        int[] steps = new int[pairs.length * size];
        for (int k = 0; k < pairs.length; k++) {
            double each = sign * (slots[2 * k] - middle) / stepGMm;
            for (int i = 0; i < size; i++) {
                steps[k * size + i] = (int) Math.round((momentsGMm[pieces[i]] - mean) * each);
            }
        }
        int start = (int) Math.round((startGMm + sign * mean * middle * size) / stepGMm);
        for (int c = 0; c < choices.length; c++) {
            split(choices[c]);
            sums(steps, 0, headSize, start, heads, c * headWays);
            sums(steps, headSize, size - headSize, 0, tails, c * tailWays);
            int low = Integer.MAX_VALUE;
            int high = Integer.MIN_VALUE;
            for (int t = c * tailWays; t < (c + 1) * tailWays; t++) {
                low = Math.min(low, tails[t]);
                high = Math.max(high, tails[t]);
            }
            tailLow[c] = low;
            tailHigh[c] = high;
        }
    }

    private void sums(int[] steps, int from, int count, int start, int[] into, int at) {
        int size = pieces.length;
        for (int k = 0; k < (count + 1) / 2; k++) {
            for (int i = 0; i < count; i++) {
                part[k * count + i] = steps[(from / 2 + k) * size + chosen[from + i]];
            }
        }
        int[] some = part;
        int[] rows = Permutations.pairedCells(count);
        int next = 0;
        int end = at + Permutations.pairedCount(count);
        for (int to = at; to < end; to++) {
            int sum = start;
            for (int i = 0; i < count; i++) {
                sum += some[rows[next++]];
            }
            into[to] = sum;
        }
    }

    /** Which pieces of {@link #pieces} stand on the pairs, two to a pair, in the way of that number. */
    int[] way(int number) {
        split(choices[number / (headWays * tailWays)]);
        byte[] head = Permutations.paired(headSize)[number / tailWays % headWays];
        byte[] tail = Permutations.paired(pieces.length - headSize)[number % tailWays];
        int[] way = new int[pieces.length];
        Arrays.setAll(way, i -> pieces[i < headSize ? chosen[head[i]] : chosen[headSize + tail[i - headSize]]]);
        return way;
    }

    /** Numbers the pieces of the head, then those of the tail. */
    private void split(int choice) {
        int inHead = 0;
        int inTail = headSize;
        for (int i = 0; i < pieces.length; i++) {
            if (((choice >>> i) & 1) == 1) {
                chosen[inHead++] = i;
            } else {
                chosen[inTail++] = i;
            }
        }
    }
}
