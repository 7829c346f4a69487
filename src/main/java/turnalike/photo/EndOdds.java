package turnalike.photo;

import java.util.Arrays;
import java.util.Map;

/**
 * How likely each lean is by one end alone, and each form of that end in such a view. In every view each form, as wide as it may be, is laid through the end; what
 * counts is how ill it explains the outline's points, and how far its bulge is from what it should be in that view.
 */
final class EndOdds {
    /** Points of an end that stray by themselves, for each pixel of its radius: misfits run on from point to point. Set on 93 made pictures. */
    private static final double POINTS = 0.2;

    /** At least so many: on pictures in which an end is seen forty pixels wide they do stray each for itself. */
    private static final double LEAST_POINTS = 10;

    /** What the log of a bulge is off by in any case, one standard deviation. */
    private static final double BASE = 0.03;

    /** An end may lie between two of the widths tried: so much of the bulge's step from one to the next. */
    private static final double BETWEEN = 0.3;

    private static final double MOST_BETWEEN = 0.3;

    /** Shade or a shadow beside it, or a cut askew, bends an end's bulge as no view would, once in about so many times. By trying. */
    private static final double ASKEW = Math.exp(-5);

    /** By so much of its log. */
    private static final double BENT = 1;

    /** What one end can tell of the lean at most, as twice a log. Set on 93 made pictures. */
    private static final double MOST_TOLD = 10;

    /** A dome bulges by so much more than a flat end, as a log; what bulges by less more is worn. */
    private static final double LEAST_DOMED = 0.15;

    private static final double LESS_DOMED = 0.05;

    /** Stands for the bulge's log where no end of such a form is seen, and more than this does so between two leans. */
    private static final double NO_END = 1000;

    private static final double MOST_BULGE = 10;

    private static final int FORMS = EndForm.ALL.size();

    private final boolean start;

    private final double points;

    private final Leans leans;

    private final double[][] astray;

    private final double[][] bulge;

    private final double[][] unsure;

    private final double[][] place;

    private final double apex;

    private final double[] costs;

    /**
     * Begins.
     *
     * @param start whether the start end is meant
     * @param middle the contour as it is seen in the middle one of the leans
     * @param leans that are looked at
     */
    EndOdds(boolean start, SquaredContour middle, Leans leans) {
        this.start = start;
        this.leans = leans;
        double behind = EndCap.face(middle, start, EndEdge.SHARP).behind();
        points = Math.max(LEAST_POINTS, POINTS * behind * middle.sight().focal());
        double[] x = middle.points(true)[0];
        apex = start ? x[0] : x[x.length - 1];
        astray = new double[leans.count()][FORMS];
        bulge = new double[leans.count()][FORMS];
        unsure = new double[leans.count()][FORMS];
        place = new double[leans.count()][FORMS];
        costs = new double[leans.fineCount()];
    }

    /** Reads the end in the view of a lean. */
    void read(int lean, SquaredContour contour) {
        for (int k = 0; k < FORMS; k++) {
            EndCap cap = EndCap.of(contour, start, EndForm.ALL.get(k).edge());
            boolean isNone = cap.misfit() == Double.POSITIVE_INFINITY;
            astray[lean][k] = cap.astray();
            bulge[lean][k] = isNone ? NO_END : cap.disagreement();
            unsure[lean][k] = Math.hypot(BASE, cap.uncertainty());
            place[lean][k] = cap.place();
        }
        for (int k = 0; k < FORMS; k++) {
            unsure[lean][k] = Math.hypot(unsure[lean][k], BETWEEN * Math.min(MOST_BETWEEN, step(bulge[lean], k)));
        }
    }

    /** By how much the bulge differs from that of the next width. */
    private static double step(double[] bulges, int k) {
        EndForm form = EndForm.ALL.get(k);
        if (!form.isWide()) {
            return 0;
        }
        boolean wider = k + 1 < FORMS && EndForm.ALL.get(k + 1).isLike(form);
        boolean narrower = EndForm.ALL.get(k - 1).isLike(form);
        double up = wider ? bulges[k + 1] : bulges[k];
        double down = narrower ? bulges[k - 1] : bulges[k];
        return Math.abs(up - down) / (wider && narrower ? 2 : 1);
    }

    /** Once every lean has been read. */
    void settle() {
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < costs.length; j++) {
            costs[j] = -2 * logOfAll(logs(leans.fine(j)));
            least = Math.min(least, costs[j]);
        }
        for (int j = 0; j < costs.length; j++) {
            costs[j] = -2 * Math.log(Math.exp((least - costs[j]) / 2) + Math.exp(-MOST_TOLD / 2));
        }
    }

    /** Twice the negative log of how likely a view is. */
    double cost(double tilt, double longer) {
        return leans.fineAt(costs, lean(tilt, longer));
    }

    /**
     * The lean at which the end is seen so through the lens that it was read with: it tells at what angle the camera sees it, and nothing else.
     *
     * @param tilt the lean
     * @param longer log of the focal length over that lens'
     */
    private double lean(double tilt, double longer) {
        return tilt + Math.atan(apex) - Math.atan(apex * Math.exp(-longer));
    }

    /** The log of how likely any of them is. */
    private static double logOfAll(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return Math.log(sum) + most;
    }

    /** The log of how likely each form is. */
    private double[] logs(double lean) {
        Leans.Between at = leans.between(lean);
        double[] logs = new double[FORMS];
        for (int k = 0; k < FORMS; k++) {
            EndForm form = EndForm.ALL.get(k);
            logs[k] = Math.log(form.likely() * bulging(form.kind(), at.of(bulge, k), at.of(unsure, k)))
                    - points * at.of(astray, k);
        }
        return logs;
    }

    /** How likely it bulges so. */
    private static double bulging(EndForm.Kind kind, double bulge, double unsure) {
        return switch (kind) {
            case NONE -> 1;
            case DOME -> bulge < MOST_BULGE ? Math.exp(-square(Math.max(0, LEAST_DOMED - bulge) / LESS_DOMED) / 2) : 0;
            default -> Math.exp(-square(bulge / unsure) / 2) + ASKEW * Math.exp(-square(bulge / BENT) / 2);
        };
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * What an end is in a view.
     *
     * @param edge of the likeliest kind of form, as wide as it is in the mean
     * @param round how likely it has no face
     * @param apart how far apart its forms would have its face, in the mean, over the distance
     */
    record Told(EndEdge edge, double round, double apart) {}

    /** What it is in that view. */
    Told told(double tilt, double longer) {
        double lean = lean(tilt, longer);
        double[] likely = likely(lean);
        Map<EndForm.Kind, Double> kinds = EndForm.byKind(likely);
        double round = kinds.entrySet().stream()
                .filter(each -> !each.getKey().hasFace())
                .mapToDouble(Map.Entry::getValue)
                .sum();
        EndForm.Kind kind = EndForm.likeliest(kinds, round < 0.5);
        return new Told(EndForm.mean(kind, likely), round, apart(likely, lean));
    }

    private double[] likely(double lean) {
        double[] logs = logs(lean);
        double all = logOfAll(logs);
        return Arrays.stream(logs).map(log -> Math.exp(log - all)).toArray();
    }

    /** How far from their mean its forms would have the face stand, in the mean, over the distance. */
    private double apart(double[] likely, double lean) {
        Leans.Between at = leans.between(lean);
        double sum = 0;
        double mean = 0;
        for (int k = 0; k < FORMS; k++) {
            if (EndForm.ALL.get(k).kind().hasFace()) {
                sum += likely[k];
                mean += likely[k] * at.of(place, k);
            }
        }
        mean /= sum;
        double apart = 0;
        for (int k = 0; k < FORMS; k++) {
            if (EndForm.ALL.get(k).kind().hasFace()) {
                apart += likely[k] * Math.abs(at.of(place, k) - mean);
            }
        }
        return sum > 0 ? apart : 0;
    }
}
