package turnalike.wood;

import turnalike.units.Parsed;
import turnalike.units.PlainNumber;

/**
 * Moisture content: the mass of the water in wood over the wood's ovendry mass, in percent.
 *
 * @param pct from 0 (ovendry) to {@value #WETTEST_PCT}, both included, else {@link IllegalArgumentException}
 */
public record Moisture(double pct) implements Comparable<Moisture> {
    /** More than any wood here holds: the Handbook's maximum at basic specific gravity 0.30 is 267 % (Equation 4-3). */
    static final double WETTEST_PCT = 300;

    /** The moisture the Handbook prints strength and specific gravity at. */
    public static final Moisture TWELVE = new Moisture(12);

    /**
     * Fibre saturation when a wood's own is not known: above it wood neither shrinks nor swells. Source: Wood Handbook, chapters 4 and
     * 13; VERIFIED (S3, S9).
     */
    public static final Moisture FIBRE_SATURATION = new Moisture(30);

    public Moisture {
        if (!(pct >= 0 && pct <= WETTEST_PCT)) {
            throw new IllegalArgumentException(
                    "moisture must be from 0 to %s percent, was %s".formatted(WETTEST_PCT, pct));
        }
        pct += 0.0; // -0.0 becomes 0.0, so equal moistures are equal records
    }

    /**
     * {@return the moisture of that many percent}
     *
     * @param pct percent of the ovendry mass, in the range above, else {@link IllegalArgumentException}
     */
    public static Moisture ofPct(double pct) {
        return new Moisture(pct);
    }

    /**
     * {@return the moisture a person gave, or why it cannot be one}
     *
     * @param pct percent of the ovendry mass
     */
    public static Parsed<Moisture> read(double pct) {
        return pct >= 0 && pct <= WETTEST_PCT
                ? Parsed.of(new Moisture(pct))
                : Parsed.refused(
                        "moisture must be from 0 to 300 percent, was %s".formatted(plain(pct)),
                        "give the percent of the dry wood's weight, as a moisture meter shows it: 8 for indoor furniture");
    }

    /** The smaller of this and fibre saturation: the moisture that counts for size. */
    Moisture asItCountsForSize() {
        return compareTo(FIBRE_SATURATION) < 0 ? this : FIBRE_SATURATION;
    }

    /**
     * {@code 8 %} or {@code 8.25 %}: at most two decimals, always a decimal point.
     *
     * @return the moisture in percent
     */
    public String text() {
        return plain(pct) + " %";
    }

    private static String plain(double value) {
        return Double.isFinite(value) ? PlainNumber.toDecimals(value, 2) : String.valueOf(value);
    }

    @Override
    public int compareTo(Moisture other) {
        return Double.compare(pct, other.pct);
    }
}
