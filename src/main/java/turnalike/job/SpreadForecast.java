package turnalike.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.stock.SetChance;
import turnalike.stock.Spares;
import turnalike.stock.StockPlan;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How the finished weights will differ, and how likely a set passes the mass tolerance, before any piece is turned.
 *
 * @param job the order
 * @param scatter of single pieces
 * @param blanks as many as the plan has
 * @param chances of a set; empty for more than one group of legs, each of which is a set, and for very many pieces or
 *     spares, of which nothing is simulated
 */
public record SpreadForecast(Job job, MassScatter scatter, int blanks, Optional<Chances> chances) {
    /** More pieces than this make a page wait for them. */
    private static final int MOST_PIECES = 1000;

    /** So many spares are always looked at; up to five times as many where so many are planned. */
    private static final int SPARES = 40;

    private static final int MOST_SPARES = 5 * SPARES;

    /** The chance that is planned for, the same as for losses. */
    public static final double WANTED = Spares.WANTED_CHANCE;

    /**
     * The chances that a set comes out.
     *
     * @param asTheyCome with blanks taken as they come
     * @param byWeight with blanks chosen alike by their weight
     */
    public record Chances(SetChance asTheyCome, SetChance byWeight) {}

    static SpreadForecast of(Job job, StockPlan stock) {
        MassScatter scatter = MassScatter.of(job);
        int planned = stock.spares().spares();
        boolean oneSet = job.frame()
                .map(frame -> frame.group().orElse(job.count()) >= job.count())
                .orElse(true);
        Optional<Chances> chances = oneSet && job.count() <= MOST_PIECES && planned <= MOST_SPARES
                ? Optional.of(chances(job, scatter, Math.max(SPARES, planned)))
                : Optional.empty();
        return new SpreadForecast(job, scatter, stock.spares().blanks(), chances);
    }

    private static Chances chances(Job job, MassScatter scatter, int spares) {
        double pct = job.tolerances().massPct();
        return new Chances(
                new SetChance(job.count(), scatter.shareAsItComes(), pct, spares),
                new SetChance(job.count(), scatter.shareByBlank(), pct, spares));
    }

    /**
     * {@return the words: how weights scatter, and what that makes of a set}
     */
    public String sentence() {
        int most = 0;
        for (int i = 1; i < scatter.byMember().size(); i++) {
            most = scatter.byMember().get(i).compareTo(scatter.byMember().get(most)) > 0 ? i : most;
        }
        PlacedMember member = job.pattern().placed().get(most);
        String turning = String.format(
                Locale.ROOT,
                "%s within %s scatters them by %s (%.1f %%), most of it the %s's %s",
                hasSquares() ? "milling and turning" : "turning", // a square is as true as the blank was milled
                job.tolerances().diameter().format(job.units()),
                told(scatter.turned()),
                100 * scatter.turnedShare(),
                member.caption(),
                told(scatter.byMember().get(most)));
        if (job.count() == 1 || chances.isEmpty()) {
            return turning; // a set of one differs from nothing
        }
        Chances of = chances.get();
        return turning
                + ("; a set within %s %% comes of these blanks %s when they are chosen alike by weight, %s when they are taken as they"
                                + " come%s")
                        .formatted(
                                PlainNumber.exact(job.tolerances().massPct()),
                                inHundred(of.byWeight().ofBlanks(blanks, job.lossRate())),
                                inHundred(of.asTheyCome().ofBlanks(blanks, job.lossRate())),
                                spares(of.byWeight()));
    }

    private boolean hasSquares() {
        return job.pattern().members().stream().anyMatch(each -> each.section() == Section.SQUARE);
    }

    private String spares(SetChance byWeight) {
        Optional<Integer> wanted = byWeight.blanksFor(WANTED, job.lossRate());
        int planned = blanks - job.count();
        return wanted.map(blanksFor95 -> blanksFor95 - job.count())
                .map(spares -> spares <= planned
                        ? ""
                        : ": turn %d spares rather than %d to have it 95 times in 100".formatted(spares, planned))
                .orElse(": even %d spares do not give it 95 times in 100".formatted(byWeight.mostMore()));
    }

    /** Never rounded up to sure, nor a small chance down to none: a simulation tells neither. */
    private static String inHundred(double chance) {
        double pct = 100 * chance;
        return pct < 1.5
                ? "once in 100 times or less"
                : String.format(Locale.ROOT, "%.0f times in 100", Math.min(pct, 99));
    }

    /** In tenths of a gram, hundredths of an ounce; of small work, one figure: nothing scatters by 0.0 g. */
    private String told(Mass mass) {
        MassUnit unit = job.tolerances().masses();
        int decimals = unit == MassUnit.GRAM ? 1 : 2;
        double count = unit.count(mass);
        String figure = count >= Math.pow(10, -decimals)
                ? String.format(Locale.ROOT, "%." + decimals + "f", count)
                : PlainNumber.toFigures(count, 1);
        return figure + " " + unit.symbol();
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        UnitSystem units = job.units();
        return List.of(
                MassScatter.working(job.tolerances().diameter(), units),
                new Working(
                        "chance of a set",
                        ("%d pieces and up to %d more, or as many as are planned, normal, drawn some thousand times with a fixed"
                                        + " seed: in how many draws some run of neighbours in order of mass lies within %s %% of its mean; times"
                                        + " the binomial chance of so many good ones")
                                .formatted(
                                        job.count(),
                                        SPARES,
                                        PlainNumber.exact(job.tolerances().massPct())),
                        Working.DERIVED,
                        "to about one point in a hundred as the scatter is told, two and a half for very large sets; the scatter"
                                + " itself is the doubtful part"));
    }
}
