package turnalike.stock;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The fewest blanks that give at least {@code good} good pieces with a wanted chance, each blank lost with the same chance on its own.
 *
 * <p>The number of blanks used up when the good-th good piece comes out has the chances
 * {@code P(n) = C(n-1, good-1) q^good p^(n-good)}; their running sum is the binomial tail asked for, so one pass upward over n finds
 * the first that reaches it. Each term follows from the one before by {@code p n / (n - good + 1)}: no logarithm, no factorial, no
 * cancellation. The first terms are far below the smallest double (0.1^10000), so they carry a power of two beside them. Derived here.
 *
 * <p>Accuracy: the relative error of a term grows by at most 4 roundings a step, below 1e-10 after 200 000; sums that near to the
 * wanted chance are settled in decimal arithmetic on the loss rate as it was written. Cost: one step per blank.
 */
final class FewestBlanks {
    /** Far above the error of the running sum, far below any one term where sums pass the wanted chance. */
    private static final double TOO_NEAR = 1e-9;

    private static final int STEP = 500;
    private static final double SMALL = 0x1p-500;
    private static final MathContext DIGITS = new MathContext(50);

    private FewestBlanks() {}

    /**
     * @param blanks the fewest
     * @param chance that they give enough good pieces
     */
    record Found(int blanks, double chance) {}

    /** {@code good} at least 1, {@code lossRate} in [0, 1), {@code wanted} in (0, 1): the caller has checked. */
    static Found find(int good, double lossRate, double wanted) {
        double mantissa = 1;
        int exponent = 0;
        for (int i = 0; i < good; i++) {
            mantissa *= 1 - lossRate;
            if (mantissa < SMALL) {
                mantissa /= SMALL;
                exponent -= STEP;
            }
        }
        double sum = 0;
        for (int n = good; ; n++) {
            sum += Math.scalb(mantissa, exponent);
            if (sum > wanted + TOO_NEAR || (sum >= wanted - TOO_NEAR && reaches(good, lossRate, n, wanted))) {
                return new Found(n, Math.min(sum, 1));
            }
            mantissa *= lossRate * n / (n - good + 1);
            if (mantissa > 1 && exponent < 0) {
                mantissa *= SMALL;
                exponent += STEP;
            }
        }
    }

    /** Whether n blanks reach the wanted chance, to 50 digits. */
    static boolean reaches(int good, double lossRate, int blanks, double wanted) {
        BigDecimal loss = BigDecimal.valueOf(lossRate);
        BigDecimal term = BigDecimal.ONE.subtract(loss).pow(good, DIGITS);
        BigDecimal sum = term;
        for (int n = good; n < blanks; n++) {
            term = term.multiply(loss, DIGITS)
                    .multiply(BigDecimal.valueOf(n), DIGITS)
                    .divide(BigDecimal.valueOf(n - good + 1L), DIGITS);
            sum = sum.add(term, DIGITS);
        }
        return sum.compareTo(BigDecimal.valueOf(wanted)) >= 0;
    }
}
