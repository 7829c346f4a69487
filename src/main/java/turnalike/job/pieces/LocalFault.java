package turnalike.job.pieces;

import java.util.List;
import java.util.Optional;
import turnalike.pattern.PlacedMember;
import turnalike.trace.against.Comparison;
import turnalike.trace.against.Figure;
import turnalike.trace.against.MemberOff;
import turnalike.units.Length;

/**
 * A flat, a dig or a lump on one member: what its thickness on average does not tell. Only where {@value #TOGETHER} readings in a row lie off
 * the same way, each by more than two of its standard deviations and by more than the member's having moved along the piece could bring.
 *
 * @param place of the worst, from the piece's start end
 * @param much too thick, in diameter; below zero too thin; by the middle one of the readings there
 */
record LocalFault(Length place, Length much) {
    private static final int TOGETHER = 3;

    /** So near a seam a reading may lie on the neighbour. */
    private static final double SEAM_MM = 2;

    private static final double SURE = 2;
    private static final double STEP_MM = 0.5;
    private static final double SHIFT_STEP_MM = 0.1;

    /**
     * The worst on a member, if there is one.
     *
     * @param worth less is not told, in diameter
     */
    static Optional<LocalFault> find(Comparison comparison, MemberOff member, Length worth) {
        if (isRound(member)) {
            return Optional.empty();
        }
        double moved = moved(comparison, member);
        PlacedMember placed = member.placed();
        double from = placed.start().mm() + SEAM_MM + moved;
        double to = placed.end().mm() - SEAM_MM - moved;
        double average = member.thicker().map(each -> each.value().mm()).orElse(0.0);
        List<Comparison.Off> on = comparison.off().stream()
                .filter(each -> each.place().mm() >= from && each.place().mm() <= to)
                .toList();
        double[] told = on.stream()
                .mapToDouble(each -> told(each, placed, moved, average))
                .toArray();
        Optional<LocalFault> worst = Optional.empty();
        double most = worth.mm();
        for (int i = 0; i + TOGETHER <= on.size(); i++) {
            double least = Double.POSITIVE_INFINITY;
            int high = 0;
            for (int k = i; k < i + TOGETHER; k++) {
                least = Math.min(least, told[k]);
                high += on.get(k).much().value().mm() > 0 ? 1 : 0;
            }
            if (least >= most && (high == 0 || high == TOGETHER)) {
                most = least;
                Comparison.Off middle = on.get(i + TOGETHER / 2);
                worst = Optional.of(
                        new LocalFault(middle.place(), middle.much().value().times(2)));
            }
        }
        return worst;
    }

    /** On a bead or in a hollow a reading a hair beside its place is off by much: what is said of crest and bottom has to do. */
    private static boolean isRound(MemberOff member) {
        return !member.placed().member().crests().isEmpty() || member.deeper().isPresent();
    }

    /** How far a reading is off beyond what is said of the whole member and what a shift brings, in diameter; 0 where it is not sure. */
    private static double told(Comparison.Off off, PlacedMember placed, double moved, double average) {
        Figure much = off.much();
        double radius = much.value().mm();
        if (Math.abs(radius) < SURE * much.uncertainty().mm()) {
            return 0;
        }
        double along = off.place().minus(placed.start()).mm();
        double slope = (radius(placed, along + STEP_MM) - radius(placed, along - STEP_MM)) / (2 * STEP_MM);
        double seen = radius(placed, along) + radius * Math.hypot(1, slope);
        double least = Math.min(Math.abs(2 * radius), Math.abs(2 * radius - average));
        for (double shift = -moved; shift <= moved; shift += SHIFT_STEP_MM) {
            double there = seen - radius(placed, along + shift);
            least = Math.min(least, Math.min(Math.abs(2 * there), Math.abs(2 * there - average)));
        }
        return least;
    }

    private static double radius(PlacedMember placed, double alongMm) {
        double kept = Math.max(0, Math.min(placed.end().minus(placed.start()).mm(), alongMm));
        return placed.outline().radiusAt(Length.ofMm(kept)).mm();
    }

    /** How far the member and its neighbours were found from their places, at the most. */
    private static double moved(Comparison comparison, MemberOff member) {
        int number = member.placed().number();
        return comparison.members().stream()
                .filter(each -> Math.abs(each.placed().number() - number) <= 1)
                .flatMap(each -> each.stands().stream())
                .mapToDouble(each -> Math.abs(each.value().mm()))
                .max()
                .orElse(0);
    }
}
