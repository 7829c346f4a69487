package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;

/**
 * What is likely of a piece before it was looked at: that a sum of its figures is about so much. All the widths are choices of ours, wide
 * enough for careless work: what is seen outweighs them, and what is not seen stays as unsure as they are.
 *
 * @param of which figures
 * @param times each so many times
 * @param expected what they come to
 * @param sigma one standard deviation, in mm
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Belief(int[] of, double[] times, double expected, double sigma) {
    /** How much longer or shorter than asked for a stretch between two spots is. */
    private static final double WALK_MM = 1.5;

    /** How far a radius is off. */
    private static final double GROWTH_MM = 1;

    /** How far a place is off from what was asked for, wherever it stands. */
    private static final double WANDER_MM = 5;

    /** How far a crest stands off its share of the way between its ends, of their distance. */
    private static final double MIDDLE_SHARE = 0.01;

    private static final double LEAST_MIDDLE_MM = 0.1;

    /** How much more a radius is off at one end of a member than at the other. */
    private static final double ENDS_MM = 0.5;

    /** An end of the piece is where the piece's length says. */
    private static final double PINNED_MM = 0.001;

    static List<Belief> of(Bend bend, double startMm, double endMm) {
        List<Belief> out = new ArrayList<>();
        int last = bend.spots() - 1;
        out.add(one(0, startMm, PINNED_MM));
        out.add(one(last, endMm, PINNED_MM));
        for (int k = 0; k < last; k++) {
            out.add(alike(k, k + 1, WALK_MM));
            out.add(one(k, 0, WANDER_MM));
        }
        for (int k = last + 1; k < bend.figures(); k++) {
            out.add(one(k, 0, GROWTH_MM));
        }
        for (Bend.Stretch stretch : bend.stretches()) {
            int[] growths = stretch.growths();
            if (growths.length == 3) {
                out.add(middle(bend, stretch));
            }
            if (growths.length <= 3) {
                out.add(alike(growths[0], growths[growths.length - 1], ENDS_MM));
            }
        }
        return out;
    }

    private static Belief one(int figure, double expected, double sigma) {
        return new Belief(new int[] {figure}, new double[] {1}, expected, sigma);
    }

    private static Belief alike(int one, int other, double sigma) {
        return new Belief(new int[] {one, other}, new double[] {-1, 1}, 0, sigma);
    }

    /** A crest stands between its ends about where it should. */
    private static Belief middle(Bend bend, Bend.Stretch stretch) {
        int first = stretch.firstSpot();
        double[] spots = bend.spotMm();
        double length = spots[first + 2] - spots[first];
        double share = (spots[first + 1] - spots[first]) / length;
        return new Belief(
                new int[] {first, first + 1, first + 2},
                new double[] {share - 1, 1, -share},
                0,
                Math.max(LEAST_MIDDLE_MM, MIDDLE_SHARE * length));
    }

    double off(double[] figures) {
        double sum = -expected;
        for (int a = 0; a < of.length; a++) {
            sum += times[a] * figures[of[a]];
        }
        return sum;
    }
}
