package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.MassScatter;
import turnalike.pattern.Stock;
import turnalike.pieces.blanks.BlankForecast;
import turnalike.pieces.blanks.ShareLaw;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.solid.Solid;
import turnalike.stock.Blank;
import turnalike.stock.LossRecord;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.Working;
import turnalike.wood.Wood;

/**
 * What a job's weighed blanks will give.
 *
 * @param job the order
 * @param forecast of each blank, and which to turn
 * @param losses how many come to nothing
 * @param questions what looks like a slip, in the file's order: it is used as it stands
 */
public record BlanksReport(Job job, BlankForecast forecast, LossRecord losses, List<Problem> questions) {
    /**
     * Wood substance without a hollow, every cell wall swollen full: no blank is heavier. Wood Handbook equation, FPL-GTR-282: 4-3,
     * has 1.54 for it (VERIFIED, S3).
     */
    private static final double DENSEST = 1540;

    /** Below it lies the lightest wood in trade, balsa at its lightest (from memory). */
    private static final double LIGHTEST = 80;

    /** A finished piece this far from what its blank foretells was weighed or drawn otherwise (common practice, no source). */
    private static final double FAR_OFF = 0.15;

    public BlanksReport {
        questions = List.copyOf(questions);
    }

    /**
     * {@return what keeps these blanks from being reckoned with, in order; empty when nothing does}
     *
     * @param job the order
     * @param blanks as read
     */
    public static List<Problem> problems(Job job, List<WeighedBlank> blanks) {
        List<Problem> out = new ArrayList<>();
        for (WeighedBlank blank : blanks) {
            double density = density(job, blank).kgPerM3();
            if (density > DENSEST) {
                out.add(
                        new Problem(
                                "blank " + blank.label(),
                                String.format(
                                        Locale.ROOT,
                                        "%s in %s are %.0f kg/m3: heavier than any wood full of water",
                                        job.tolerances().weighing().reading(blank.mass()),
                                        of(job, blank).text(job.units()),
                                        density),
                                "check its weight and size; wood substance itself has 1540 kg/m3 (Wood Handbook equation, FPL-GTR-282: 4-3)"));
            }
        }
        return out;
    }

    /**
     * {@return the report}
     *
     * @param job the order
     * @param blanks as read, with none of {@link #problems}
     */
    public static BlanksReport of(Job job, List<WeighedBlank> blanks) {
        return of(job, blanks, BlankLog.NONE);
    }

    /**
     * {@return the report, corrected by what a job's own log says}
     *
     * @param job the order
     * @param blanks as read, with none of {@link #problems}
     * @param log of the pieces turned so far
     */
    public static BlanksReport of(Job job, List<WeighedBlank> blanks, BlankLog log) {
        List<BlankForecast.Measured> measured =
                log.onto(blanks).stream().map(each -> measured(job, each)).toList();
        double stated = scatter(job).shareByBlank();
        List<Problem> questions = new ArrayList<>(questions(job, measured));
        log.heavier(blanks)
                .forEach(label -> questions.add(new Problem(
                        "blank " + label,
                        "the log says that its piece weighs more than it does: it counts as not turned yet",
                        "weigh both again, or give one of them another label")));
        return new BlanksReport(
                job, BlankForecast.of(measured, job.count(), stated), log.losses(job.lossRate(), blanks), questions);
    }

    private static MassScatter scatter(Job job) {
        return MassScatter.of(
                job.pattern(), job.wood().density(), job.tolerances().diameter());
    }

    private static Blank of(Job job, WeighedBlank blank) {
        Stock stock = job.pattern().stock();
        return new Blank(
                stock.section(),
                blank.size().orElse(stock.size()),
                blank.length().orElse(stock.length()));
    }

    private static Density density(Job job, WeighedBlank blank) {
        return Density.ofKgPerM3(blank.mass().grams() / of(job, blank).timber().mm3() * 1e6);
    }

    private static BlankForecast.Measured measured(Job job, WeighedBlank blank) {
        Density density = density(job, blank);
        return new BlankForecast.Measured(
                blank, density, Solid.of(job.pattern().outline(), density).mass(), unusable(job, blank));
    }

    private static Optional<String> unusable(Job job, WeighedBlank blank) {
        if (blank.lost()) {
            return Optional.of("lost");
        }
        if (blank.finished().isPresent()) {
            return Optional.empty();
        }
        Length run = job.pattern().length();
        if (blank.length().filter(length -> length.mm() < run.mm() - 1e-9).isPresent()) {
            return Optional.of("shorter than the piece, %s".formatted(run.format(job.units())));
        }
        Stock stock = job.pattern().stock();
        double needed = 2 * job.pattern().outline().largestRadius().mm();
        return blank.size()
                        .filter(size ->
                                size.mm() < Math.min(needed, stock.size().mm()) - 1e-9)
                        .isPresent()
                ? Optional.of("thinner than the piece, %s"
                        .formatted(Length.ofMm(needed).format(job.units())))
                : Optional.empty();
    }

    private static List<Problem> questions(Job job, List<BlankForecast.Measured> measured) {
        List<Problem> out = new ArrayList<>();
        for (BlankForecast.Measured each : measured) {
            String where = "blank " + each.blank().label();
            double density = each.density().kgPerM3();
            Optional<Density> most = wettest(job);
            if (most.filter(full -> density > full.kgPerM3()).isPresent()) {
                out.add(new Problem(
                        where,
                        String.format(
                                Locale.ROOT,
                                "%.0f kg/m3 is more than this wood has full of water, about %.0f: is its weight right?",
                                density,
                                most.orElseThrow().kgPerM3()),
                        "weigh it again, or give its own size"));
            } else if (density < LIGHTEST) {
                out.add(new Problem(
                        where,
                        String.format(
                                Locale.ROOT, "%.0f kg/m3 is lighter than any wood: is its weight right?", density),
                        "weigh it again, or give its own size"));
            }
            each.blank()
                    .finished()
                    .map(mass -> mass.grams() / each.expected().grams() - 1)
                    .filter(off -> Math.abs(off) > FAR_OFF)
                    .ifPresent(off -> out.add(new Problem(
                            where,
                            String.format(
                                    Locale.ROOT,
                                    "its piece is %.0f %% %s than its blank foretells: are both weights right, and is it this pattern?",
                                    100 * Math.abs(off),
                                    off > 0 ? "heavier" : "lighter"),
                            "weigh both again")));
        }
        moistures(measured).ifPresent(out::add);
        return out;
    }

    /** Pieces of different moisture weigh alike only until they have dried alike. */
    private static Optional<Problem> moistures(List<BlankForecast.Measured> measured) {
        double[] pct = measured.stream()
                .flatMap(each -> each.blank().moisture().stream())
                .mapToDouble(each -> each.pct())
                .sorted()
                .toArray();
        if (pct.length < 2 || pct[pct.length - 1] - pct[0] < 0.5) {
            return Optional.empty();
        }
        double later = 100 * (1 - (100 + pct[0]) / (100 + pct[pct.length - 1]));
        return Optional.of(new Problem(
                "moisture",
                String.format(
                        Locale.ROOT,
                        "blanks of %.1f to %.1f %% are compared as they are: once dried alike the wettest will have lost %.1f %% of its weight",
                        pct[0],
                        pct[pct.length - 1],
                        later),
                "let them come to one moisture and weigh them again"));
    }

    /** What the job's wood weighs with every hollow full of water; empty where only a density is known. */
    private static Optional<Density> wettest(Job job) {
        return job.wood().match(new Wood.Cases<>() {
            @Override
            public Optional<Density> species(Wood.OfSpecies wood) {
                return Optional.of(Wood.of(wood.species(), wood.species().maximumMoisture())
                        .density());
            }

            @Override
            public Optional<Density> density(Wood.OfDensity wood) {
                return Optional.empty();
            }
        });
    }

    /** {@return how many blanks are still to be turned of those chosen} */
    public int toTurn() {
        return (int)
                forecast.choose().stream().filter(each -> !each.isFinished()).count();
    }

    /** {@return the chance that enough of the chosen and the spares come out good} Weights are not asked for here. */
    public double chanceOfEnough() {
        int inHand = forecast.choose().size() - toTurn();
        return losses.chance(job.count() - inHand, toTurn() + forecast.spares().size());
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        ShareLaw law = forecast.law();
        double stated = scatter(job).shareByBlank();
        return List.of(
                new Working(
                        "finished masses",
                        String.format(
                                Locale.ROOT,
                                "the blank's mass over its own volume, times the solid's volume, times the mean share %.4f; 90 %% of them"
                                        + " within %.2f %% of it. A share is a finished mass over that product: normal, its mean and scatter"
                                        + " unknown; beforehand mean 1, known as by one piece, and scatter %.2f %%, known as by 4 degrees of"
                                        + " freedom; corrected by %d finished",
                                law.mean(),
                                100 * law.halfWidth(),
                                100 * stated,
                                law.freedom() - 4),
                        "the normal law with its conjugate prior (from memory); the scatter beforehand "
                                + Working.DERIVED
                                + " from the diameter tolerance, and 1 % for wood that is not the same all through (chosen, "
                                + Working.COMMON_PRACTICE + ")",
                        "holds for shops that scatter as the prior says; finished masses are at the blank's own moisture"),
                new Working(
                        "which to turn",
                        "the run of neighbours in order of estimated mass whose ends differ least; of those equally narrow the one nearest"
                                + " the median of all; finished pieces count as they weigh and may be left out",
                        Working.DERIVED,
                        "no other choice has a smaller difference of the estimates; what the pieces will really weigh is told as"
                                + " an expectation over 4000 simulated shops with a fixed seed"),
                new Working(
                        "how many come out",
                        String.format(
                                Locale.ROOT,
                                "a Beta law: %.1f %% told, counted as 20 blanks, then %d lost and %d good seen: %.1f %%",
                                100 * losses.told(),
                                losses.lost(),
                                losses.good(),
                                100 * losses.rate()),
                        "the Beta-binomial law (from memory); the 20 chosen, " + Working.COMMON_PRACTICE,
                        "each blank is taken to be lost by the same chance, whatever becomes of the others"));
    }

    /** {@return the mean of the estimates of the chosen, for printing} */
    public Mass meanOfChosen() {
        return Mass.ofGrams(forecast.choose().stream()
                .mapToDouble(each -> each.finished().grams())
                .average()
                .orElse(0));
    }
}
