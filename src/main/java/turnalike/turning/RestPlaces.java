package turnalike.turning;

import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * Where a steady rest or a hand can run: on what is round and nearly level over the width of a rest's wheels, as a cylinder, a swell or a slow taper
 * is. Common practice, no source.
 */
final class RestPlaces {
    private static final Length HALF_WIDTH = Length.ofMm(10);

    /** The thickest there over the thinnest. */
    private static final double LEVEL = 1.1;

    private RestPlaces() {}

    /** Of the piece as it stands. */
    static boolean carries(Outline outline, Length place) {
        Length from = place.minus(HALF_WIDTH);
        Length to = place.plus(HALF_WIDTH);
        if (from.compareTo(outline.start()) < 0 || to.compareTo(outline.end()) > 0) {
            return false;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i <= 4; i++) {
            Length at = from.plus(HALF_WIDTH.times(i / 2.0));
            if (outline.sectionAt(at) != Section.ROUND) {
                return false;
            }
            double radius = outline.radiusAt(at).mm();
            least = Math.min(least, radius);
            most = Math.max(most, radius);
        }
        return most <= LEVEL * least;
    }
}
