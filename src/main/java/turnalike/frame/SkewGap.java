package turnalike.frame;

import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import turnalike.frame.RadialBody.Stretch;
import turnalike.units.Length;

/**
 * The distance between two spokes that do not stand in one plane. Each is a row of discs across its axis, so it is the least distance of any
 * two discs. A slice of a spoke lies within its thickest disc moved to and fro by half its length, which bounds the distance of two slices
 * from below; the pair of slices with the least bound is halved until no bound is below the best pair of discs by more than a hair; the
 * best pair is then moved to where it is nearest.
 */
final class SkewGap {
    private static final double HAIR_MM = 0.01;
    private static final int MOST_PAIRS = 200_000;
    /** How many parts of each curve are looked at beside the neighbour's own. */
    private static final int BESIDE = 16;
    /** Slices longer than this are too coarse for the true distance of their discs to tell much. */
    private static final double NEAR_MM = 20;

    private final DiscGap discs;
    private double bestMm = Double.POSITIVE_INFINITY;
    private Optional<Nearest> best = Optional.empty();

    private SkewGap(double angle, Length stagger) {
        this.discs = new DiscGap(angle, stagger.mm());
    }

    static SpokeGap of(RadialBody body, double angle, Length stagger) {
        return new SkewGap(angle, stagger).least(body);
    }

    /** A slice of a spoke, by places on one curve. */
    private record Slice(Stretch stretch, double fromMm, double toMm) {
        double middleMm() {
            return (fromMm + toMm) / 2;
        }

        double halfMm() {
            return (toMm - fromMm) / 2;
        }

        double mostMm() {
            return stretch.mostMm(fromMm, toMm);
        }

        List<Slice> halves() {
            return List.of(new Slice(stretch, fromMm, middleMm()), new Slice(stretch, middleMm(), toMm));
        }
    }

    private record Place(Stretch stretch, double xMm) {
        double sMm() {
            return stretch.sMm() + xMm;
        }

        double radiusMm() {
            return stretch.radiusMm(xMm);
        }

        Place at(double otherMm) {
            return new Place(stretch, Math.max(0, Math.min(stretch.lengthMm(), otherMm)));
        }
    }

    private record Nearest(Place one, Place other) {}

    private record Pair(Slice one, Slice other, double atLeastMm) {}

    /** Whether no two discs are nearer than that; a hair less may pass. */
    static boolean isAtLeast(RadialBody body, double angle, Length stagger, double leastMm) {
        SkewGap gap = new SkewGap(angle, stagger);
        gap.bestMm = leastMm + HAIR_MM;
        gap.search(body, leastMm);
        return gap.bestMm >= leastMm;
    }

    private SpokeGap least(RadialBody body) {
        search(body, Double.NEGATIVE_INFINITY);
        settle();
        return new SpokeGap(
                Length.ofMm(bestMm),
                Length.ofMm(best.orElseThrow().one.sMm() - body.from().mm()),
                1);
    }

    /** Until the best is the least within a hair, or is below {@code enoughMm}. */
    private void search(RadialBody body, double enoughMm) {
        List<Stretch> stretches = body.stretches();
        for (Stretch stretch : stretches) {
            for (int i = 0; i <= BESIDE; i++) {
                Place place = new Place(stretch, stretch.lengthMm() * i / BESIDE);
                look(place, place);
            }
        }
        PriorityQueue<Pair> open = new PriorityQueue<>((a, b) -> Double.compare(a.atLeastMm, b.atLeastMm));
        for (Stretch one : stretches) {
            for (Stretch other : stretches) {
                open(open, new Slice(one, 0, one.lengthMm()), new Slice(other, 0, other.lengthMm()));
            }
        }
        int looked = 0;
        while (!open.isEmpty()
                && bestMm >= enoughMm
                && open.peek().atLeastMm < bestMm - HAIR_MM
                && looked++ < MOST_PAIRS) {
            Pair pair = open.poll();
            boolean first = pair.one.halfMm() >= pair.other.halfMm();
            for (Slice half : (first ? pair.one : pair.other).halves()) {
                open(open, first ? half : pair.one, first ? pair.other : half);
            }
        }
    }

    private void open(PriorityQueue<Pair> open, Slice one, Slice other) {
        double s1 = one.stretch.sMm() + one.middleMm();
        double s2 = other.stretch.sMm() + other.middleMm();
        double slack = one.halfMm() + other.halfMm();
        double bound = discs.atLeastMm(s1, one.mostMm(), s2, other.mostMm()) - slack;
        if (bound >= bestMm - HAIR_MM) {
            return;
        }
        if (slack < NEAR_MM) {
            bound = Math.max(bound, discs.mm(s1, one.mostMm(), s2, other.mostMm()) - slack);
        }
        look(new Place(one.stretch, one.middleMm()), new Place(other.stretch, other.middleMm()));
        if (bound < bestMm - HAIR_MM) {
            open.add(new Pair(one, other, bound));
        }
    }

    private void look(Place one, Place other) {
        if (discs.atLeastMm(one.sMm(), one.radiusMm(), other.sMm(), other.radiusMm()) >= bestMm) {
            return;
        }
        double gap = discs.mm(one.sMm(), one.radiusMm(), other.sMm(), other.radiusMm());
        if (gap < bestMm) {
            bestMm = gap;
            best = Optional.of(new Nearest(one, other));
        }
    }

    /** Moves the best pair, one disc after the other by ever smaller steps, while that brings them nearer. */
    private void settle() {
        for (double step = 1; step > 1e-7; step /= 2) {
            double before;
            do {
                before = bestMm;
                for (int way = -1; way <= 1; way += 2) {
                    Nearest from = best.orElseThrow();
                    Place one = from.one.at(from.one.xMm + way * step);
                    Place other = from.other.at(from.other.xMm + way * step);
                    look(one, from.other);
                    look(from.one, other);
                    look(one, other);
                }
            } while (bestMm < before - 1e-9);
        }
    }
}
