package turnalike.year;

import java.util.Optional;
import turnalike.units.Length;
import turnalike.wood.DimensionalChange;
import turnalike.wood.Grain;
import turnalike.wood.Moisture;
import turnalike.wood.MoistureChange;
import turnalike.wood.Species;

/**
 * A round tenon and the round hole it goes into, both as they are made.
 *
 * @param tenon its diameter, above zero
 * @param tenonWood what it is turned from
 * @param hole its diameter as bored, above zero
 * @param holeWood what it is bored in, across the grain
 */
public record Joint(Length tenon, Part tenonWood, Length hole, Part holeWood) {
    /**
     * As dry as a tenon is dried here: dielectric meters read from 4 % on. Source: the Wood Handbook on moisture meters (VERIFIED, S9, page
     * index 294).
     */
    public static final Moisture DRIEST = Moisture.ofPct(4);

    /**
     * Wood of one part at the moisture it is made at.
     *
     * @param species one whose movement is known both ways of the grain, else {@link IllegalArgumentException}
     * @param made its moisture when it is turned or bored
     */
    public record Part(Species species, Moisture made) {
        public Part {
            if (!moves(species)) {
                throw new IllegalArgumentException("nothing is printed of how %s moves".formatted(species.name()));
            }
        }

        /** The size at another moisture. Accuracy: as {@link DimensionalChange}. */
        Length at(Moisture moisture, Length size, Grain grain) {
            return DimensionalChange.of(species, grain, size, new MoistureChange(made, moisture))
                    .get()
                    .finish();
        }

        Part madeAt(Moisture other) {
            return new Part(species, other);
        }
    }

    public Joint {
        if (!tenon.isPositive() || !hole.isPositive()) {
            throw new IllegalArgumentException(
                    "tenon and hole must be above zero, were %s mm and %s mm".formatted(tenon.mm(), hole.mm()));
        }
    }

    /**
     * {@return whether movement is printed for the wood, or follows from what is, along the radius and along the rings}
     *
     * @param species the wood
     */
    public static boolean moves(Species species) {
        return species.coefficient(Grain.RADIAL).isPresent()
                && species.coefficient(Grain.TANGENTIAL).isPresent();
    }

    /** The same with the tenon's wood at another moisture when it is turned. */
    Joint turnedAt(Moisture moisture) {
        return new Joint(tenon, tenonWood.madeAt(moisture), hole, holeWood);
    }

    /**
     * {@return the joint once both woods have come to that moisture}
     *
     * @param moisture of tenon and hole alike
     */
    public Sizes at(Moisture moisture) {
        return new Sizes(
                moisture,
                tenonWood.at(moisture, tenon, Grain.TANGENTIAL),
                tenonWood.at(moisture, tenon, Grain.RADIAL),
                holeWood.at(moisture, hole, Grain.TANGENTIAL),
                hole);
    }

    /**
     * {@return the diameter that the tenon had to be turned to, at its present moisture, to be loose at no side in any of the seasons; the
     * present one where it is loose at none} Derived: every size is in proportion to the one turned.
     *
     * @param home the seasons
     */
    public Length snugDiameter(Home home) {
        double most = 1;
        for (Season season : new Season[] {home.dry(), home.damp()}) {
            Sizes sizes = at(season.moisture());
            most = Math.max(
                    most, sizes.widestHole().mm() / sizes.thinnestTenon().mm());
        }
        return tenon.times(most);
    }

    /**
     * {@return the wettest moisture, no wetter than the present one, at which the tenon can be turned to its size and be loose at no side in
     * any of the seasons; empty where {@link #DRIEST} does not suffice} By halving, to a thousandth of a point: what it answers with has been
     * tried.
     *
     * @param home the seasons
     */
    public Optional<Moisture> snugMoisture(Home home) {
        if (!looseAt(tenonWood.made(), home)) {
            return Optional.of(tenonWood.made());
        }
        if (tenonWood.made().compareTo(DRIEST) <= 0 || looseAt(DRIEST, home)) {
            return Optional.empty();
        }
        double snug = DRIEST.pct();
        double loose = tenonWood.made().pct();
        while (loose - snug > 0.001) {
            double middle = (loose + snug) / 2;
            if (looseAt(Moisture.ofPct(middle), home)) {
                loose = middle;
            } else {
                snug = middle;
            }
        }
        return Optional.of(Moisture.ofPct(snug));
    }

    private boolean looseAt(Moisture moisture, Home home) {
        return new JointYear(turnedAt(moisture), home).loosest().mm() < 0;
    }

    /**
     * Tenon and hole at one moisture.
     *
     * @param moisture of both
     * @param tangential the tenon's diameter along its rings
     * @param radial the tenon's diameter across its rings
     * @param holeAcross the hole's diameter across the grain that it is bored in
     * @param holeAlong the hole's diameter along that grain: as bored
     */
    public record Sizes(Moisture moisture, Length tangential, Length radial, Length holeAcross, Length holeAlong) {
        /** {@return how far the tenon's two diameters differ, along the rings less across them; below zero once it has dried} */
        public Length oval() {
            return tangential.minus(radial);
        }

        /** {@return the greatest interference: the thicker side of the tenon in the narrower side of the hole} */
        public Length tightest() {
            return larger(tangential, radial).minus(smaller(holeAcross, holeAlong));
        }

        /** {@return the least interference: the thinner side of the tenon in the wider side of the hole} */
        public Length loosest() {
            return thinnestTenon().minus(widestHole());
        }

        /** {@return the greatest interference of a tenon whose rings lie across the grain of its hole, so that what moves most meets its like} */
        public Length tightestRingsAcross() {
            return larger(tangential.minus(holeAcross), radial.minus(holeAlong));
        }

        /** {@return the least interference of a tenon that lies so} */
        public Length loosestRingsAcross() {
            return smaller(tangential.minus(holeAcross), radial.minus(holeAlong));
        }

        Length thinnestTenon() {
            return smaller(tangential, radial);
        }

        Length widestHole() {
            return larger(holeAcross, holeAlong);
        }

        private static Length larger(Length one, Length other) {
            return one.compareTo(other) > 0 ? one : other;
        }

        private static Length smaller(Length one, Length other) {
            return one.compareTo(other) > 0 ? other : one;
        }
    }
}
