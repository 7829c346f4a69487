package turnalike.frame;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Length;

/**
 * What stands out from an axle as a spoke does: a piece, or the hole it enters. A square section counts with half its diagonal, as nobody knows
 * how it is turned.
 *
 * @param outline its shape, running outward
 * @param from distance of its start from the axle; below zero beyond the axle
 */
public record RadialBody(Outline outline, Length from) {
    /**
     * {@return a round hole, or a body of one thickness}
     *
     * @param diameter of it
     * @param from where it begins, from the axle
     * @param length outward, above zero
     */
    public static RadialBody level(Length diameter, Length from, Length length) {
        return new RadialBody(
                Outline.of(
                        Length.ZERO, List.of(turnalike.outline.Line.level(length, diameter.times(0.5))), Section.ROUND),
                from);
    }

    /**
     * {@return the same so much further out}
     *
     * @param by how far; below zero further in
     */
    public RadialBody moved(Length by) {
        return new RadialBody(outline, from.plus(by));
    }

    /** A stretch of one curve: {@code sMm} from the axle at its start, its radii times {@code widened}. */
    record Stretch(Segment segment, double sMm, double widened) {
        double lengthMm() {
            return segment.curve().length().mm();
        }

        double radiusMm(double xMm) {
            return widened * segment.curve().radiusMm(xMm);
        }

        /** The greatest radius between two places. */
        double mostMm(double fromMm, double toMm) {
            double most = Math.max(radiusMm(fromMm), radiusMm(toMm));
            for (double x : segment.curve().levelPlacesMm()) {
                if (fromMm < x && x < toMm) {
                    most = Math.max(most, radiusMm(x));
                }
            }
            return most;
        }
    }

    List<Stretch> stretches() {
        List<Stretch> out = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            double s = from.plus(segment.start().minus(outline.start())).mm();
            out.add(new Stretch(segment, s, segment.section().reachFactor()));
        }
        return out;
    }
}
