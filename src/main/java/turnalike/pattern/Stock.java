package turnalike.pattern;

import java.util.List;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * The blank a piece is turned from, milled and cut.
 *
 * @param section square, or round as dowel or already roughed
 * @param size across the flats, or the diameter; above zero
 * @param length above zero
 */
public record Stock(Section section, Length size, Length length) {
    public Stock {
        Faults.refuse("stock", faults(size, length));
    }

    /**
     * {@return why no blank can have these sizes; empty when one can} Each must be above zero.
     *
     * @param size across the flats, or the diameter
     * @param length along the axis
     */
    public static List<Fault> faults(Length size, Length length) {
        return new Faults().positive("size", size).positive("length", length).list();
    }

    /** Whether a section of that half size fits in this blank when both are centred; a hair of rounding is let pass. */
    boolean holds(Section inner, Length radius) {
        double half = size.mm() / 2;
        double reach = section == Section.ROUND ? radius.mm() * inner.reachFactor() : radius.mm();
        return reach <= half * (1 + 1e-12);
    }
}
