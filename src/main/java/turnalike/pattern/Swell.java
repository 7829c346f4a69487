package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.LengthMessage;

/**
 * A long, gentle belly or waist: the quadratic through three diameters.
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param middle diameter halfway, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Swell(Length length, Length from, Length middle, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("swell", Swell.class)
            .words("A long gentle belly: a diameter at each end and one in the middle.")
            .shape("the quadratic through the three")
            .length()
            .size("from", "Diameter, head end", Swell::from, Room::before)
            .size("middle", "Diameter, middle", Swell::middle, Swell::belly)
            .size("to", "Diameter, tail end", Swell::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("middle"), sizes.size("to")),
                    sizes -> new Swell(
                            sizes.length(),
                            sizes.size("from"),
                            sizes.size("middle"),
                            sizes.size("to"),
                            sizes.details()),
                    () -> new Swell(Length.ofMm(34), Length.ofMm(30), Length.ofMm(33), Length.ofMm(30), Details.NONE));

    public Swell {
        Faults.refuse(KIND.word(), faults(length, from, middle, to));
    }

    /** Halfway where a belly would dip to the axis between ends so unlike, or rise out of the blank between ends so thick. */
    private static Length belly(Room room) {
        Length belly = room.swollen();
        boolean dips =
                !Polynomial.leastOfQuadratic(room.before(), belly, room.after()).isPositive();
        return dips || rises(room, belly) ? room.before().plus(room.after()).times(0.5) : belly;
    }

    private static boolean rises(Room room, Length belly) {
        Polynomial across = Polynomial.quadraticThrough(room.length(), room.before(), belly, room.after());
        Outline outline = Outline.of(Length.ZERO, List.of(across), Section.ROUND);
        return outline.largestRadius().compareTo(room.stock()) > 0;
    }

    /**
     * {@return why no swell can have these sizes, in the order of its keys; empty when one can} Each must be above zero, and so must the
     * curve through the three all along: between ends very unlike it may dip below the axis.
     *
     * @param length along the axis
     * @param from diameter at the start
     * @param middle diameter halfway
     * @param to diameter at the end
     */
    public static List<Fault> faults(Length length, Length from, Length middle, Length to) {
        Faults faults = Faults.in(length)
                .positive("from", from)
                .positive("middle", middle)
                .positive("to", to);
        if (!faults.isEmpty()) {
            return faults.list();
        }
        Length least = Polynomial.leastOfQuadratic(from, middle, to);
        return faults.when(
                        !least.isPositive(),
                        "middle",
                        LengthMessage.of("makes the curve dip to %s between its ends", least),
                        "choose a middle nearer the smaller end, or use two tapers")
                .list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Polynomial.quadraticThrough(length, from.times(0.5), middle.times(0.5), to.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(
                new Diameter("from", Length.ZERO, from),
                new Diameter("middle", length.times(0.5), middle),
                new Diameter("to", length, to));
    }

    @Override
    public Swell mirrored() {
        return new Swell(length, to, middle, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("plane from the middle down to each end");
    }
}
