package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.pattern.PlacedMember;
import turnalike.stock.SetChance;
import turnalike.stock.Spares;
import turnalike.stock.StockPlan;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How the finished weights will differ, and how likely a set passes the mass tolerance, before any piece is turned.
 *
 * @param job the order
 * @param scatter of single pieces
 * @param blanks as many as the plan has
 * @param asTheyCome chances with blanks taken as they come
 * @param byWeight chances with blanks chosen by their weight
 */
public record SpreadForecast(Job job, MassScatter scatter, int blanks, SetChance asTheyCome, SetChance byWeight) {
    /** The chance that is planned for, the same as for losses. */
    public static final double WANTED = Spares.WANTED_CHANCE;

    static SpreadForecast of(Job job, StockPlan stock) {
        MassScatter scatter = MassScatter.of(job);
        double pct = job.tolerances().massPct();
        return new SpreadForecast(
                job,
                scatter,
                stock.spares().blanks(),
                new SetChance(job.count(), scatter.shareAsItComes(), pct),
                new SetChance(job.count(), scatter.shareByBlank(), pct));
    }

    /** {@return the words, a heading and then each way to take the blanks, indented} */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        int most = 0;
        for (int i = 1; i < scatter.byMember().size(); i++) {
            most = scatter.byMember().get(i).compareTo(scatter.byMember().get(most)) > 0 ? i : most;
        }
        PlacedMember member = job.pattern().placed().get(most);
        out.add(String.format(
                Locale.ROOT,
                "Weights    will scatter by %.1f g (%.1f %%) from turning within %s, most of it the %s's %.1f g",
                scatter.turned().grams(),
                100 * scatter.turnedShare(),
                job.tolerances().diameter().format(job.units()),
                member.caption(),
                scatter.byMember().get(most).grams()));
        if (job.count() == 1) {
            return out; // a set of one differs from nothing
        }
        out.add("  blanks as they come: wood differs by 10 % from one to the next, so " + chance(asTheyCome));
        out.add("  blanks chosen alike by weight, as `blanks` does: 1 % is left, so " + chance(byWeight));
        return out;
    }

    private String chance(SetChance chances) {
        String now = String.format(
                Locale.ROOT,
                "a set of %d within %s %% comes out of %d blanks with a chance of %s",
                job.count(),
                plain(job.tolerances().massPct()),
                blanks,
                percent(chances.ofBlanks(blanks, job.lossRate())));
        Optional<Integer> wanted = chances.blanksFor(WANTED, job.lossRate());
        if (wanted.isEmpty()) {
            return now + ", and %d do not give 95 %%".formatted(job.count() + SetChance.MOST_MORE);
        }
        int spares = wanted.get() - job.count();
        return spares <= blanks - job.count()
                ? now
                : now + "; turn %d spares rather than %d for 95 %%".formatted(spares, blanks - job.count());
    }

    /** Never rounded up to sure, nor a small chance down to none: a simulation tells neither. */
    private static String percent(double chance) {
        double pct = 100 * chance;
        if (pct < 1) {
            return "less than 1 %";
        }
        return String.format(Locale.ROOT, "%.0f %%", Math.min(pct, 99));
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        UnitSystem units = job.units();
        return List.of(
                MassScatter.working(job.tolerances().diameter(), units),
                new Working(
                        "chance of a set",
                        "%d pieces and up to %d more, normal, drawn some thousand times with a fixed seed: in how many draws some run of neighbours in order of mass lies within %s %% of its mean; times the binomial chance of so many good ones"
                                .formatted(
                                        job.count(),
                                        SetChance.MOST_MORE,
                                        plain(job.tolerances().massPct())),
                        Working.DERIVED,
                        "to about one point in a hundred as the scatter is told, two and a half for very large sets; the scatter itself is the doubtful part"));
    }
}
