package turnalike.turning;

/**
 * Which stretches are slender, so that they are cut after the rest. Each usual value is common practice, no source; a job may set its own.
 *
 * @param thin thinner than this share of the thickest turned part is slender; above 0, at most 1
 * @param notThick below this share of it, a part that gives much of the limberness is slender too; above 0, at most 1
 * @param limber that much: this share of all the limberness that cutting adds; above 0, at most 1
 */
public record SlenderRules(double thin, double notThick, double limber) {
    /** What a job that sets none goes by. Common practice, no source, each of them. */
    public static final SlenderRules USUAL = new SlenderRules(0.66667, 0.9, 0.1);

    public SlenderRules {
        for (double share : new double[] {thin, notThick, limber}) {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("a share is above 0 and at most 1, was %s".formatted(share));
            }
        }
    }
}
