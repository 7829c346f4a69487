package turnalike.settings;

import java.util.List;

/**
 * The marks that stand before any step, besides the two ends. All three kinds are struck from the marking stick; steps may start from
 * them.
 *
 * @param shoulders where a square begins or ends: struck with square and knife before the blank is mounted
 * @param wished what the turner would have from the stick
 * @param outOfReach what no chain of the allowed openings reaches; the other such marks are reached from these, and they are as few as will do
 * @param leastOutOfReach no sound plan takes fewer of those, as far as proven
 */
public record GivenMarks(List<Integer> shoulders, List<Integer> wished, List<Integer> outOfReach, int leastOutOfReach) {
    /** Nothing but the ends. */
    public static final GivenMarks NONE = new GivenMarks(List.of(), List.of(), List.of(), 0);

    public GivenMarks {
        shoulders = List.copyOf(shoulders);
        wished = List.copyOf(wished);
        outOfReach = List.copyOf(outOfReach);
    }

    /** {@return whether no sound plan takes fewer marks from the stick for want of an opening} */
    public boolean fewestProven() {
        return outOfReach.size() == leastOutOfReach;
    }
}
