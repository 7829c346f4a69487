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
 */
public record Surroundings(List<PlacedMember> run, int index, UnitSystem units) {
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

    /** The joints at its start and at its end, as far as there are such. */
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

    /** Whether it is the first or the last of the run. */
    public boolean isAtAnEnd() {
        return index == 0 || index + 1 == run.size();
    }

    /** Whether the hole of any member of the run is told. */
    public boolean isAnyHoleGiven() {
        return run.stream()
                .anyMatch(placed ->
                        placed.member().enters().filter(Member.Hole::told).isPresent());
    }

    /** The length as warnings print it. */
    public String print(Length length) {
        return length.formatFineBoth(units);
    }
}
