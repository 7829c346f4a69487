package turnalike.stock;

import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A piece of wood, straight and of one section.
 *
 * @param section square or round
 * @param size side or diameter, above zero
 * @param length along the grain, above zero
 */
public record Blank(Section section, Length size, Length length) {
    public Blank {
        if (!size.isPositive() || !length.isPositive()) {
            throw new IllegalArgumentException("a blank's size and length must be above zero, were %s mm and %s mm"
                    .formatted(size.mm(), length.mm()));
        }
    }

    /** {@return the wood in it} Exact. */
    public Timber timber() {
        double radiusMm = size.mm() / 2;
        return new Timber(section.areaFactor() * radiusMm * radiusMm * length.mm());
    }

    /**
     * {@code 1 3/4 in square, 20 in long}.
     *
     * @param units the units to print in
     * @return section, size and length in words, lengths in those units
     */
    public String text(UnitSystem units) {
        return "%s %s, %s long"
                .formatted(size.format(units), section == Section.ROUND ? "round" : "square", length.format(units));
    }
}
