package turnalike.turning;

import turnalike.pattern.PlacedMember;

/**
 * A long thin member of a piece held by one end is not thinned all along before its end toward the hold is done with the tool: it is brought to
 * its shape stretch by stretch, from its end toward the tip, so that what stands behind the tool is thick. Common practice, no source.
 */
final class ThinStretches {
    static final String HOW =
            "; a little at a time from the tip's side back, each stretch done and sanded before the wood behind it is thinned";

    private ThinStretches() {}

    static boolean isCutInStretches(TurningProblem work, PlacedMember placed) {
        return work.held().byOneEnd()
                && placed.member().isShaped()
                && work.isLongForThin(placed.member().length())
                && work.isTooThinToPart(placed.outline().smallestRadius().times(2));
    }
}
