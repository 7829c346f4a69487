package turnalike.api;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How the piece is turned. Show the cautions wherever you show the steps: the lathe hurts people, and local rules and a teacher at hand
 * come before any figure here.
 *
 * @param steps in their order
 * @param slowestRpm turns a minute from which it may turn once it is round; empty where no speed is sound
 * @param fastestRpm turns a minute up to which it may, empty likewise
 * @param cautions what to beware of, the gravest first; at least one
 */
public record LatheWork(
        List<LatheStep> steps, OptionalDouble slowestRpm, OptionalDouble fastestRpm, List<String> cautions) {
    public LatheWork {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }
}
