package turnalike.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.Working;

/**
 * How a size across the grain changes with moisture.
 *
 * <p>Between 6 % and 14 % by the coefficient, {@code D C (M_F - M_I)}; outside by the whole shrinkage S,
 * {@code D (M_F - M_I) / (3000/S - 30 + M_I)}. Nothing moves above 30 %. A fact that is not printed is derived from the other one and
 * said to be. Sources: {@link Equation#CHANGE_BY_COEFFICIENT}, {@link Equation#CHANGE_BY_SHRINKAGE}. Accuracy: the two differ by
 * about 1 % of the change within 6 to 14 %, more for the woods whose coefficient is a group's; no measured spread is known to us.
 */
public final class DimensionalChange {
    private final Species species;
    private final Grain grain;
    private final Length start;
    private final MoistureChange moisture;
    private final Coefficient coefficient;

    private DimensionalChange(
            Species species, Grain grain, Length start, MoistureChange moisture, Coefficient coefficient) {
        this.species = species;
        this.grain = grain;
        this.start = start;
        this.moisture = moisture;
        this.coefficient = coefficient;
    }

    /**
     * {@return the change of a size above zero; refused for a wood of which neither shrinkage nor coefficient is printed}
     *
     * @param species the wood
     * @param grain the direction in which the size lies
     * @param start the size before the change, above zero, else {@link IllegalArgumentException}
     * @param moisture from which moisture to which
     */
    public static Parsed<DimensionalChange> of(Species species, Grain grain, Length start, MoistureChange moisture) {
        if (!start.isPositive()) {
            throw new IllegalArgumentException("size must be above zero, was %s mm".formatted(start.mm()));
        }
        Optional<Coefficient> coefficient = species.coefficient(grain);
        return coefficient.isPresent()
                ? Parsed.of(new DimensionalChange(species, grain, start, moisture, coefficient.get()))
                : Parsed.refused(
                        "no %s shrinkage of %s is printed in our sources".formatted(grain.text(), species.name()),
                        "choose a wood that has one");
    }

    /** {@return what the size gains, negative when it shrinks} */
    public Length change() {
        return byCoefficient() ? start.times(ofCoefficient()) : start.times(ofShrinkage());
    }

    /** {@return the size afterwards} */
    public Length finish() {
        return start.plus(change());
    }

    /** {@return how the change was found: formula, figures put in, source, and how sure it is} */
    public Working working() {
        MoistureChange counted = counted();
        String formula = byCoefficient()
                ? String.format(
                        Locale.ROOT,
                        "D C (M_F - M_I) with C = %.5f %s",
                        coefficient.perPoint(),
                        coefficient.derived()
                                ? "derived from the printed shrinkage as S / (3000 - 20 S)"
                                : "as printed")
                : String.format(
                        Locale.ROOT,
                        "D (M_F - M_I) / (3000/S - 30 + M_I) with S = %.2f %% %s",
                        shrinkagePct(),
                        printedShrinkage().isPresent()
                                ? "as printed"
                                : "derived from the printed coefficient, for want of a printed shrinkage");
        String how = String.format(
                Locale.ROOT,
                "%s, %s, %.2f mm going from %s to %s: %s, M_I = %s, M_F = %s: %+.3f mm (%+.4f in)",
                species.name(),
                grain.text(),
                start.mm(),
                moisture.from().text(),
                moisture.to().text(),
                formula,
                counted.from().text(),
                counted.to().text(),
                change().mm(),
                change().inches());
        Equation equation = byCoefficient() ? Equation.CHANGE_BY_COEFFICIENT : Equation.CHANGE_BY_SHRINKAGE;
        String source = "%s; %s: facts %s"
                .formatted(
                        equation.cite(),
                        species.name(),
                        species.provenance().cite(FactGroup.SHRINKAGE, FactGroup.COEFFICIENTS));
        return new Working("Change of size", how, source, sureness());
    }

    private String sureness() {
        List<String> parts = new ArrayList<>();
        if (byCoefficient() && !coefficient.derived() && printedShrinkage().isPresent()) {
            parts.add(String.format(
                    Locale.ROOT,
                    "By the printed shrinkage (equation 13-3) it would be %+.3f mm",
                    start.times(ofShrinkage()).mm()));
        }
        parts.add("For a size straight along that direction of the grain; sawn wood seldom is");
        species.provenance().note().ifPresent(note -> parts.add("About this wood's row: " + note));
        return String.join(". ", parts);
    }

    /** The limits the Handbook gives for the coefficients. */
    private boolean byCoefficient() {
        return moisture.within(6, 14);
    }

    private MoistureChange counted() {
        return new MoistureChange(
                moisture.from().asItCountsForSize(), moisture.to().asItCountsForSize());
    }

    private double ofCoefficient() {
        return coefficient.perPoint() * (moisture.to().pct() - moisture.from().pct());
    }

    private double ofShrinkage() {
        double from = counted().from().pct();
        double to = counted().to().pct();
        return (to - from) / (3000 / shrinkagePct() - 30 + from);
    }

    private OptionalDouble printedShrinkage() {
        return species.shrinkage().pct(grain);
    }

    private double shrinkagePct() {
        return printedShrinkage().orElseGet(coefficient::toShrinkagePct);
    }
}
