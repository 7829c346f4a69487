package turnalike.solid;

import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * The figures of a turned solid of one density.
 *
 * @param volumeMm3 cubic millimetres
 * @param density the wood's
 * @param mass volume times density
 * @param balance balance point, from where the outline's places are measured
 * @param spinInertiaGMm2 about the long axis, g·mm²
 * @param swingInertiaGMm2 about an axis across the piece through the balance point, g·mm²
 */
public record Solid(
        double volumeMm3, Density density, Mass mass, Length balance, double spinInertiaGMm2, double swingInertiaGMm2) {

    /**
     * Works the figures out in closed form: V = ∫A dx, balance = ∫xA dx / V, spin = ρ∫2I dx, swing = ρ∫(I + A(x − x̄)²) dx, with A and I
     * the section's area and second moment. Relative error about 10⁻¹³.
     *
     * @param outline the solid's shape
     * @param density the same all through
     * @return the figures
     */
    public static Solid of(Outline outline, Density density) {
        double origin =
                (outline.start().mm() + outline.end().mm()) / 2; // near the balance point, so that little cancels
        double volume = 0;
        double firstMoment = 0;
        for (Segment segment : outline.segments()) {
            double factor = segment.section().areaFactor();
            volume += factor * segment.integralAbout(origin, 0, 2);
            firstMoment += factor * segment.integralAbout(origin, 1, 2);
        }
        double balance = origin + firstMoment / volume;
        double across = 0;
        double apart = 0;
        for (Segment segment : outline.segments()) {
            Section section = segment.section();
            across += section.secondMomentFactor() * segment.integralAbout(balance, 0, 4);
            apart += section.areaFactor() * segment.integralAbout(balance, 2, 2);
        }
        double rho = density.gramsPerMm3();
        return new Solid(
                volume,
                density,
                Mass.ofGrams(rho * volume),
                Length.ofMm(balance),
                rho * 2 * across,
                rho * (across + apart));
    }

    /** {@return how these figures were found} */
    public Working working() {
        return new Working(
                "volume, mass, balance point and inertias",
                "V = ∫A dx; mass = ρV; balance = ∫xA dx / V; spin = ρ∫(π/2)r⁴ dx; swing = ρ∫(πr⁴/4 + πr²(x − x̄)²) dx; a square section"
                        + " counts s², s⁴/6 and s⁴/12 + s²(x − x̄)²; each integral in closed form",
                Working.DERIVED,
                "exact for the drawn shape to about 12 digits; the wood's density is what is unsure");
    }
}
