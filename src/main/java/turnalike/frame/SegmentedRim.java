package turnalike.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * A rim of equal segments, each cut from a board with its grain along the segment's chord. Elementary trigonometry, derived here.
 *
 * @param segments how many
 * @param mitre at which each end is cut, off square: 180°/segments
 * @param chord the outside's, from one joint to the next, if the outside is known: 2·R·sin(180°/segments)
 * @param boardWidth what a board needs, from the outside's highest to the inside's lowest: R_out − R_in·cos(180°/segments)
 * @param jointAt where the first joint stands from place 1, so that the joints keep as far from the mortises as they can
 * @param jointClear what is left at the inside from a joint to the nearest mortise's edge; below zero where the joint falls on it
 */
public record SegmentedRim(
        int segments,
        Angle mitre,
        Optional<Length> chord,
        Optional<Length> boardWidth,
        Angle jointAt,
        Length jointClear) {
    /**
     * {@return the rim}
     *
     * <p>Joints and places together repeat every 360°/lcm: turned against one another, the joint nearest to a place can stand half of that
     * away at most.
     *
     * @param segments how many, 3 or more
     * @param places how many mortises
     * @param inner from the axle to the inside
     * @param outer to the outside, if known
     * @param hole the mortises' diameter; zero for none
     */
    public static SegmentedRim of(int segments, int places, Length inner, Optional<Length> outer, Length hole) {
        double half = Math.PI / segments;
        double away = Math.PI * gcd(segments, places) / ((double) segments * places);
        double clear = inner.mm() * Math.sin(away) - hole.mm() / 2;
        return new SegmentedRim(
                segments,
                Angle.ofDegrees(180.0 / segments),
                outer.map(radius -> radius.times(2 * Math.sin(half))),
                outer.map(radius -> radius.minus(inner.times(Math.cos(half)))),
                Angle.ofDegrees(Math.toDegrees(away)),
                Length.ofMm(clear));
    }

    /**
     * {@return what the rim pulls by itself where its segments differ: each one's mass times how far its balance point lies from the axle, toward
     * its middle} A piece of a ring of half angle h, as dense all through, has its balance point ⅔·(R³ − r³)/(R² − r²)·sin h / h from the axle;
     * derived here. Mortises stand evenly all round and pull nothing together, so the masses are those before boring.
     *
     * @param masses of the segments, the first from the first joint, the others anticlockwise; as many as there are segments, else
     *     {@link IllegalArgumentException}
     * @param inner from the axle to the inside
     * @param outer to the outside
     */
    public Moment pull(List<Mass> masses, Length inner, Length outer) {
        if (masses.size() != segments) {
            throw new IllegalArgumentException("%d masses for %d segments".formatted(masses.size(), segments));
        }
        double awayMm = awayMm(inner, outer);
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < segments; i++) {
            moments.add(new Moment(masses.get(i).grams() * awayMm, middle(i)));
        }
        return Moment.sum(moments);
    }

    /**
     * {@return how that pull scatters where each segment's mass is known no better than so, whatever the others are: its deviation times the same
     * distance, toward its middle}
     *
     * @param deviationG standard deviation of one segment's mass, in g; not negative
     * @param inner from the axle to the inside
     * @param outer to the outside
     */
    public Spread scatter(double deviationG, Length inner, Length outer) {
        Spread out = Spread.NONE;
        for (int i = 0; i < segments; i++) {
            double at = middle(i).radians();
            out = out.plus(Spread.along(Math.cos(at), Math.sin(at), deviationG * awayMm(inner, outer)));
        }
        return out;
    }

    private Angle middle(int segment) {
        return Angle.ofRadians(jointAt.radians() + (2 * segment + 1) * Math.PI / segments);
    }

    /** From the axle to a segment's balance point. */
    private double awayMm(Length inner, Length outer) {
        double half = Math.PI / segments;
        double r = inner.mm();
        double rOut = outer.mm();
        return 2.0 / 3 * (rOut * rOut + rOut * r + r * r) / (rOut + r) * Math.sin(half) / half;
    }

    /** {@return how {@link #pull} is found} */
    public static Working pullWorking() {
        return new Working(
                "the rim's segments",
                "each one's mass times how far its balance point lies from the axle, 2/3 (R^3 - r^3)/(R^2 - r^2) sin(h)/h, h half its angle,"
                        + " toward its middle",
                Working.DERIVED,
                "exact for segments each as dense all through, weighed before boring; the mortises stand evenly and pull nothing together");
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /**
     * {@return it in words}
     *
     * @param units in which lengths are told, the other beside
     */
    public String text(UnitSystem units) {
        return String.format(
                Locale.ROOT,
                "           %d segments, ends cut %s off square%s%s; the first joint %s past place 1",
                segments,
                mitre.format(),
                chord.map(each -> ", %s long outside".formatted(each.formatBoth(units)))
                        .orElse(""),
                boardWidth
                        .map(each -> ", from a board %s wide or wider"
                                .formatted(ruled(each, units).formatBoth(units)))
                        .orElse(""),
                jointAt.format());
    }

    /** Up to the next sixteenth of an inch or millimetre: a board is taken by the rule. */
    private static Length ruled(Length width, UnitSystem units) {
        Length step = units == UnitSystem.INCH ? Length.ofInches(1 / 16.0) : Length.ofMm(1);
        return step.times(Math.ceil(width.mm() / step.mm() * (1 - 1e-12)));
    }
}
