package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;

/**
 * The figures by which a piece may depart from its pattern: at every spot a shift along the axis, and at every spot of each member a growth
 * of the radius; between spots both run straight. Two members that meet without a step share the growth there. Figures stand in one row:
 * the shifts first.
 */
final class Bend {
    private static final double SAME_MM = 1e-6;

    /** A member's spots, as indices of {@link Bend#spotMm}, with the figure of the growth at each. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Stretch(PlacedMember placed, int firstSpot, int[] growths) {
        int lastSpot() {
            return firstSpot + growths.length - 1;
        }
    }

    private final double[] spotMm;
    private final List<Stretch> stretches;
    private final int figures;

    private Bend(double[] spotMm, List<Stretch> stretches, int figures) {
        this.spotMm = spotMm;
        this.stretches = List.copyOf(stretches);
        this.figures = figures;
    }

    static Bend of(Pattern pattern) {
        List<Double> spots = new ArrayList<>(List.of(0.0));
        List<List<Double>> inside = new ArrayList<>();
        for (PlacedMember placed : pattern.placed()) {
            List<Double> crests = crests(placed);
            inside.add(crests);
            spots.addAll(crests);
            spots.add(placed.end().mm());
        }
        int next = spots.size();
        int spot = 0;
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < inside.size(); i++) {
            PlacedMember placed = pattern.placed().get(i);
            int[] growths = new int[inside.get(i).size() + 2];
            for (int k = 0; k < growths.length; k++) {
                boolean shared = k == 0 && i > 0 && meets(pattern.placed().get(i - 1), placed);
                if (shared) {
                    int[] before = stretches.get(i - 1).growths();
                    growths[0] = before[before.length - 1];
                } else {
                    growths[k] = next++;
                }
            }
            stretches.add(new Stretch(placed, spot, growths));
            spot += growths.length - 1;
        }
        return new Bend(spots.stream().mapToDouble(Double::doubleValue).toArray(), stretches, next);
    }

    /** The highest and deepest points inside a member, whether or not they are marked on the wood; from the datum end. */
    private static List<Double> crests(PlacedMember placed) {
        List<Double> out = new ArrayList<>();
        List<Member.Crest> marked = placed.crests().isEmpty() ? placed.member().crests() : placed.crests();
        marked.forEach(each -> out.add(placed.start().plus(each.place()).mm()));
        if (out.isEmpty()) {
            for (Segment segment : placed.outline().segments()) {
                segment.curve()
                        .levelPlacesMm()
                        .forEach(x -> out.add(segment.start().mm() + x));
            }
        }
        return out;
    }

    private static boolean meets(PlacedMember before, PlacedMember after) {
        Outline one = before.outline();
        double gap = one.endRadius().minus(after.outline().startRadius()).mm();
        return Math.abs(gap) < SAME_MM
                && before.member().section() == after.member().section();
    }

    double[] spotMm() {
        return spotMm;
    }

    List<Stretch> stretches() {
        return stretches;
    }

    int spots() {
        return spotMm.length;
    }

    int figures() {
        return figures;
    }

    /** Every figure at nothing: the pattern itself. */
    double[] none() {
        return new double[figures];
    }
}
