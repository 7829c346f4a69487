package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/**
 * A choice to begin with that keeps every mark's whole error within the limit: an opening set exactly for every distance stepped, then of
 * those each dropped that is not missed. A mark that even so is not reached, as the dividers do not open as wide as it needs, comes from
 * the stick.
 */
final class SoundStart {
    /** Partial ways looked at for each choice: enough to see most that are sound. */
    static final int FEW_NODES = 100;

    private final Spans spans;
    private final Spans.WholeLimit limit;
    private final SoundPaths paths;
    private final StepCount count;
    private int[] stick;
    private Strikes strikes;
    private double[] missMm = new double[0];
    private final List<Integer> openings = new ArrayList<>();
    private final List<Double> openingsMm = new ArrayList<>();

    private SoundStart(Spans spans) {
        this.spans = spans;
        this.limit = spans.whole.orElseThrow();
        this.paths = new SoundPaths(spans, FEW_NODES);
        this.count = new StepCount(spans);
        this.stick = spans.stick;
        this.strikes = Strikes.none(spans, stick);
    }

    /**
     * A choice that keeps to the limit.
     *
     * @param relaxed a choice that reaches every mark, whatever the errors
     * @return the relaxed one where that keeps to it; it takes more from the stick than is decided only if it cannot do without
     */
    static Choice of(Spans spans, Choice relaxed, Effort effort) {
        SoundStart start = new SoundStart(spans);
        Optional<Choice> good = start.judge(relaxed.openings());
        return good.isPresent() ? good.orElseThrow() : start.drop(start.exact(), effort);
    }

    private Optional<Choice> judge(int[] chosen) {
        count.useStick(stick);
        count.count(chosen, chosen.length);
        return paths.judge(count, chosen, chosen.length);
    }

    private Choice exact() {
        for (int unreached = strikeAll(); unreached > 0; unreached = strikeAll()) {
            int mark = IntStream.range(0, spans.marks())
                    .filter(each -> strikes.steps()[each] == Strikes.FAR)
                    .findFirst()
                    .orElseThrow();
            stick = IntStream.concat(Arrays.stream(stick), IntStream.of(mark)).toArray();
        }
        double longest = IntStream.range(0, spans.marks())
                .filter(mark -> strikes.isStruck(mark) && strikes.with()[mark] >= spans.pinned)
                .mapToDouble(mark -> spans.distanceMm(mark, strikes.from()[mark]))
                .max()
                .orElse(0);
        int[] chosen = openings.stream().mapToInt(Integer::intValue).toArray();
        return Choice.of(chosen, stick, strikes, longest);
    }

    /** Strikes what can be struck, round by round, and tells how many marks cannot. */
    private int strikeAll() {
        strikes = Strikes.none(spans, stick);
        missMm = new double[spans.marks()];
        openings.clear();
        openingsMm.clear();
        for (int round = 1; round <= spans.mostSteps; round++) {
            for (int mark = 0; mark < spans.marks(); mark++) {
                if (strikes.steps()[mark] == Strikes.FAR) {
                    strike(mark, round);
                }
            }
        }
        return (int) Arrays.stream(strikes.steps())
                .filter(steps -> steps == Strikes.FAR)
                .count();
    }

    /** One way to strike a mark: from where, the opening it is in (see {@link Spans#openings}), what that is set to, and the mark's miss then. */
    private record Exact(int from, int opening, double openingMm, double missMm, double distanceMm) {}

    private void strike(int mark, int round) {
        List<Exact> ways = new ArrayList<>();
        for (int index = 0; index < spans.openings.size(); index++) {
            Opening opening = spans.openings.get(index);
            for (int pair = 0; pair < opening.pairs(); pair++) {
                int low = opening.low()[pair];
                int high = opening.high()[pair];
                int from = low == mark ? high : high == mark ? low : mark;
                if (strikes.steps()[from] == round - 1) {
                    ways.add(way(index, from, mark));
                }
            }
        }
        ways.removeIf(way -> !limit.allows(round, way.missMm()));
        ways.stream()
                .min(Comparator.comparingDouble((Exact way) -> Math.abs(way.missMm()))
                        .thenComparing(way -> way.opening() >= spans.pinned)
                        .thenComparing(Exact::distanceMm))
                .ifPresent(way -> {
                    strikes.strike(mark, way.from(), counted(way));
                    missMm[mark] = way.missMm();
                });
    }

    private Exact way(int index, int from, int mark) {
        double distance = spans.distanceMm(from, mark);
        double set = index < spans.pinned ? spans.rules.pinnedMm()[index] : Math.min(distance, spans.rules.largestMm());
        double miss = missMm[from] + (mark > from ? set - distance : distance - set);
        return new Exact(from, index, set, Math.abs(miss) <= Spans.SLACK_MM ? 0 : miss, distance);
    }

    /** The number by which the strikes count that opening; distances alike share one. */
    private int counted(Exact way) {
        if (way.opening() < spans.pinned) {
            return way.opening();
        }
        for (int i = 0; i < openings.size(); i++) {
            if (Math.abs(openingsMm.get(i) - way.openingMm()) <= Spans.SLACK_MM) {
                return spans.pinned + i;
            }
        }
        openings.add(way.opening());
        openingsMm.add(way.openingMm());
        return spans.pinned + openings.size() - 1;
    }

    private Choice drop(Choice sound, Effort effort) {
        Choice best = sound;
        List<Integer> kept = new ArrayList<>();
        IntStream.of(sound.openings()).forEach(kept::add);
        kept.sort(Comparator.comparing(i -> spans.openings.get(i).pairs()));
        for (int at = 0; at < kept.size() && !effort.spent(); ) {
            Integer dropped = kept.remove(at);
            Optional<Choice> fewer =
                    judge(kept.stream().mapToInt(Integer::intValue).toArray());
            if (fewer.isEmpty()) {
                kept.add(at++, dropped);
            }
            best = fewer.orElse(best);
        }
        return best;
    }
}
