package turnalike.frame;

import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * A hub or a rim: a ring of even thickness with round holes bored into it toward the axle, all alike.
 *
 * <p>m = ρ (π (R² − r²) t − n·A·d) and I = ½ ρ π (R⁴ − r⁴) t less each hole's ρ A d ((d²/12 + D²/16) + c²), c its middle from the axle and A its
 * section: elementary, derived here. A hole counts as bored into flat faces.
 *
 * @param mass what is left when it is bored
 * @param inertiaGMm2 about the axle, in g·mm²
 */
public record RingBody(Mass mass, double inertiaGMm2) {
    /**
     * Holes bored toward the axle.
     *
     * @param count how many
     * @param diameter of each
     * @param depth of each
     * @param middle of each, from the axle
     */
    public record Holes(int count, Length diameter, Length depth, Length middle) {}

    /** {@return whether its holes leave anything of it} Holes that run into one another, or past its inside, are counted twice. */
    public boolean isLeft() {
        return mass.grams() > 0 && inertiaGMm2 > 0;
    }

    /**
     * {@return the ring}
     *
     * @param inner from the axle to its inside; zero for a full disc
     * @param outer to its outside
     * @param thickness along the axle
     * @param density of its wood
     * @param holes in it
     */
    public static RingBody of(Length inner, Length outer, Length thickness, Density density, Holes holes) {
        double gramsPerMm3 = density.kgPerM3() * 1e-6;
        double r2 = inner.mm() * inner.mm();
        double rOut2 = outer.mm() * outer.mm();
        double ring = Math.PI * (rOut2 - r2) * thickness.mm();
        double section = Math.PI / 4 * holes.diameter().mm() * holes.diameter().mm();
        double hole = section * holes.depth().mm();
        double own = holes.depth().mm() * holes.depth().mm() / 12
                + holes.diameter().mm() * holes.diameter().mm() / 16;
        double away = holes.middle().mm() * holes.middle().mm();
        double mass = gramsPerMm3 * (ring - holes.count() * hole);
        double inertia = gramsPerMm3 * (ring * (rOut2 + r2) / 2 - holes.count() * hole * (own + away));
        return new RingBody(Mass.ofGrams(mass), inertia);
    }
}
