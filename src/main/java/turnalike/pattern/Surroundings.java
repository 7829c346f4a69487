package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A member among the others of its run: what it looks at when it says what is unwise.
 *
 * @param run the members in their places
 * @param index of the member, from 0
 * @param units in which lengths are printed, the other system's beside
 * @param rules from where on a shape is warned of
 */
public record Surroundings(List<PlacedMember> run, int index, UnitSystem units, ShapeRules rules) {
    public Surroundings {
        run = List.copyOf(run);
    }

    /**
     * Where it meets another member.
     *
     * @param neighbour the other
     * @param radius the other's, where they meet
     */
    public record Joint(PlacedMember neighbour, Length radius) {}

    /** {@return the joints at its start and at its end, in that order; at an end of the piece there is none} */
    public List<Joint> joints() {
        List<Joint> out = new ArrayList<>();
        if (index > 0) {
            PlacedMember before = run.get(index - 1);
            out.add(new Joint(before, before.outline().endRadius()));
        }
        if (index + 1 < run.size()) {
            PlacedMember after = run.get(index + 1);
            out.add(new Joint(after, after.outline().startRadius()));
        }
        return out;
    }

    /** {@return whether it is the first or the last of the run} */
    public boolean isAtAnEnd() {
        return index == 0 || index + 1 == run.size();
    }

    /** {@return whether the job names the hole of any member of the run} */
    public boolean isAnyHoleGiven() {
        return run.stream()
                .anyMatch(placed ->
                        placed.member().enters().filter(Member.Hole::told).isPresent());
    }

    /**
     * {@return the length as warnings print it, in the job's units and with the other system's beside}
     *
     * @param length any
     */
    public String print(Length length) {
        return length.formatWrittenBoth(units);
    }
}
