package turnalike.settings;

/** What one opening may be set to, so that it serves all the distances it is used for; narrows as they are added. */
record OpeningRange(double leastMm, double mostMm, boolean pinned) {
    /** Wider than the noise of places, so that an opening beside a forbidden one is sure to be another. */
    private static final double CLEAR_MM = 2 * Spans.SLACK_MM;

    /** Before it serves anything. */
    static OpeningRange of(Spans spans, int opening) {
        if (opening < spans.pinned) {
            double pin = spans.rules.pinnedMm()[opening];
            return new OpeningRange(pin, pin, true);
        }
        return new OpeningRange(Math.max(CLEAR_MM, spans.rules.smallestMm()), spans.rules.largestMm(), false);
    }

    /** With that distance to serve besides; a pinned opening stays as it is. */
    OpeningRange serving(double distanceMm, Spans.Rules rules) {
        if (pinned) {
            return this;
        }
        double least = Math.max(leastMm, distanceMm - rules.toleranceMm());
        double most = Math.min(mostMm, distanceMm + rules.toleranceMm());
        for (double forbidden : rules.forbiddenMm()) {
            if (distanceMm > forbidden) {
                least = Math.max(least, forbidden + rules.toleranceMm() + CLEAR_MM);
            } else {
                most = Math.min(most, forbidden - rules.toleranceMm() - CLEAR_MM);
            }
        }
        // Distances as far apart as one opening serves at all leave one place, and rounding may leave a hair less
        // than that.
        if (least > most && least - most <= 4 * CLEAR_MM) {
            double only = (least + most) / 2;
            return new OpeningRange(only, only, false);
        }
        return new OpeningRange(least, most, false);
    }

    boolean isEmpty() {
        return leastMm > mostMm;
    }

    boolean isFixed() {
        return leastMm >= mostMm;
    }

    double nearest(double openingMm) {
        return Math.max(leastMm, Math.min(mostMm, openingMm));
    }
}
