package turnalike.pieces.blanks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.units.Density;
import turnalike.units.Mass;

/**
 * What weighed blanks will give, and which to turn.
 *
 * @param blanks each with its forecast, in the file's order
 * @param law what is known of the shares
 * @param count good pieces wanted
 * @param choose the blanks whose finished masses differ least, in the file's order; all that can be used where there are too few
 * @param spread the greatest of their estimates less the least
 */
public record BlankForecast(List<Forecast> blanks, ShareLaw law, int count, List<Forecast> choose, Mass spread) {
    /** So many shops are drawn for the expected spread, fewer of very large sets. Its standard error is below 1.5 % of it for sets of two or more. */
    private static final int DRAWS = 4000;

    private static final int DRAWN_BLANKS = 4_000_000;
    private static final int FEWEST_DRAWS = 200;

    /** Any; the same input gives the same answer. */
    private static final long SEED = 20_261_128L;

    /**
     * One blank with what it is measured to be.
     *
     * @param blank as weighed
     * @param density its mass over its own volume
     * @param expected what the finished piece would weigh, were all as drawn and the wood the same all through
     * @param unusable why no piece can be had from it; empty when one can
     */
    public record Measured(WeighedBlank blank, Density density, Mass expected, Optional<String> unusable) {}

    /**
     * What one blank will give.
     *
     * @param measured the blank
     * @param finished the estimate; what it weighs, where it is finished
     * @param from the lower end of the interval; the same as {@code finished} where it is finished
     * @param to its upper end
     */
    public record Forecast(Measured measured, Mass finished, Mass from, Mass to) {
        /** {@return whether it is turned already} */
        public boolean isFinished() {
            return measured.blank().finished().isPresent();
        }

        /** {@return what is written on it} */
        public String label() {
            return measured.blank().label();
        }
    }

    public BlankForecast {
        blanks = List.copyOf(blanks);
        choose = List.copyOf(choose);
    }

    /**
     * {@return what these blanks will give}
     *
     * @param measured the blanks, in the file's order
     * @param count good pieces wanted, 1 or more
     * @param stated the scatter to go by while nothing is finished, as a share of a piece's mass; above zero
     */
    public static BlankForecast of(List<Measured> measured, int count, double stated) {
        List<Double> shares = new ArrayList<>();
        for (Measured each : measured) {
            each.blank()
                    .finished()
                    .ifPresent(mass -> shares.add(mass.grams() / each.expected().grams()));
        }
        ShareLaw law = ShareLaw.of(stated, shares);
        List<Forecast> all = measured.stream().map(each -> forecast(each, law)).toList();
        List<Forecast> usable = all.stream()
                .filter(each -> each.measured().unusable().isEmpty())
                .toList();
        LeastSpread least = LeastSpread.of(
                usable.stream().map(each -> each.finished().grams()).toList(), count);
        List<Forecast> chosen = least.chosen().stream().map(usable::get).toList();
        return new BlankForecast(all, law, count, chosen, Mass.ofGrams(least.spreadG()));
    }

    private static Forecast forecast(Measured each, ShareLaw law) {
        if (each.blank().finished().isPresent()) {
            Mass known = each.blank().finished().get();
            return new Forecast(each, known, known, known);
        }
        double expectedG = each.expected().grams();
        double half = law.halfWidth();
        return new Forecast(
                each,
                Mass.ofGrams(expectedG * law.mean()),
                Mass.ofGrams(expectedG * Math.max(0, law.mean() - half)),
                Mass.ofGrams(expectedG * (law.mean() + half)));
    }

    /**
     * {@return the greatest less the least of what the chosen will really weigh, on average} Simulated with a fixed seed, anew at each
     * asking.
     */
    public Mass expectedSpread() {
        if (choose.isEmpty()) {
            return Mass.ofGrams(0);
        }
        Random random = new Random(SEED);
        int draws = Math.max(FEWEST_DRAWS, Math.min(DRAWS, DRAWN_BLANKS / choose.size()));
        double sum = 0;
        for (int draw = 0; draw < draws; draw++) {
            ShareLaw.Shop shop = law.draw(random);
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Forecast each : choose) {
                double massG = each.isFinished()
                        ? each.finished().grams()
                        : each.measured().expected().grams() * shop.share(random);
                least = Math.min(least, massG);
                most = Math.max(most, massG);
            }
            sum += most - least;
        }
        return Mass.ofGrams(sum / draws);
    }

    /** {@return blanks that are neither chosen nor finished and can be turned, nearest the middle of the chosen first: the spares} */
    public List<Forecast> spares() {
        double middle = choose.isEmpty()
                ? 0
                : choose.stream()
                        .mapToDouble(each -> each.finished().grams())
                        .average()
                        .orElseThrow();
        Set<String> taken = choose.stream().map(Forecast::label).collect(Collectors.toSet());
        return blanks.stream()
                .filter(each -> !taken.contains(each.label())
                        && each.measured().unusable().isEmpty()
                        && !each.isFinished())
                .sorted((one, other) -> Double.compare(
                        Math.abs(one.finished().grams() - middle),
                        Math.abs(other.finished().grams() - middle)))
                .toList();
    }

    /** {@return how many pieces are missing to the count} */
    public int missing() {
        return count - choose.size();
    }
}
