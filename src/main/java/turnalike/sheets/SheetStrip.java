package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * One strip of a long drawing that is cut to fit the paper. Neighbours both show their joint and a stretch beyond it.
 *
 * @param number from 1
 * @param from where its window starts in the drawing
 * @param to where it ends
 * @param joints the joints it shows, one at each end that has a neighbour, in the drawing
 */
record SheetStrip(int number, Length from, Length to, List<Joint> joints) {
    /** How far a strip goes on beyond its joint. */
    static final double OVERLAP_MM = 12;

    /** A joint nearer to a mark than this is moved, if there is a better place within so many steps back. */
    private static final double CLEAR_MM = 6;

    private static final int LOOK_BACK = 9;

    SheetStrip {
        joints = List.copyOf(joints);
    }

    /** Where two strips are laid together, in the drawing. */
    record Joint(int number, Length at) {}

    /**
     * The strips of a drawing, from its left to its right.
     *
     * @param width of the drawing
     * @param room how wide a strip may be
     * @param datum where the datum end lies in the drawing
     * @param places from the datum end, which joints keep clear of
     * @param units in which joints lie at round places
     */
    static List<SheetStrip> cut(Length width, Length room, Length datum, List<Length> places, UnitSystem units) {
        List<Joint> joints = new ArrayList<>();
        double from = 0;
        while (width.mm() - from > room.mm()) {
            double farthest = from + room.mm() - OVERLAP_MM - datum.mm();
            double least = from + 2 * OVERLAP_MM - datum.mm();
            Length at = datum.plus(Length.ofMm(nextJointMm(least, farthest, places, units)));
            joints.add(new Joint(joints.size() + 1, at));
            from = at.mm() - OVERLAP_MM;
        }
        List<SheetStrip> out = new ArrayList<>();
        for (int i = 0; i <= joints.size(); i++) {
            List<Joint> shown = joints.subList(Math.max(0, i - 1), Math.min(joints.size(), i + 1));
            Length start = i == 0 ? Length.ZERO : joints.get(i - 1).at().minus(Length.ofMm(OVERLAP_MM));
            Length end = i == joints.size() ? width : joints.get(i).at().plus(Length.ofMm(OVERLAP_MM));
            out.add(new SheetStrip(i + 1, start, end, shown));
        }
        return out;
    }

    /**
     * The next joint's place from the datum end: a whole centimetre or half inch, as far along as the paper lets it be, and drawn back a
     * little when a mark or a diameter would lie so near that its line and the joint's are taken for one another.
     */
    private static double nextJointMm(double leastMm, double farthestMm, List<Length> places, UnitSystem units) {
        double step = units == UnitSystem.INCH ? Length.MM_PER_INCH / 2 : 10;
        double best = Math.floor(farthestMm / step + 1e-9) * step;
        double bestClear = -1;
        for (int back = 0; back < LOOK_BACK; back++) {
            double place = (Math.floor(farthestMm / step + 1e-9) - back) * step;
            double clear = Math.min(CLEAR_MM, clearMm(place, places));
            if (place > leastMm + step && clear > bestClear) {
                best = place;
                bestClear = clear;
            }
        }
        return best;
    }

    private static double clearMm(double placeMm, List<Length> places) {
        return places.stream()
                .mapToDouble(place -> Math.abs(place.mm() - placeMm))
                .min()
                .orElse(CLEAR_MM);
    }

    /** Its joint with the strip before, or where the piece begins. */
    Length start(Length datum) {
        return number == 1 ? datum : joints.get(0).at();
    }

    /** Its joint with the strip after, or where the piece ends. */
    Length end(Length farEnd) {
        return joints.stream().filter(this::isLast).findFirst().map(Joint::at).orElse(farEnd);
    }

    /** Whether that joint is with the strip after. */
    boolean isLast(Joint joint) {
        return joint.number() == number;
    }
}
