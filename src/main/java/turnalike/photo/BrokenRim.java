package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * How wide the chamfer or the rounding of an end's rim is, by which of all explains the contour best. The face tells little of it, as wide and narrow ones bulge
 * much alike, each in a view of its own; where the outline turns into the flank tells more.
 */
final class BrokenRim {
    /** Such a rim is looked for in so many such steps of the radius right behind the end. */
    private static final double CHAMFER_STEP = 0.03;

    private static final int CHAMFERS = 14;

    /** A chamfer's corners are taken off by one of these. */
    private static final double[] EASED = {0.25, 0.55};

    /** Sandpaper takes the corners off chamfers up to so many steps wide; wider ones would pass for roundings. */
    private static final int EASED_CHAMFERS = 10;

    private static final double ROUND_STEP = 0.05;

    private static final int ROUNDS = 20;

    /** One that fits by so much worse than a sharp rim, as a log, need not be asked further. */
    private static final double BROKEN = Math.log(1.15);

    /** What an end costs, as such a log, that bulges as no view would have it. */
    private static final double UNLIKELY = 3;

    /** So many steps of what was tried, what is looked for is unsure by at most. */
    private static final double MOST_OPEN = 3;

    /** A rim as wide as a bulge asks is found in so many halvings, and no wider than this: a wider one leaves no face. */
    private static final int HALVINGS = 10;

    private static final double WIDEST_ROUND = 0.69;

    /** A log that bends by no more than this near its least leaves the rim as open as may be. */
    private static final double LEAST_BEND = 1e-4;

    private BrokenRim() {}

    /** What the rim of an end may be: sharp first, then chamfered and rounded as fits best, if either fits better. */
    static List<EndEdge> kinds(SquaredContour contour, boolean start) {
        EndCap sharp = EndCap.of(contour, start, EndEdge.SHARP);
        List<EndEdge> edges = new ArrayList<>(List.of(EndEdge.SHARP));
        chamfered(contour, start, sharp).ifPresent(edges::add);
        rounded(contour, start, sharp).ifPresent(edges::add);
        if (sharp.bulgesTooMuch()) {
            edges.add(EndEdge.DOME);
        }
        return edges;
    }

    /** The same kind of edge as it is measured in another view; sharp where none such is seen there. */
    static EndEdge again(SquaredContour contour, boolean start, EndEdge known) {
        if (known.isSharp() || known.domed()) {
            return known;
        }
        if (known.byBulge()) {
            return byBulge(contour, start, known.round() > 0).orElse(known);
        }
        EndCap sharp = EndCap.of(contour, start, EndEdge.SHARP);
        return (known.round() > 0 ? rounded(contour, start, sharp) : chamfered(contour, start, sharp))
                .orElse(EndEdge.SHARP);
    }

    /**
     * A rim so wide that the end bulges as it is seen to, if any is: where neither face nor flank tells how wide it is, this view can be the right one
     * with that rim.
     *
     * @param round whether it is rounded over, else chamfered
     */
    static Optional<EndEdge> byBulge(SquaredContour contour, boolean start, boolean round) {
        DoubleFunction<EndEdge> edge = round ? EndEdge::rounded : share -> EndEdge.eased(share, EASED[0]);
        double least = 0;
        double most = round ? WIDEST_ROUND : CHAMFER_STEP * CHAMFERS;
        if (!(EndCap.face(contour, start, EndEdge.SHARP).disagreement() > 0)
                || !(EndCap.face(contour, start, edge.apply(most)).disagreement() < 0)) {
            return Optional.empty();
        }
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (least + most) / 2;
            boolean wider = EndCap.face(contour, start, edge.apply(middle)).disagreement() > 0;
            least = wider ? middle : least;
            most = wider ? most : middle;
        }
        return Optional.of(edge.apply((least + most) / 2).asItBulges());
    }

    /** A chamfer, its corners sharp or eased, as explains the contour best. */
    private static Optional<EndEdge> chamfered(SquaredContour contour, boolean start, EndCap sharp) {
        Optional<EndEdge> best = best(contour, start, EndEdge::chamfered, CHAMFER_STEP, CHAMFERS, sharp);
        double least = astray(contour, start, best);
        for (double eased : EASED) {
            Optional<EndEdge> other =
                    best(contour, start, share -> EndEdge.eased(share, eased), CHAMFER_STEP, EASED_CHAMFERS, sharp);
            double astray = astray(contour, start, other);
            best = astray < least ? other : best;
            least = Math.min(astray, least);
        }
        return best;
    }

    private static double astray(SquaredContour contour, boolean start, Optional<EndEdge> edge) {
        return edge.map(each -> astray(EndCap.of(contour, start, each))).orElse(Double.POSITIVE_INFINITY);
    }

    private static Optional<EndEdge> rounded(SquaredContour contour, boolean start, EndCap sharp) {
        return best(contour, start, EndEdge::rounded, ROUND_STEP, ROUNDS, sharp);
    }

    private static double astray(EndCap cap) {
        return cap.astray() + (cap.isLikely() ? 0 : UNLIKELY);
    }

    /** That of such edges which fits best, unless a sharp one does. */
    private static Optional<EndEdge> best(
            SquaredContour contour, boolean start, DoubleFunction<EndEdge> edge, double step, int count, EndCap sharp) {
        EndCap[] caps = new EndCap[count + 1];
        double[] astray = new double[count + 1];
        int least = count;
        caps[0] = sharp;
        astray[0] = astray(sharp);
        Cores.each(count, k -> caps[k + 1] = EndCap.of(contour, start, edge.apply(Math.min(1, step * (k + 1)))));
        for (int k = count; k > 0; k--) {
            astray[k] = astray(caps[k]);
            least = astray[k] < astray[least] ? k : least;
        }
        boolean isSharp = least == 1 && astray[0] < astray[1];
        if (isSharp || !(astray[least] < BROKEN + astray[0])) {
            return Optional.empty();
        }
        if (least == count) {
            return step * count < 1 ? Optional.empty() : Optional.of(edge.apply(1));
        }
        double bend = astray[least - 1] - 2 * astray[least] + astray[least + 1];
        double within = bend > 0 ? 0.5 * (astray[least - 1] - astray[least + 1]) / bend : 0;
        // Twice the log for each point is the cost, so its bend tells how far the rim may be another.
        double points =
                RimChoice.POINTS * caps[least].behind() * contour.sight().focal();
        double spread = 1 / Math.sqrt(points * Math.max(LEAST_BEND, bend));
        double turns = (caps[least + 1].disagreement() - caps[least - 1].disagreement()) / 2;
        double open = Math.abs(turns) * Math.min(MOST_OPEN, spread);
        return Optional.of(edge.apply(step * (least + Math.max(-0.5, Math.min(0.5, within))))
                .opened(open));
    }
}
