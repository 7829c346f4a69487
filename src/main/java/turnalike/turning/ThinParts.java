package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import turnalike.outline.Segment;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * The members among the slender ones that somewhere are thinner than a share of their distance from the nearer support, see
 * {@link ShopRules#thin}: a dig with the tool breaks them first, so that they are cut when nothing else is left to cut.
 */
final class ThinParts {
    private static final int PARTS = 16;

    private ThinParts() {}

    /** A thin member: its index, and its thinness in billionths, since two mirrored members differ by the last digit and must keep their order. */
    private record Thin(int index, long share) {}

    /** Their indices, the thinnest for its distance last; those alike in the order in which slender ones are cut. */
    static List<Integer> of(TurningProblem work, Set<Integer> slender) {
        List<Thin> thin = new ArrayList<>();
        for (int index : SlenderMembers.order(work, slender)) {
            double share = share(work, work.pattern().placed().get(index));
            if (share < work.lathe().rules().shapes().thin() * (1 - 1e-9)) {
                thin.add(new Thin(index, Math.round(share * 1e9)));
            }
        }
        thin.sort(Comparator.comparing(Thin::share).reversed());
        return thin.stream().map(Thin::index).toList();
    }

    /** The least of diameter over distance from the nearer support, at its joints and sixteen parts of each of its curves. */
    private static double share(TurningProblem work, PlacedMember placed) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : placed.outline().segments()) {
            double length = segment.curve().length().mm();
            for (int i = 0; i <= PARTS; i++) {
                double x = i * length / PARTS;
                double away =
                        work.fromSupport(segment.start().plus(Length.ofMm(x))).mm();
                if (away > 0) {
                    least = Math.min(least, 2 * segment.curve().radiusMm(x) / away);
                }
            }
        }
        return least;
    }
}
