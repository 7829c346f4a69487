package turnalike.frame;

import java.util.Locale;
import java.util.Optional;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

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
                "           %d segments, ends cut %.4g degrees off square%s%s; the first joint %.4g degrees past place 1",
                segments,
                mitre.degrees(),
                chord.map(each -> ", %s long outside".formatted(each.formatFineBoth(units)))
                        .orElse(""),
                boardWidth
                        .map(each -> ", from a board %s wide or wider".formatted(each.formatFineBoth(units)))
                        .orElse(""),
                jointAt.degrees());
    }
}
