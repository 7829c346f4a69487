package turnalike.trace.fit;

import turnalike.trace.Profile;

/** Which members rest on what was not seen. */
final class Hidden {
    /** More of a member's length unseen than this leaves its form a guess (a choice of ours). */
    private static final double MOST_SHARE = 0.25;

    /** Of a joint so near a hidden stretch one side was not seen. */
    private static final double BESIDE_MM = 0.1;

    private Hidden() {}

    /** Whether a member between two places rests on hidden stretches: a quarter of it or more, or an end of it, or no station at all. */
    static boolean restsOn(Profile profile, double fromMm, double toMm, int stations) {
        double unseen = 0;
        boolean endUnseen = false;
        double lengthMm = profile.length().mm();
        for (Profile.Stretch gap : profile.hidden()) {
            double from = gap.from().mm();
            double to = gap.to().mm();
            unseen += Math.max(0, Math.min(to, toMm) - Math.max(from, fromMm));
            endUnseen |= (fromMm > BESIDE_MM && from - BESIDE_MM < fromMm && fromMm < to + BESIDE_MM)
                    || (toMm < lengthMm - BESIDE_MM && from - BESIDE_MM < toMm && toMm < to + BESIDE_MM);
        }
        return stations == 0 || endUnseen || unseen > MOST_SHARE * (toMm - fromMm);
    }
}
