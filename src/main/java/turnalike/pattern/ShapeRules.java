package turnalike.pattern;

import turnalike.units.Length;
import turnalike.units.PlainNumber;

/**
 * From where on a shape is warned of. Each usual value is common practice, no source: it tells where turners start to have trouble, not where
 * wood fails; a job may set its own.
 *
 * @param thin a part thinner than this share of its distance to the nearer support whips and chatters
 * @param heavyPart a neck below this share of the heaviest part inboard of it carries that part's cutting forces on too little wood
 * @param coveDepth a cove deeper than this share of its width: past a semicircle a gouge's bevel no longer follows it down
 * @param veeDepth a vee deeper than this share of its width: past its width it closes below 53 degrees and a skew's long point binds
 * @param beadRise a bead higher than this share of its width is a disc on edge: its grain breaks off
 * @param narrowestGroove a groove narrower than this is narrower than a thin parting tool
 * @param tenonPlay a tenon thinner than its hole by more than this is held by glue alone
 * @param tenonSnug a tenon thicker than its hole by as much as this is asked about
 */
public record ShapeRules(
        double thin,
        double heavyPart,
        double coveDepth,
        double veeDepth,
        double beadRise,
        Length narrowestGroove,
        Length tenonPlay,
        Length tenonSnug) {
    /** What a job that sets none goes by. Common practice, no source, each of them. */
    public static final ShapeRules USUAL =
            new ShapeRules(0.1, 0.4, 0.5, 1, 1, Length.ofMm(1.5), Length.ofMm(0.5), Length.ofMm(0.3));

    public ShapeRules {
        if (!(thin > 0 && heavyPart > 0 && coveDepth > 0 && veeDepth > 0 && beadRise > 0)) {
            throw new IllegalArgumentException("shares must be above 0, were %s, %s, %s, %s and %s"
                    .formatted(thin, heavyPart, coveDepth, veeDepth, beadRise));
        }
    }

    /** Whether the first is above that share of the second by more than rounding. */
    static boolean above(Length what, double share, Length of) {
        return what.mm() > share * of.mm() * (1 + 1e-9);
    }

    /** {@code deeper than half its width}, {@code higher than 80 % of its width}. */
    static String past(String word, double share) {
        return "%s than %s width"
                .formatted(word, share == 1 ? "its" : share == 0.5 ? "half its" : percent(share) + " of its");
    }

    /** {@code ten times}, {@code 8 times}: how many thicknesses long a part is at that share. */
    static String times(double share) {
        double times = 1 / share;
        return Math.abs(times - 10) < 1e-9 ? "ten times" : PlainNumber.toTenths(times) + " times";
    }

    private static String percent(double share) {
        return PlainNumber.toTenths(100 * share) + " %";
    }
}
