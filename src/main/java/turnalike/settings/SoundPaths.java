package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a choice of openings keeps every mark's whole error, known misses included, within the limit; and with which paths.
 *
 * <p>Each mark is struck once, from one mark with one opening, and that decides how far out it stands and, once the openings are set, by
 * how much it misses. So all ways to strike the marks are tried, one mark after another, by branch and bound: a way is dropped as soon as
 * no setting of the openings keeps the marks struck so far within the limit, a linear programme ({@link LeastMisses}), or its steps can
 * only sum to more than the best. Exact as far as so many partial ways do as are allowed; beyond that the answer may be that there is none where
 * there is one, and {@link #undecided()} says so.
 */
final class SoundPaths {
    /** Partial ways for a proof: a tenth of a second's or so; few choices take more than some tens. */
    static final int MANY_NODES = 5_000;

    /** Choices remembered: annealing comes back to the same ones again and again. */
    private static final int REMEMBERED = 20_000;

    private final Spans spans;
    private final Map<List<Integer>, Optional<Choice>> known = new HashMap<>();
    private final int mostNodes;
    private boolean undecided;

    /**
     * @param spans with a limit to the whole error or without; without one, whatever reaches all marks is sound
     * @param mostNodes partial ways looked at for each choice before it is given up
     */
    SoundPaths(Spans spans, int mostNodes) {
        this.spans = spans;
        this.mostNodes = mostNodes;
    }

    /** Whether some search was given up before its end. */
    boolean undecided() {
        return undecided;
    }

    /**
     * The choice with its best paths: the smallest sum of steps, then the shortest longest step; none when no paths are sound.
     *
     * @param counted steps counted for just this choice
     */
    Optional<Choice> judge(StepCount counted, int[] chosen, int count) {
        if (counted.unreached() > 0) {
            return Optional.empty();
        }
        if (spans.whole.isEmpty()) {
            return Optional.of(Choice.of(counted, chosen, count));
        }
        int[] sorted = Arrays.copyOf(chosen, count);
        Arrays.sort(sorted);
        List<Integer> key = new ArrayList<>();
        Arrays.stream(sorted).forEach(key::add);
        key.add(-1);
        Arrays.stream(counted.stick()).forEach(key::add);
        Optional<Choice> earlier = known.get(key);
        if (earlier != null) {
            return earlier;
        }
        Ways ways = new Ways(counted, sorted, spans.whole.orElseThrow());
        Optional<Choice> found = ways.best();
        undecided |= ways.nodes > mostNodes;
        if (known.size() < REMEMBERED) {
            known.put(key, found);
        }
        return found;
    }

    /** One opening that carries a mark that stands to one that does not. */
    private record Way(int from, int to, int with, int steps, double missMm) {}

    private final class Ways {
        private final Spans.WholeLimit limit;
        private final int[] chosen;
        private final int[] stick;
        private final int[] fewest;
        private final double leastLongestMm;
        private final Strikes strikes;
        /** When each mark was struck, 0 for a given one. */
        private final int[] order;
        /** A mark is not struck from one that stood before this. */
        private final int[] notBefore;

        private int struck;
        private int left;
        private Optional<Strikes> best = Optional.empty();
        private int bestSum = Integer.MAX_VALUE;
        private double bestLongestMm = Double.POSITIVE_INFINITY;
        private int nodes;

        Ways(StepCount counted, int[] chosen, Spans.WholeLimit limit) {
            this.limit = limit;
            this.chosen = chosen;
            this.stick = counted.stick();
            this.strikes = Strikes.none(spans, stick);
            this.order = new int[spans.marks()];
            this.notBefore = new int[spans.marks()];
            this.fewest = new int[spans.marks()];
            for (int mark = 0; mark < fewest.length; mark++) {
                fewest[mark] = counted.steps(mark);
                left += fewest[mark];
            }
            this.leastLongestMm = counted.longestStepMm(chosen, chosen.length);
        }

        Optional<Choice> best() {
            OpeningRange[] ranges = new OpeningRange[spans.pinned + chosen.length];
            double[] openings = new double[ranges.length];
            for (int i = 0; i < ranges.length; i++) {
                ranges[i] = OpeningRange.of(spans, opening(i));
                openings[i] = middle(ranges[i], spans.openings.get(opening(i)));
            }
            strike(ranges, openings, 0, 0);
            return best.map(found -> Choice.of(chosen, stick, found, bestLongestMm));
        }

        private int opening(int counted) {
            return counted < spans.pinned ? counted : chosen[counted - spans.pinned];
        }

        private double middle(OpeningRange range, Opening opening) {
            int last = opening.pairs() - 1;
            return range.nearest(
                    last < 0
                            ? 0
                            : (opening.shortestMm() + spans.distanceMm(opening.low()[last], opening.high()[last])) / 2);
        }

        private void strike(OpeningRange[] ranges, double[] openings, int sum, double longestMm) {
            nodes++;
            if (nodes > mostNodes || !promises(sum, longestMm)) {
                return;
            }
            List<Way> ways = next(ranges, openings);
            if (ways.isEmpty()) {
                if (strikes.isWhole()) {
                    best = Optional.of(strikes.copy());
                    bestSum = sum;
                    bestLongestMm = longestMm;
                }
                return;
            }
            int mark = ways.get(0).to();
            for (Way way : ways) {
                follow(way, ranges, openings, sum, longestMm);
            }
            // Or from a mark that does not stand yet.
            int earlier = notBefore[mark];
            notBefore[mark] = struck + 1;
            strike(ranges, openings, sum, longestMm);
            notBefore[mark] = earlier;
        }

        private void follow(Way way, OpeningRange[] ranges, double[] openings, int sum, double longestMm) {
            double distance = spans.distanceMm(way.from(), way.to());
            OpeningRange before = ranges[way.with()];
            OpeningRange range = before.serving(distance, spans.rules);
            if (range.isEmpty()) {
                return;
            }
            ranges[way.with()] = range;
            strikes.strike(way.to(), way.from(), way.with());
            order[way.to()] = ++struck;
            left -= fewest[way.to()];
            double[] kept = keeping(ranges, openings);
            if (kept.length > 0) {
                double longest = way.with() < spans.pinned ? longestMm : Math.max(longestMm, distance);
                strike(ranges, kept, sum + way.steps(), longest);
            }
            left += fewest[way.to()];
            struck--;
            strikes.takeBack(way.to());
            ranges[way.with()] = before;
        }

        private boolean promises(int sum, double longestMm) {
            if (sum + left != bestSum) {
                return sum + left < bestSum;
            }
            return Math.max(longestMm, leastLongestMm) < bestLongestMm - Spans.SLACK_MM;
        }

        /** The ways to strike one mark: one that may stand fewest steps out and has the fewest ways; the most promising way first. */
        private List<Way> next(OpeningRange[] ranges, double[] openings) {
            Map<Integer, List<Way>> byMark = new HashMap<>();
            for (int with = 0; with < ranges.length; with++) {
                Opening opening = spans.openings.get(opening(with));
                for (int pair = 0; pair < opening.pairs(); pair++) {
                    add(byMark, opening.low()[pair], opening.high()[pair], with, openings[with]);
                    add(byMark, opening.high()[pair], opening.low()[pair], with, openings[with]);
                }
            }
            if (isSomeOutOfReach(byMark, ranges)) {
                return List.of();
            }
            List<Way> best = List.of();
            int least = Integer.MAX_VALUE;
            for (int mark = 0; mark < spans.marks(); mark++) {
                List<Way> ways = byMark.getOrDefault(mark, List.of());
                int worth = ways.stream().mapToInt(Way::steps).min().orElse(spans.marks()) * 1_000_000 + ways.size();
                if (!ways.isEmpty() && worth < least) {
                    best = ways;
                    least = worth;
                }
            }
            List<Way> sorted = new ArrayList<>(best);
            sorted.sort((a, b) -> a.steps() != b.steps()
                    ? Integer.compare(a.steps(), b.steps())
                    : Double.compare(a.missMm(), b.missMm()));
            return sorted;
        }

        /** Whether some mark can be struck neither from one that stands nor from one that does not stand yet. */
        private boolean isSomeOutOfReach(Map<Integer, List<Way>> byMark, OpeningRange[] ranges) {
            boolean[] later = new boolean[spans.marks()];
            for (int with = 0; with < ranges.length; with++) {
                Opening opening = spans.openings.get(opening(with));
                for (int pair = 0; pair < opening.pairs(); pair++) {
                    int low = opening.low()[pair];
                    int high = opening.high()[pair];
                    later[low] |= mayStandLater(high);
                    later[high] |= mayStandLater(low);
                }
            }
            for (int mark = 0; mark < later.length; mark++) {
                if (strikes.steps()[mark] == Strikes.FAR && !later[mark] && !byMark.containsKey(mark)) {
                    return true;
                }
            }
            return false;
        }

        private boolean mayStandLater(int mark) {
            return strikes.steps()[mark] == Strikes.FAR && fewest[mark] < spans.mostSteps;
        }

        private void add(Map<Integer, List<Way>> byMark, int from, int to, int with, double openingMm) {
            int steps = strikes.steps()[from];
            if (steps == Strikes.FAR
                    || strikes.steps()[to] != Strikes.FAR
                    || order[from] < notBefore[to]
                    || steps >= spans.mostSteps) {
                return;
            }
            double miss = Math.abs(openingMm - spans.distanceMm(from, to));
            byMark.computeIfAbsent(to, mark -> new ArrayList<>()).add(new Way(from, to, with, steps + 1, miss));
        }

        /** Openings that keep every mark struck so far within the limit: those at hand if they do, nothing when none do. */
        private double[] keeping(OpeningRange[] ranges, double[] openings) {
            double[] tried = openings.clone();
            for (int i = 0; i < tried.length; i++) {
                tried[i] = ranges[i].nearest(tried[i]);
            }
            if (keeps(tried)) {
                return tried;
            }
            double[] least = LeastMisses.forTheGreatest(spans, strikes, ranges, limit.errorMm());
            return keeps(least) ? least : new double[0];
        }

        private boolean keeps(double[] openings) {
            for (int mark = 0; mark < spans.marks(); mark++) {
                if (strikes.isStruck(mark)
                        && !limit.allows(strikes.steps()[mark], LeastMisses.missMm(spans, strikes, openings, mark))) {
                    return false;
                }
            }
            return true;
        }
    }
}
