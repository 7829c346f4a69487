package turnalike.sheets;

import java.util.List;
import java.util.Optional;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What a bench card says.
 *
 * @param title the job's name
 * @param subtitle one line under it: pieces, wood, moisture
 * @param units the job's own; the other stands smaller beside
 * @param facts the few figures worth a large letter: length, blank, weight, balance point
 * @param given sentences about the marks that stand before any step; none where only the ends do
 * @param dividers in the order they are set
 * @param calipers in the order they are set
 * @param byEye what is too thin for them, as a person reads it; empty where nothing is
 * @param cautions each a sentence or two; none leaves the box out
 */
public record BenchCardContent(
        String title,
        String subtitle,
        UnitSystem units,
        Pattern pattern,
        List<Fact> facts,
        List<String> given,
        List<Divider> dividers,
        List<Caliper> calipers,
        Optional<String> byEye,
        List<String> cautions) {
    public BenchCardContent {
        facts = List.copyOf(facts);
        given = List.copyOf(given);
        dividers = List.copyOf(dividers);
        calipers = List.copyOf(calipers);
        cautions = List.copyOf(cautions);
    }

    /** A figure with its name and, smaller, the same in other units or what it hangs on; that may be empty. */
    public record Fact(String name, String figure, String beside) {}

    /**
     * One opening of the dividers.
     *
     * @param steps in the order they are stepped, marks numbered from 0 at the datum end
     */
    public record Divider(Length opening, List<Step> steps) {
        public Divider {
            steps = List.copyOf(steps);
        }
    }

    /**
     * From one mark to another.
     *
     * @param round from 1: every mark of a round is struck before one of the next
     */
    public record Step(int from, int to, int round) {}

    /**
     * One opening of the calipers.
     *
     * @param opening what they are set to, allowances included
     * @param finished the diameter that is left when the piece is done, or the least and the greatest of several
     * @param use the members it sizes, as a person reads it: {@code 2 bead, 7 cove}
     */
    public record Caliper(Length opening, String finished, String use) {}
}
