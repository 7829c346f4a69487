package turnalike.frame;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Locale;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;

/**
 * How strongly, and toward where, something off the axle pulls: the first moment of mass about the axle, in g·mm.
 *
 * @param gMm its size; finite and not negative, else {@link IllegalArgumentException}
 * @param at its direction, kept in [0°, 360°); 0° when the size is 0
 */
public record Moment(double gMm, Angle at) {
    /** Nothing less is told in figures: the third decimal of a g·mm is a hair's breadth of a milligram. */
    private static final double LEAST_GMM = 0.001;

    /** No pull at all. */
    public static final Moment NONE = new Moment(0, Angle.ofDegrees(0));

    public Moment {
        if (!Double.isFinite(gMm) || gMm < 0) {
            throw new IllegalArgumentException("a moment must be finite and not negative, was %s g·mm".formatted(gMm));
        }
        gMm += 0.0; // see Length
        at = gMm == 0 ? Angle.ofDegrees(0) : at.aroundOnce();
    }

    /**
     * From its two components: x toward 0°, y toward 90°, both in g·mm.
     *
     * @param xGMm toward 0°
     * @param yGMm toward 90°
     * @return the pull with these components
     */
    public static Moment ofComponents(double xGMm, double yGMm) {
        double square = xGMm * xGMm + yGMm * yGMm;
        // Asked for by the hundred thousand where every order is looked at: the root alone, but where squares run out
        // of a double's range.
        boolean plain = square > 1e-250 && square < 1e250;
        return new Moment(plain ? Math.sqrt(square) : Math.hypot(xGMm, yGMm), Angle.ofRadians(Math.atan2(yGMm, xGMm)));
    }

    /** {@return its size as it is told to people, {@code 67.0 g·mm}: three figures, which no scale in a shop passes, none of them a power of ten below ten million} */
    public String format() {
        return figure(gMm) + " g·mm";
    }

    /**
     * {@return the same, but of less than what is told at all only that: {@code under 2 g·mm}} Digits of chance are no balance.
     *
     * @param leastGMm the least that is told in figures, in g·mm, not negative; it is rounded up to one figure
     */
    public String format(double leastGMm) {
        return gMm < leastGMm
                ? "under %s g·mm"
                        .formatted(BigDecimal.valueOf(leastGMm)
                                .round(new MathContext(1, RoundingMode.UP))
                                .toPlainString())
                : format();
    }

    /**
     * {@return the same of a size alone, without its unit}
     *
     * @param gMm in g·mm, not negative
     */
    public static String figure(double gMm) {
        if (gMm >= 100 && gMm < 1e7) {
            return PlainNumber.toFigures(gMm, 3);
        }
        if (gMm < LEAST_GMM) {
            return gMm == 0 ? "0" : "under " + LEAST_GMM;
        }
        return String.format(Locale.ROOT, gMm < 0.01 ? "%.3f" : "%.3g", gMm);
    }

    /** {@return the component toward 0°, in g·mm} */
    public double xGMm() {
        return gMm * Math.cos(at.radians());
    }

    /** {@return the component toward 90°, in g·mm} */
    public double yGMm() {
        return gMm * Math.sin(at.radians());
    }

    /**
     * {@return the pull of all of them together}
     *
     * @param moments in any order; none gives no pull
     */
    public static Moment sum(Collection<Moment> moments) {
        double xGMm = 0;
        double yGMm = 0;
        for (Moment moment : moments) {
            xGMm += moment.xGMm();
            yGMm += moment.yGMm();
        }
        return ofComponents(xGMm, yGMm);
    }

    /** {@return the same size the other way} */
    public Moment opposite() {
        return new Moment(gMm, Angle.ofDegrees(at.degrees() + 180));
    }

    /**
     * {@return the weight that cancels this moment: U / radius, opposite to it} Where wood is taken off instead, the same mass comes off at
     * this moment's own direction.
     *
     * @param radius where the weight's own balance point sits, from the axle; positive, else {@link IllegalArgumentException}
     */
    public Counterweight counterweight(Length radius) {
        if (!radius.isPositive()) {
            throw new IllegalArgumentException(
                    "counterweight radius must be positive, was %s mm".formatted(radius.mm()));
        }
        return new Counterweight(radius, opposite().at(), Mass.ofGrams(gMm / radius.mm()), at);
    }
}
