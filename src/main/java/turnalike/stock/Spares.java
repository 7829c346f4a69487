package turnalike.stock;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import turnalike.units.Parsed;
import turnalike.units.Working;

/**
 * How many blanks to make so that enough good pieces come out. The fewest with which at least the wanted number come out good in 95 of
 * 100 such jobs, when every blank is lost with the same chance and none brings another down with it: the exact binomial.
 */
public final class Spares {
    /** The chance of having enough; chosen, common practice, no source. */
    public static final double WANTED_CHANCE = 0.95;

    /** One blank in twenty; chosen, common practice, no source. Your own record is the better figure. */
    public static final double USUAL_LOSS_RATE = 0.05;

    private static final int MOST_GOOD = 10_000;
    private static final double WORST_LOSS_RATE = 0.9;

    private final int good;
    private final double lossRate;
    private final FewestBlanks.Found found;

    private Spares(int good, double lossRate) {
        this.good = good;
        this.lossRate = lossRate;
        this.found = FewestBlanks.find(good, lossRate, WANTED_CHANCE);
    }

    /**
     * {@return the spares for a count and a loss rate a person gave}
     *
     * @param good good pieces wanted, 1 to 10 000
     * @param lossRate share of blanks that do not become good pieces, 0 to 0.9
     */
    public static Parsed<Spares> read(int good, double lossRate) {
        if (good < 1 || good > MOST_GOOD) {
            return Parsed.refused(
                    "the count must be from 1 to %s, was %s".formatted(MOST_GOOD, good), "give the pieces you need");
        }
        if (!(lossRate >= 0 && lossRate <= WORST_LOSS_RATE)) {
            return Parsed.refused(
                    "the loss rate must be from 0 to %s, was %s".formatted(WORST_LOSS_RATE, lossRate),
                    "give it as a share: 0.05 for one blank in twenty");
        }
        return Parsed.of(new Spares(good, lossRate));
    }

    /**
     * As {@link #read}, but {@link IllegalArgumentException} for what it refuses.
     *
     * @param good good pieces wanted, 1 to 10 000
     * @param lossRate share of blanks that do not become good pieces, 0 to 0.9
     * @return the spares
     */
    public static Spares of(int good, double lossRate) {
        return read(good, lossRate).get();
    }

    /** {@return good pieces wanted} */
    public int good() {
        return good;
    }

    /** {@return share of blanks that are lost, 0 to 0.9} */
    public double lossRate() {
        return lossRate;
    }

    /** {@return blanks to make, spares included} */
    public int blanks() {
        return found.blanks();
    }

    /** {@return blanks beyond the count} */
    public int spares() {
        return found.blanks() - good;
    }

    /** {@return the chance that they give enough good pieces, at least {@link #WANTED_CHANCE}} Accuracy: 1e-10. */
    public double chance() {
        return found.chance();
    }

    /** {@return good pieces to expect on average, over many such jobs} */
    public double expectedGood() {
        return found.blanks() * (1 - lossRate);
    }

    /** {@return how the count was found: the exact binomial, its figures, and how sure it is} */
    public Working working() {
        return new Working(
                "Spares",
                String.format(
                        Locale.ROOT,
                        "the smallest n for which n blanks, each lost with a chance of %s %%, give at least %d good %s in 95 of 100"
                                + " such jobs (exact binomial): n = %d, so %d to spare; they are enough with a chance of %.2f %% and give"
                                + " %.1f good pieces on average",
                        percent(lossRate),
                        good,
                        good == 1 ? "piece" : "pieces",
                        blanks(),
                        spares(),
                        100 * chance(),
                        expectedGood()),
                Working.DERIVED,
                "as sure as the loss rate; blanks from one bad board fail together, which this does not count. The 95 % and the usual"
                        + " loss rate of 5 % are chosen ("
                        + Working.COMMON_PRACTICE
                        + ")");
    }

    /** To four significant digits, none that are zero at the end. */
    private static String percent(double share) {
        BigDecimal percent = BigDecimal.valueOf(share).movePointRight(2).round(new MathContext(4));
        return percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString();
    }
}
