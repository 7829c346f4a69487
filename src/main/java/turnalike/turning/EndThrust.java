package turnalike.turning;

import java.util.Optional;
import turnalike.units.Force;

/**
 * What the tailstock presses along the piece with: a share of what bows the piece, and no more than a force.
 *
 * @param share of what bows the piece, zero or above; infinite where the force is given
 * @param mostN in newtons, zero or above
 */
record EndThrust(double share, double mostN) {
    static final EndThrust NONE = new EndThrust(0, 0);

    /**
     * From this share of what bows the piece a thrust is not borne: so near to it the piece swings at a hundredth of its speed and gives way
     * ten thousandfold, and the figures would be the elements' own error.
     */
    private static final double NOT_BORNE = 0.9999;

    EndThrust {
        if (!(share >= 0 && mostN >= 0) || !Double.isFinite(mostN)) {
            throw new IllegalArgumentException(
                    "share and force must be zero or above, were %s and %s N".formatted(share, mostN));
        }
    }

    /** The same at every stage. */
    static EndThrust of(Force given) {
        return new EndThrust(Double.POSITIVE_INFINITY, given.newtons());
    }

    /** What the job gives, else what the rules suppose. */
    static EndThrust givenOrUsual(Lathe lathe) {
        return lathe.tailstock().map(EndThrust::of).orElseGet(() -> supposed(lathe.rules()));
    }

    /** Where the job gives none. */
    static EndThrust supposed(ShopRules rules) {
        return new EndThrust(rules.thrustShare(), rules.thrustMost().newtons());
    }

    static EndThrust givenOrNone(Optional<Force> given) {
        return given.map(EndThrust::of).orElse(NONE);
    }

    /** In newtons, on a piece that bows at that force. */
    double newtons(double bucklingN) {
        return mostN == 0 ? 0 : Math.min(mostN, share * bucklingN);
    }

    static boolean isBorne(double thrustN, double bucklingN) {
        return thrustN < NOT_BORNE * bucklingN;
    }
}
