package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The marks and every opening worth trying, as bare numbers for the searches.
 *
 * <p>One opening serves a window of distances twice the match tolerance wide. Of two windows the one that serves all the other serves
 * and more is never the worse, so only the widest are kept: at most one per distinct distance.
 */
final class Spans {
    /**
     * Distances are differences of places, so the same distance met twice may differ by rounding: up to about 1e-12 mm at 20 m. A
     * comparison with a tolerance gives way by this much, a thousand times more and far below what any tool can hold.
     */
    static final double SLACK_MM = 1e-9;

    final double[] placesMm;
    final int mostSteps;
    /** Marks that stand before any step and need no dividers: the ends, shoulder lines, what the stick gives. */
    final boolean[] given;
    /** Those of the given marks that the search has the stick give, because no chain of openings reaches them; rising. */
    final int[] stick;

    final List<Opening> openings;
    /** How many of the openings, from the first, stand in every plan because the turner asked for them. */
    final int pinned;

    /** What the openings were made by. */
    final Rules rules;
    /** The limit to a mark's whole error, where it is not certain that every chain of so many steps keeps it. */
    final Optional<WholeLimit> whole;

    private final boolean[][] barred;

    /**
     * No mark's error may be greater than the limit, the known misses of its steps included.
     *
     * @param errorMm of each step
     */
    record WholeLimit(double errorMm, double limitMm) {
        /** Whether a mark may stand so many steps out and miss by that much. */
        boolean allows(int steps, double missMm) {
            return Math.abs(missMm) + steps * errorMm <= limitMm + SLACK_MM;
        }
    }

    /**
     * Which steps may be made.
     *
     * @param toleranceMm how far a distance may lie from its opening, either way
     * @param smallestMm no opening is narrower, but for pinned ones
     * @param largestMm no opening is wider, but for pinned ones
     * @param square by mark: whether the stretch from it to the next stays square
     * @param pinnedMm openings that stand in every plan
     * @param forbiddenMm no step is as long as one of these
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Rules(
            double toleranceMm,
            double smallestMm,
            double largestMm,
            boolean[] square,
            double[] pinnedMm,
            double[] forbiddenMm) {}

    /**
     * Nothing is left to the search to take from the stick yet.
     *
     * @param given besides the two ends
     * @param openings the pinned ones first
     * @param barred by two marks, both ways round: no opening but a pinned one may step from one to the other
     */
    Spans(double[] placesMm, int mostSteps, boolean[] given, List<Opening> openings, int pinned, boolean[][] barred) {
        this(
                placesMm,
                mostSteps,
                withEnds(given),
                new int[0],
                openings,
                pinned,
                barred,
                new Rules(0, 0, Double.POSITIVE_INFINITY, new boolean[given.length], new double[pinned], new double[0]),
                Optional.empty());
    }

    private Spans(
            double[] placesMm,
            int mostSteps,
            boolean[] given,
            int[] stick,
            List<Opening> openings,
            int pinned,
            boolean[][] barred,
            Rules rules,
            Optional<WholeLimit> whole) {
        this.placesMm = placesMm;
        this.mostSteps = mostSteps;
        this.given = given;
        this.stick = stick;
        this.openings = openings;
        this.pinned = pinned;
        this.barred = barred;
        this.rules = rules;
        this.whole = whole;
    }

    /** The openings that places along a piece allow, whatever their size, where nothing stays square. */
    static Spans along(
            double[] placesMm,
            double toleranceMm,
            int mostSteps,
            boolean[] onTheStick,
            double[] pinnedMm,
            double[] forbiddenMm) {
        boolean[] noSquare = new boolean[placesMm.length];
        return along(
                placesMm,
                mostSteps,
                onTheStick,
                new Rules(toleranceMm, 0, Double.POSITIVE_INFINITY, noSquare, pinnedMm, forbiddenMm));
    }

    /**
     * The openings that places along a piece allow.
     *
     * @param onTheStick by mark, what the turner has the stick give; shoulder lines and ends are given besides
     */
    static Spans along(double[] placesMm, int mostSteps, boolean[] onTheStick, Rules rules) {
        boolean[] given = withEnds(onTheStick);
        for (int mark = 0; mark + 1 < placesMm.length; mark++) {
            given[mark] |= rules.square()[mark];
            given[mark + 1] |= rules.square()[mark];
        }
        boolean[][] barred = barred(placesMm, rules);
        List<double[]> pairs = pairs(placesMm, given, barred);
        List<Opening> openings = new ArrayList<>();
        for (double pin : rules.pinnedMm()) {
            openings.add(new Opening(pairs.stream()
                    .filter(pair -> Math.abs(pair[0] - pin) <= rules.toleranceMm() + SLACK_MM)
                    .toList()));
        }
        boolean[][] shut = shut(placesMm, barred, rules);
        List<double[]> within = pairs.stream()
                .filter(pair -> !shut[(int) pair[1]][(int) pair[2]])
                .toList();
        addWindows(openings, within, 2 * rules.toleranceMm() + SLACK_MM);
        return new Spans(
                placesMm,
                mostSteps,
                given,
                new int[0],
                openings,
                rules.pinnedMm().length,
                shut,
                rules,
                Optional.empty());
    }

    private static boolean[] withEnds(boolean[] given) {
        boolean[] out = given.clone();
        out[0] = true;
        out[given.length - 1] = true;
        return out;
    }

    /** What is barred, and every step that dividers cannot be set to. */
    private static boolean[][] shut(double[] placesMm, boolean[][] barred, Rules rules) {
        double leastMm = rules.smallestMm() - SLACK_MM;
        double mostMm = rules.largestMm() + rules.toleranceMm() + SLACK_MM;
        boolean[][] shut = new boolean[placesMm.length][placesMm.length];
        for (int one = 0; one < placesMm.length; one++) {
            for (int other = 0; other < placesMm.length; other++) {
                double distanceMm = Math.abs(placesMm[other] - placesMm[one]);
                shut[one][other] = barred[one][other] || distanceMm > mostMm || distanceMm < leastMm;
            }
        }
        return shut;
    }

    /** The same openings, with these marks given by the stick besides; none of them is given yet. */
    Spans giving(int[] more) {
        boolean[] all = given.clone();
        for (int mark : more) {
            all[mark] = true;
        }
        return new Spans(placesMm, mostSteps, all, more.clone(), openings, pinned, barred, rules, whole);
    }

    /**
     * The same, with that limit to a mark's whole error; the most steps are those that the limit allows without any miss. Where no chain
     * of so many steps can pass the limit, because distances repeat exactly or the limit leaves room for every miss, it is none.
     */
    Spans within(WholeLimit limit) {
        boolean certain =
                openings.stream().allMatch(this::isExact) || limit.allows(mostSteps, mostSteps * rules.toleranceMm());
        return certain
                ? this
                : new Spans(placesMm, mostSteps, given, stick, openings, pinned, barred, rules, Optional.of(limit));
    }

    /** The same, whatever the steps miss. */
    Spans withoutLimit() {
        return new Spans(placesMm, mostSteps, given, stick, openings, pinned, barred, rules, Optional.empty());
    }

    /** Whether it can be set so that it misses none of its distances. */
    private boolean isExact(Opening opening) {
        double shortest = opening.shortestMm();
        int index = openings.indexOf(opening);
        double set = index < pinned ? rules.pinnedMm()[index] : Math.min(shortest, rules.largestMm());
        return IntStream.range(0, opening.pairs())
                .allMatch(i -> Math.abs(distanceMm(opening.low()[i], opening.high()[i]) - set) <= SLACK_MM);
    }

    /** Whether some step can only be made with an opening that misses it, since dividers open no wider or are pinned. */
    boolean hasForcedMisses() {
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            for (int pair = 0; pair < opening.pairs(); pair++) {
                if (distanceMm(opening.low()[pair], opening.high()[pair]) > rules.largestMm() + SLACK_MM) {
                    return true;
                }
            }
        }
        return false;
    }

    int marks() {
        return placesMm.length;
    }

    int last() {
        return placesMm.length - 1;
    }

    /** How many marks dividers must reach. */
    int wanted() {
        int wanted = 0;
        for (boolean each : given) {
            wanted += each ? 0 : 1;
        }
        return wanted;
    }

    double distanceMm(int one, int other) {
        return Math.abs(placesMm[one] - placesMm[other]);
    }

    /** Whether no opening but a pinned one may make this step: it is forbidden, too wide or too narrow, or goes over a square. */
    boolean isBarred(int one, int other) {
        return barred[one][other];
    }

    /**
     * What no opening may do, both ways round: what is forbidden, and any step with a square under it. A leg would stand on the turning
     * square, or both would straddle its arrises.
     */
    private static boolean[][] barred(double[] placesMm, Rules rules) {
        boolean[][] barred = new boolean[placesMm.length][placesMm.length];
        for (int low = 0; low < placesMm.length; low++) {
            boolean overSquare = false;
            for (int high = low + 1; high < placesMm.length; high++) {
                overSquare |= rules.square()[high - 1];
                double distance = placesMm[high] - placesMm[low];
                barred[low][high] = overSquare
                        || Arrays.stream(rules.forbiddenMm())
                                .anyMatch(f -> Math.abs(f - distance) <= rules.toleranceMm() + SLACK_MM);
                barred[high][low] = barred[low][high];
            }
        }
        return barred;
    }

    /** Every pair of marks a step may join to some use, as (distance, lower, higher), the shortest first. */
    private static List<double[]> pairs(double[] placesMm, boolean[] given, boolean[][] barred) {
        List<double[]> pairs = new ArrayList<>();
        int last = placesMm.length - 1;
        for (int low = 0; low < last; low++) {
            for (int high = low + 1; high <= last; high++) {
                if (!barred[low][high] && !(given[low] && given[high])) {
                    pairs.add(new double[] {placesMm[high] - placesMm[low], low, high});
                }
            }
        }
        pairs.sort((a, b) -> Double.compare(a[0], b[0]));
        return pairs;
    }

    private static void addWindows(List<Opening> openings, List<double[]> pairs, double widthMm) {
        int end = 0;
        for (int start = 0; start < pairs.size() && end < pairs.size(); start++) {
            if (start > 0 && pairs.get(start)[0] - pairs.get(start - 1)[0] <= SLACK_MM) {
                continue;
            }
            int reach = end;
            while (reach < pairs.size() && pairs.get(reach)[0] - pairs.get(start)[0] <= widthMm) {
                reach++;
            }
            if (reach > end) {
                end = reach;
                openings.add(new Opening(pairs.subList(start, end)));
            }
        }
    }
}
