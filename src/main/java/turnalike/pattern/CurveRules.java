package turnalike.pattern;

import turnalike.units.Length;

/**
 * What counts as a peak, a step and a line of its own on a curve through points. Each usual value is common practice, no source; a job may set its
 * own.
 *
 * @param longLevel a level peak or hollow longer than this is marked at both its ends, a shorter one in its middle; not negative
 * @param stepSlope steeper than so much up for one along is a step rather than a slope; above 0
 * @param line two pencil lines cannot be told apart when nearer than this; not negative
 */
public record CurveRules(Length longLevel, double stepSlope, Length line) {
    /** What a job that sets none goes by. Common practice, no source, each of them. */
    public static final CurveRules USUAL = new CurveRules(Length.ofMm(3), 2, Length.ofMm(0.5));

    public CurveRules {
        if (longLevel.mm() < 0 || !(stepSlope > 0) || line.mm() < 0) {
            throw new IllegalArgumentException(
                    "no rules for a curve: %s mm, %s, %s mm".formatted(longLevel.mm(), stepSlope, line.mm()));
        }
    }
}
