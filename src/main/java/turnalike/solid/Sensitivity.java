package turnalike.solid;

import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * How a part's mass follows its diameter: adding δ to the diameter all along adds {@code linear}·δ + {@code quadratic}·δ² exactly
 * (for a square section, adding δ to the side).
 *
 * @param linearGPerMm ρ∫π r dx for round, ρ∫4 r dx for square; grams per millimetre of diameter
 * @param quadraticGPerMm2 ρπL/4 for round, ρL for square
 */
public record Sensitivity(double linearGPerMm, double quadraticGPerMm2) {
    /**
     * From A(r + δ/2) = f·(r + δ/2)² = f·(r² + rδ + δ²/4), f the section's area factor.
     *
     * @param part the outline of the part
     * @param density the wood's
     * @return how the part's mass follows its diameter; exact in closed form
     */
    public static Sensitivity of(Outline part, Density density) {
        double linear = 0;
        double quadratic = 0;
        for (Segment segment : part.segments()) {
            double factor = segment.section().areaFactor() * density.gramsPerMm3();
            linear += factor * segment.curve().integral(0, 1);
            quadratic += factor * segment.curve().length().mm() / 4;
        }
        return new Sensitivity(linear, quadratic);
    }

    /**
     * {@return the mass gained when the diameter grows by {@code more}; negative when it shrinks} Exact while the part keeps some wood.
     *
     * @param more added to the diameter all along
     */
    public Mass change(Length more) {
        return Mass.ofGrams(linearGPerMm * more.mm() + quadraticGPerMm2 * more.mm() * more.mm());
    }
}
