package turnalike.photo;

import java.util.Optional;

/**
 * Where an end stands that bulges by more than a flat one with a sharp rim. A dome is seen much as an end with a chamfer or a rounding so wide that it bulges
 * as much, but the dome's pole stands farther out than the other's face, by a hundredth of the length of a piece seen from near: the likelier one counts.
 */
final class DomeOrRim {
    /** A dome is the seldomer by so much. Common practice, no source. */
    private static final double SELDOM = 4;

    private DomeOrRim() {}

    /**
     * The end as it is likelier.
     *
     * @param cap as the view has it
     * @param points of it that speak for themselves
     */
    static EndCap of(EndCap cap, SquaredContour contour, boolean start, double points) {
        if (!cap.isDome()) {
            return cap;
        }
        EndCap best = cap;
        double least = RimWay.cost(cap, points) + SELDOM;
        for (boolean round : new boolean[] {false, true}) {
            Optional<EndEdge> edge = BrokenRim.byBulge(contour, start, round);
            if (edge.isPresent()) {
                EndCap broken = EndCap.of(contour, start, edge.orElseThrow());
                double cost = RimWay.cost(broken, points);
                best = cost < least ? broken : best;
                least = Math.min(cost, least);
            }
        }
        return best;
    }
}
