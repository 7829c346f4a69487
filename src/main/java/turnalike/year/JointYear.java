package turnalike.year;

import turnalike.units.Length;
import turnalike.wood.Moisture;

/**
 * One joint through the year.
 *
 * @param joint as made
 * @param home where it lives
 */
public record JointYear(Joint joint, Home home) {
    /** {@return tenon and hole in the dry season} */
    public Joint.Sizes dry() {
        return joint.at(home.dry().moisture());
    }

    /** {@return tenon and hole in the damp season} */
    public Joint.Sizes damp() {
        return joint.at(home.damp().moisture());
    }

    /** {@return the greatest interference in either season, at the tightest side; below zero where there is play all round} */
    public Length tightest() {
        return tightestInDry() ? dry().tightest() : damp().tightest();
    }

    /** {@return whether the joint is tightest in the dry season} */
    public boolean tightestInDry() {
        return dry().tightest().compareTo(damp().tightest()) > 0;
    }

    /** {@return the least interference in either season, at the loosest side; below zero where there is play} */
    public Length loosest() {
        return loosestInDry() ? dry().loosest() : damp().loosest();
    }

    /** {@return whether the joint is loosest in the dry season} */
    public boolean loosestInDry() {
        return dry().loosest().compareTo(damp().loosest()) <= 0;
    }

    /** {@return the greatest interference in either season where the tenon's rings lie across the grain of its hole} */
    public Length tightestRingsAcross() {
        Length dry = dry().tightestRingsAcross();
        Length damp = damp().tightestRingsAcross();
        return dry.compareTo(damp) > 0 ? dry : damp;
    }

    /** {@return the least interference in either season where the tenon's rings lie so} */
    public Length loosestRingsAcross() {
        Length dry = dry().loosestRingsAcross();
        Length damp = damp().loosestRingsAcross();
        return dry.compareTo(damp) < 0 ? dry : damp;
    }

    /**
     * {@return the same joint with its tenon turned to the same size at another moisture}
     *
     * @param moisture of the tenon as it is turned
     */
    public JointYear turnedAt(Moisture moisture) {
        return new JointYear(joint.turnedAt(moisture), home);
    }
}
