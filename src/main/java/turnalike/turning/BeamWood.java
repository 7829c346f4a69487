package turnalike.turning;

import turnalike.units.Density;
import turnalike.wood.Stiffness;

/**
 * What the wood brings to a beam.
 *
 * @param moeMpa shear-free modulus of elasticity along the grain, above zero
 * @param shearMpa modulus of shear between the grain and across it, above zero
 * @param density the same all along
 */
record BeamWood(double moeMpa, double shearMpa, Density density) {
    static BeamWood of(Stiffness stiffness, Density density) {
        return new BeamWood(stiffness.moeMpa(), stiffness.shearMpa(), density);
    }

    double tonnesPerMm3() {
        return density.kgPerM3() * 1e-12;
    }
}
