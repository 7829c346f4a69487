package turnalike.frame;

import turnalike.units.Mass;

/**
 * How an unbalance compares with the balance grades machine builders use, for information only. Grade G is specific unbalance × angular
 * speed in mm/s, so the permissible unbalance is U = G·m / ω = (60000 / 2π)·G·m / n with m in kg and n in rev/min, giving g·mm.
 * Source: ISO 21940-11:2016 (formerly ISO 1940-1), formula seen in a tooling catalogue's page on balancing (WIDIA), whose constant 9549 is
 * 60000 / 2π rounded. At the speeds of hand-cranked wheels the allowance grows without limit, so it must not be the only aim.
 *
 * @param mmPerS the grade G in mm/s: 6.3 for flywheels and general machines, 16 for farm machinery, 40 for road wheels; positive
 */
public record BalanceGrade(double mmPerS) {
    public BalanceGrade {
        if (!(mmPerS > 0) || !Double.isFinite(mmPerS)) {
            throw new IllegalArgumentException("a balance grade must be positive, was %s mm/s".formatted(mmPerS));
        }
    }

    /**
     * {@return the permissible unbalance in g·mm of a body of that mass at that speed in rev/min; both positive}
     *
     * @param mass of the whole body
     * @param revPerMin turns in a minute
     */
    public double permissibleGMm(Mass mass, double revPerMin) {
        return mmPerS * mass.grams() / radPerS(revPerMin);
    }

    /**
     * {@return the grade that an unbalance of {@code gMm} g·mm just meets: U·ω / m}
     *
     * @param gMm unbalance
     * @param mass of the whole body
     * @param revPerMin turns in a minute
     */
    public static BalanceGrade met(double gMm, Mass mass, double revPerMin) {
        return new BalanceGrade(gMm * radPerS(revPerMin) / mass.grams());
    }

    private static double radPerS(double revPerMin) {
        return 2 * Math.PI * revPerMin / 60;
    }
}
