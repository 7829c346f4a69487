package turnalike.job;

import turnalike.pattern.PlacedMember;
import turnalike.solid.Sensitivity;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * Where the weight sits: one member's mass, and what a small step of its diameter adds.
 *
 * @param placed the member
 * @param mass its own
 * @param sensitivity how its mass follows its diameter
 * @param step the step of diameter reported: 1/64 in or 0.4 mm
 */
public record MemberWeight(PlacedMember placed, Mass mass, Sensitivity sensitivity, Length step) {
    /** {@return the mass that one step of diameter adds to the member} */
    public Mass perStep() {
        return sensitivity.change(step);
    }
}
