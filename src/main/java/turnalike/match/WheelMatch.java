package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.units.Length;
import turnalike.units.Working;

/**
 * Chooses a set and places it on a wheel. Among the sets that pass, the one with the smallest unbalance wins; if none passes, the one most
 * alike in mass is placed and a warning says so.
 */
public final class WheelMatch {
    private WheelMatch() {}

    /**
     * Places the set.
     *
     * <p>Up to 10 places with few spares the answer is exact whatever the effort. Up to about 19 it is exact if the effort lasts, which
     * takes about a second for 17 and some ten seconds for 19 without spares; beyond, it is a good one. Unless the problem is strict,
     * improving stops once the unbalance is below what the scale can tell.
     *
     * @param problem the pieces and the wheel
     * @param effort what the search may spend
     * @return the set in its places, with what is proven of it
     * @throws IllegalArgumentException when {@link WheelProblem#problems()} is not empty
     */
    public static WheelPlacement solve(WheelProblem problem, Effort effort) {
        if (!problem.problems().isEmpty()) {
            throw new IllegalArgumentException(problem.problems().get(0).line());
        }
        WheelArrays ring = ring(problem);
        WheelSearch search = new WheelSearch(ring, noise(problem, ring.rule().alikest()), problem.strict());
        search.run(effort);
        if (ring.free()) {
            search.pieceAt = FirstPlace.turned(search.pieceAt);
        }
        return placement(problem, ring, search.pieceAt, search.proven);
    }

    /**
     * Places a set of which a person settled some or all. What is held keeps its place, exactly; it is never turned round the hub.
     *
     * @param problem the pieces and the wheel; every piece that is held or stands is one of them
     * @param hand what is settled
     * @param tie which of two orders is liked better where their unbalance cannot be told apart, less is better: below what the scale can
     *     tell, unless the problem is strict
     * @param effort what searching the rest may spend
     * @return the set in its places
     * @throws IllegalArgumentException when {@link WheelProblem#problems()} is not empty
     */
    public static ByHand byHand(
            WheelProblem problem, HandPlaces hand, ToDoubleFunction<List<Candidate>> tie, Effort effort) {
        if (!problem.problems().isEmpty()) {
            throw new IllegalArgumentException(problem.problems().get(0).line());
        }
        WheelArrays ring = ring(problem);
        int[] start = hand.start(ring.places(), preferred(ring.rule(), ring.pieces()), (piece, place) -> true);
        double floorGMm = problem.strict() ? ring.roundingGMm() : noise(problem, start);
        HandSearch search = new HandSearch(
                ring.pieces(),
                start,
                hand,
                (piece, place) -> true,
                new HandSearch.Judge(
                        order -> misses(problem, ring.rule(), order),
                        order -> Math.max(floorGMm, ring.leftGMm(order)),
                        order -> tie.applyAsDouble(Arrays.stream(order)
                                .mapToObj(problem.pieces()::get)
                                .toList())));
        if (!hand.stands()) {
            search.run(effort);
        }
        int[] pieceAt = search.pieceAt();
        boolean none = ring.leftGMm(pieceAt) <= ring.roundingGMm();
        WheelPlacement placed = placement(problem, ring, pieceAt, none && misses(problem, ring.rule(), pieceAt) == 0);
        boolean least = search.proven && (problem.strict() || placed.unbalance().gMm() > floorGMm);
        return new ByHand(placed, !hand.stands() && least);
    }

    /**
     * A set that a person had a hand in.
     *
     * @param placement which piece stands where
     * @param leastOfRest whether no other choice or order that keeps what is held has a smaller unbalance
     */
    public record ByHand(WheelPlacement placement, boolean leastOfRest) {}

    /** The set most alike first, then the others as listed. */
    static int[] preferred(SetRule rule, int pieces) {
        return preferred(rule.alikest(), pieces);
    }

    /** Those first, then the others as listed. */
    static int[] preferred(int[] first, int pieces) {
        return IntStream.concat(Arrays.stream(first), IntStream.range(0, pieces))
                .distinct()
                .toArray();
    }

    private static double misses(WheelProblem problem, SetRule rule, int[] pieceAt) {
        return SetRule.misses(rule.share(pieceAt), problem.tolerancePct() / 100);
    }

    static WheelArrays ring(WheelProblem problem) {
        List<Candidate> pieces = problem.pieces();
        double[] massesG = pieces.stream().mapToDouble(p -> p.mass().grams()).toArray();
        double[] depthsMm =
                problem.seatDepths().stream().mapToDouble(Length::mm).toArray();
        double meanMm = Arrays.stream(depthsMm).average().orElse(0);
        boolean uneven = Arrays.stream(depthsMm).anyMatch(mm -> mm != depthsMm[0]);
        double[] unevenMm =
                uneven ? Arrays.stream(depthsMm).map(mm -> mm - meanMm).toArray() : new double[0];
        double[] momentsGMm = pieces.stream()
                .mapToDouble(p -> p.mass().grams() * (p.reach().mm() - meanMm))
                .toArray();
        Moment given = Moment.sum(problem.given());
        double xGMm = given.gMm() == 0 ? 0 : given.xGMm();
        double yGMm = given.gMm() == 0 ? 0 : given.yGMm();
        double meanMassG = Arrays.stream(massesG).average().orElse(0);
        PlaceDirections compass = new PlaceDirections(problem.wheel().places());
        for (int place = 0; place < unevenMm.length; place++) {
            xGMm -= meanMassG * unevenMm[place] * compass.cos[place];
            yGMm -= meanMassG * unevenMm[place] * compass.sin[place];
        }
        if (uneven && xGMm == 0 && yGMm == 0) {
            // Seats that differ in turn cancel, yet the wheel may not be turned under its pieces: no given moment would
            // say that it may.
            xGMm = Math.ulp(Arrays.stream(momentsGMm).sum());
        }
        SetRule rule = new SetRule(massesG, problem.wheel().places(), problem.tolerancePct() / 100);
        return new WheelArrays(massesG, momentsGMm, compass, rule, xGMm, yGMm, unevenMm, meanMassG);
    }

    private static double noise(WheelProblem problem, int[] pieces) {
        List<Length> reaches = new ArrayList<>();
        for (int piece : pieces) {
            reaches.add(problem.pieces().get(piece).reach());
        }
        return Wheel.noiseFloorGMm(problem.scale(), reaches);
    }

    static WheelPlacement placement(WheelProblem problem, WheelArrays ring, int[] pieceAt, boolean proven) {
        List<Seat> seats = new ArrayList<>();
        Set<Integer> left = new TreeSet<>();
        for (int piece = 0; piece < ring.pieces(); piece++) {
            left.add(piece);
        }
        for (int place = 0; place < ring.places(); place++) {
            int piece = pieceAt[place];
            left.remove(piece);
            seats.add(new Seat(
                    place + 1, problem.wheel().angle(place), problem.pieces().get(piece), problem.seatDepth(place)));
        }
        double[] pullGMm = ring.trueGMm(pieceAt);
        Moment unbalance =
                ring.leftGMm(pieceAt) <= ring.roundingGMm() ? Moment.NONE : Moment.ofComponents(pullGMm[0], pullGMm[1]);
        double noiseGMm = Wheel.noiseFloorGMm(
                problem.scale(), seats.stream().map(Seat::reach).toList());
        return new WheelPlacement(
                seats,
                left.stream().map(problem.pieces()::get).toList(),
                unbalance,
                noiseGMm,
                proven,
                WheelPlacement.spread(seats),
                ring.rule().passes(pieceAt)
                        ? ring.rule().warnings(problem.tolerancePct())
                        : List.of(ring.rule().unlike(pieceAt, problem.tolerancePct())),
                workings(proven));
    }

    private static List<Working> workings(boolean proven) {
        return List.of(
                new Working(
                        "unbalance",
                        "|Σ mass × reach, each in the direction of its place, and what the hub and rim add|; the reach is hub radius"
                                + " + balance point from the shoulder − what the seat is deeper than meant",
                        "statics of point masses, as in Khurmi and Gupta, Theory of Machines, ch. 21 (from memory)",
                        proven
                                ? "no other choice or order that passes has a smaller one: all were gone through or ruled out"
                                : "the best found; a smaller one may exist"),
                new Working(
                        "noise floor",
                        "scale step / √12 · √(Σ reach²)",
                        Working.DERIVED,
                        "each weighing is off by a rounding error that knows nothing of the others"));
    }
}
