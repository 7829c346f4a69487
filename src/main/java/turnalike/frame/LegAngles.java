package turnalike.frame;

import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * At what angle a leg stands under a seat. Seen from the side it leans to the front or back by the rake, seen from the front to the side by the
 * splay, both from the vertical. For each unit that it goes down its foot moves tan(rake) to the front or back and tan(splay) to the side, so
 * its lean from the vertical and its sight line, in which it leans, follow. Derived here; trades with compound angles use the same.
 *
 * @param rake to the front or back, 0° or more and below 90°
 * @param splay to the side, likewise
 */
public record LegAngles(Angle rake, Angle splay) {
    public LegAngles {
        check("rake", rake);
        check("splay", splay);
    }

    private static void check(String name, Angle angle) {
        if (angle.degrees() < 0 || angle.degrees() >= 90) {
            throw new IllegalArgumentException(
                    "%s must be 0 to below 90 degrees, was %s".formatted(name, angle.degrees()));
        }
    }

    /**
     * {@return the angles of a leg whose foot stands away from where it enters the seat}
     *
     * @param frontOrBack how far to the front or back, not below zero
     * @param sideways how far to the side, not below zero
     * @param height of the seat's underside over the floor, above zero
     */
    public static LegAngles ofFootMoves(Length frontOrBack, Length sideways, Length height) {
        return new LegAngles(
                Angle.ofRadians(Math.atan2(frontOrBack.mm(), height.mm())),
                Angle.ofRadians(Math.atan2(sideways.mm(), height.mm())));
    }

    private double moves() {
        return Math.hypot(Math.tan(rake.radians()), Math.tan(splay.radians()));
    }

    /** {@return how far it leans from the vertical, seen square to its sight line; the foot's bevel is the same} */
    public Angle lean() {
        return Angle.ofRadians(Math.atan(moves()));
    }

    /** {@return in the seat's plan, the sight line's angle to the front-back line, 0° to 90°; 0° of a leg that stands upright} */
    public Angle sight() {
        return Angle.ofRadians(Math.atan2(Math.tan(splay.radians()), Math.tan(rake.radians())));
    }

    /**
     * {@return how long the leg is between two levels, along its axis}
     *
     * @param height from one to the other, upright
     */
    public Length along(Length height) {
        return height.times(1 / Math.cos(lean().radians()));
    }

    /**
     * {@return how far the foot stands to the front or back of where the leg enters}
     *
     * @param height between the two
     */
    public Length frontOrBack(Length height) {
        return height.times(Math.tan(rake.radians()));
    }

    /**
     * {@return how far the foot stands to the side}
     *
     * @param height between the two
     */
    public Length sideways(Length height) {
        return height.times(Math.tan(splay.radians()));
    }

    /** {@return the angle between the leg's axis and a level line square to the front-back line, at most 90°: a stretcher's hole} */
    public Angle toSideways() {
        return Angle.ofRadians(Math.acos(Math.tan(splay.radians()) * Math.cos(lean().radians())));
    }

    /** {@return the angle between the leg's axis and a level line from front to back, at most 90°} */
    public Angle toFrontBack() {
        return Angle.ofRadians(Math.acos(Math.tan(rake.radians()) * Math.cos(lean().radians())));
    }
}
