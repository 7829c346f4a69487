package turnalike.stock.boards;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import turnalike.units.Length;

/**
 * A board in hand, or several that are alike; the grain runs along its length.
 *
 * @param name the turner's own
 * @param thickness above zero
 * @param width above zero
 * @param length above zero
 * @param count how many there are, at least one
 * @param price of one, zero or more, if it is known
 * @param species its wood, as the table of woods names it, if it is known
 * @param faults stretches of the whole width that no blank may touch
 */
public record Board(
        String name,
        Length thickness,
        Length width,
        Length length,
        int count,
        Optional<BigDecimal> price,
        Optional<String> species,
        List<Fault> faults) {
    public Board {
        if (!thickness.isPositive() || !width.isPositive() || !length.isPositive() || count < 1) {
            throw new IllegalArgumentException(
                    "a board has sizes and a count above zero, was %s x %s x %s mm, %s of them"
                            .formatted(thickness.mm(), width.mm(), length.mm(), count));
        }
        faults = faults.stream().sorted(Comparator.comparing(Fault::from)).toList();
    }

    /**
     * A stretch along the board with a knot, a split or sapwood in it.
     *
     * @param from the nearer end, from the untrimmed end of the board
     * @param to the farther end, beyond it or at it
     */
    public record Fault(Length from, Length to) {
        public Fault {
            if (to.compareTo(from) < 0) {
                throw new IllegalArgumentException(
                        "a fault ends beyond where it begins, was %s to %s mm".formatted(from.mm(), to.mm()));
            }
        }
    }

    /**
     * A stretch without fault.
     *
     * @param from the nearer end, from the untrimmed end of the board
     * @param length above zero
     */
    public record Clear(Length from, Length length) {}

    /**
     * {@return what lies between the trimmed ends and the faults, in order} A fault counts as a saw cut wide where it is narrower, from where it
     * begins, since the wood to both sides is parted there.
     *
     * @param sawing what is trimmed off the ends, and the kerf
     */
    public List<Clear> clear(Sawing sawing) {
        List<Clear> out = new ArrayList<>();
        double from = sawing.end().mm();
        double end = length.mm() - sawing.end().mm();
        for (Fault fault : faults) {
            add(out, from, Math.min(end, fault.from().mm()));
            from = Math.max(
                    from,
                    Math.max(fault.to().mm(), fault.from().mm() + sawing.kerf().mm()));
        }
        add(out, from, end);
        return out;
    }

    private static void add(List<Clear> out, double from, double to) {
        if (to > from) {
            out.add(new Clear(Length.ofMm(from), Length.ofMm(to - from)));
        }
    }

    /** {@return the longest stretch without fault; zero for a board that has none} */
    Length longestClear(Sawing sawing) {
        return clear(sawing).stream().map(Clear::length).max(Length::compareTo).orElse(Length.ZERO);
    }

    /**
     * {@return the name of one of those that are alike: the name itself, then {@code NAME#2}, {@code NAME#3}, …}
     *
     * @param copy which, from 0
     */
    public String label(int copy) {
        return copy == 0 ? name : name + "#" + (copy + 1);
    }
}
