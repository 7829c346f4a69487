package turnalike.frame;

import java.util.List;
import turnalike.units.Length;

/**
 * The least distance between any two of a wheel's spokes, or of the holes they enter.
 *
 * <p>Without a stagger two neighbours are mirror images in the plane half-way between them, and of all pairs theirs is the least: twice the
 * least of s·sin(θ/2) − r·cos(θ/2), which at each curve is taken at its ends or where dr/dx = tan(θ/2). Exact but for rounding; below zero
 * where they run into one another. With a stagger the neighbours' true distance in space is found by {@link SkewGap}, within a
 * hundredth of a millimetre, and the next but one stand in one plane again. Derived here.
 *
 * @param gap the least; with a stagger 0 where the neighbours run into one another
 * @param at where on the spoke, from its outline's start
 * @param apart how many places further the other one stands: 1, or with a stagger perhaps 2
 */
public record SpokeGap(Length gap, Length at, int apart) {
    /**
     * {@return the least distance}
     *
     * @param body one of them; all are alike
     * @param places how many stand round the axle, 2 or more
     * @param stagger how far every second one is set off along the axle; zero for none
     */
    public static SpokeGap of(RadialBody body, int places, Length stagger) {
        double pitch = 2 * Math.PI / places;
        if (!stagger.isPositive()) {
            return inPlane(body, pitch, 1);
        }
        SpokeGap skew = SkewGap.of(body, pitch, stagger);
        if (places < 4) {
            return skew;
        }
        SpokeGap level = inPlane(body, 2 * pitch, 2);
        return level.gap.compareTo(skew.gap) < 0 ? level : skew;
    }

    /**
     * {@return whether the least distance is so much, without finding it; with a stagger a hundredth of a millimetre less may pass}
     *
     * @param body one of them
     * @param places how many, 2 or more
     * @param stagger of every second one
     * @param least the distance asked for
     */
    public static boolean isAtLeast(RadialBody body, int places, Length stagger, Length least) {
        double pitch = 2 * Math.PI / places;
        if (!stagger.isPositive()) {
            return inPlane(body, pitch, 1).gap.compareTo(least) >= 0;
        }
        return (places < 4 || inPlane(body, 2 * pitch, 2).gap.compareTo(least) >= 0)
                && SkewGap.isAtLeast(body, pitch, stagger, least.mm());
    }

    private static SpokeGap inPlane(RadialBody body, double angle, int apart) {
        double sin = Math.sin(angle / 2);
        double cos = Math.cos(angle / 2);
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        for (RadialBody.Stretch stretch : body.stretches()) {
            double start =
                    stretch.segment().start().minus(body.outline().start()).mm();
            for (double x : nearPlaces(stretch, sin, cos)) {
                double distance = (stretch.sMm() + x) * sin - stretch.radiusMm(x) * cos;
                if (distance < least) {
                    least = distance;
                    at = start + x;
                }
            }
        }
        return new SpokeGap(Length.ofMm(2 * least), Length.ofMm(at), apart);
    }

    private static double[] nearPlaces(RadialBody.Stretch stretch, double sin, double cos) {
        double length = stretch.lengthMm();
        if (cos * 1e9 < sin) { // opposite one another: the nearer end is nearest
            return new double[] {0, length};
        }
        double slope = sin / (cos * stretch.widened());
        List<Double> inside = stretch.segment().curve().placesOfSlopeMm(slope);
        double[] out = new double[inside.size() + 2];
        out[1] = length;
        for (int i = 0; i < inside.size(); i++) {
            out[i + 2] = inside.get(i);
        }
        return out;
    }
}
