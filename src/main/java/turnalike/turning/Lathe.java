package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.Problem;
import turnalike.units.Speed;

/**
 * What the turner's lathe and hand bring.
 *
 * @param cutting the force with which the tool pushes the piece aside
 * @param steps the speeds the lathe has, slowest first; empty when any speed can be had or none is told
 * @param most the fastest it may be run, if told
 * @param tailstock the force with which the tailstock is wound up, if told
 * @param held how the piece is held
 * @param rules the rules of thumb that the turner goes by
 */
public record Lathe(
        Force cutting, List<Speed> steps, Optional<Speed> most, Optional<Force> tailstock, Held held, ShopRules rules) {
    /**
     * 20 N, about the weight of two litres of water: a light finishing cut on hardwood. Common practice, no source; a dull tool or a heavy
     * cut pushes several times as hard, a shaving off a thin spire less. How much less nobody has told, so it is not scaled down but said:
     * {@link #isHeavyOn}.
     */
    public static final Force USUAL_CUTTING = Force.ofNewtons(20);

    /** A job that says nothing of its lathe. */
    public static final Lathe USUAL = new Lathe(USUAL_CUTTING, List.of(), Optional.empty(), Optional.empty());

    public Lathe {
        steps = steps.stream().sorted().toList();
    }

    /**
     * A lathe that holds the piece between centres, and the usual rules of thumb.
     *
     * @param cutting the force with which the tool pushes the piece aside
     * @param steps the speeds the lathe has; empty when any speed can be had or none is told
     * @param most the fastest it may be run, if told
     * @param tailstock the force with which the tailstock is wound up, if told
     */
    public Lathe(Force cutting, List<Speed> steps, Optional<Speed> most, Optional<Force> tailstock) {
        this(cutting, steps, most, tailstock, Held.BETWEEN_CENTRES, ShopRules.USUAL);
    }

    /**
     * {@return whether the usual cutting force is more than anybody pushes with there: on what is thinner than a pencil, unless the turner tells
     * another force}
     *
     * @param diameter of the piece where it is cut
     */
    public boolean isHeavyOn(Length diameter) {
        return cutting.equals(USUAL_CUTTING) && diameter.compareTo(rules.pencil()) < 0;
    }

    /**
     * {@return the same with the piece held another way}
     *
     * @param other the other way
     */
    public Lathe withHeld(Held other) {
        return new Lathe(cutting, steps, most, tailstock, other, rules);
    }

    /**
     * {@return the same with other rules of thumb}
     *
     * @param other the other rules
     */
    public Lathe withRules(ShopRules other) {
        return new Lathe(cutting, steps, most, tailstock, held, other);
    }

    /**
     * {@return steps that contradict one another or the fastest speed, each where it was given: {@code at} is the list's place in the job}
     *
     * @param at the list's place in the job
     * @param given the steps as they were given
     * @param most the fastest the lathe may be run, if told
     */
    public static List<Problem> problems(String at, List<Speed> given, Optional<Speed> most) {
        List<Problem> out = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            String where = "%s: step %d".formatted(at, i + 1);
            Speed step = given.get(i);
            if (given.subList(0, i).contains(step)) {
                out.add(new Problem(
                        where,
                        "%s rpm is there twice".formatted(PlainNumber.exact(step.rpm())),
                        "list each step once"));
            }
            if (most.isPresent() && step.compareTo(most.get()) > 0) {
                out.add(new Problem(
                        where,
                        "%s rpm is above max_rpm, %s"
                                .formatted(
                                        PlainNumber.exact(step.rpm()),
                                        PlainNumber.exact(most.get().rpm())),
                        "leave the step out or raise max_rpm"));
            }
        }
        return out;
    }
}
