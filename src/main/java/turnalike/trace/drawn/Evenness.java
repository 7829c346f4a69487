package turnalike.trace.drawn;

import java.util.List;
import java.util.Optional;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * How symmetrical a whole outline is about its axis.
 *
 * @param worstMm by how much its middle lies off the axis where it does most
 * @param atMm where that is, from the start end
 * @param thickestMm the greatest half of it across
 */
record Evenness(double worstMm, double atMm, double thickestMm) {
    /** An outline less symmetrical than this is warned of. */
    private static final double UNEVEN_MM = 0.2;

    /** And one less than this share of its greatest radius is none of a turned piece. */
    private static final double CROOKED = 0.15;

    static Evenness of(List<Sides.Across> across, double start) {
        double middle = middle(across);
        double worst = 0;
        double at = 0;
        double most = 0;
        for (Sides.Across each : across) {
            double off = Math.abs(each.middle() - middle);
            most = Math.max(most, each.half());
            if (off > worst) {
                worst = off;
                at = each.x() - start;
            }
        }
        return new Evenness(worst, at, most);
    }

    /** By the piece's own thickness, so that thin parts do not pull the axis aside. */
    private static double middle(List<Sides.Across> across) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i + 1 < across.size(); i++) {
            double run = across.get(i + 1).x() - across.get(i).x();
            double half = (across.get(i).half() + across.get(i + 1).half()) / 2;
            sum += run * half * (across.get(i).middle() + across.get(i + 1).middle()) / 2;
            weights += run * half;
        }
        return sum / weights;
    }

    /** Whether it is none of a turned piece. */
    boolean isCrooked() {
        return worstMm > CROOKED * thickestMm;
    }

    Problem problem(UnitSystem units) {
        return new Problem(
                "drawing",
                "its outline is not symmetrical: at %s its middle lies %s off the axis"
                        .formatted(
                                Length.ofMm(atMm).format(units),
                                Length.ofMm(worstMm).formatFine(units)),
                "draw one turned piece alone, or half of it closed along its axis by a straight line");
    }

    /** What to know of one that is not quite symmetrical. */
    Optional<String> note(UnitSystem units) {
        if (worstMm <= UNEVEN_MM) {
            return Optional.empty();
        }
        return Optional.of(
                "The outline is not quite symmetrical: at %s its middle lies %s off the axis; the mean of both sides was taken."
                        .formatted(
                                Length.ofMm(atMm).formatBoth(units),
                                Length.ofMm(worstMm).formatFineBoth(units)));
    }
}
