package turnalike.job.set;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * Lengths that a mend asks for, in steps that a rule shows.
 *
 * @param units of the job, in which they are told with the other's beside
 */
record RuleSteps(UnitSystem units) {
    /** Nobody turns or bores so exactly. */
    private static final double LEAST_MM = 0.1;

    /** Two things that just touch have nothing between them. */
    private static final double NOTHING_MM = 0.005;

    private static final double SLACK_MM = 1e-6;

    /** For thicknesses, depths and places of a single axis. */
    Length fine() {
        return units == UnitSystem.INCH ? Length.ofInches(1 / 16.0) : Length.ofMm(0.5);
    }

    /** For hubs and posts. */
    Length rough() {
        return units == UnitSystem.INCH ? Length.ofInches(1 / 8.0) : Length.ofMm(2);
    }

    Length up(Length length) {
        return up(length, fine());
    }

    Length upRoughly(Length length) {
        return up(length, rough());
    }

    private static Length up(Length length, Length step) {
        return step.times(Math.ceil(length.mm() / step.mm() * (1 - 1e-12)));
    }

    Length down(Length length) {
        return fine().times(Math.floor(length.mm() / fine().mm()));
    }

    /** What was given or is asked for: as it was written, and in the other units as a rule shows it. */
    String print(Length length) {
        return length.formatWrittenBoth(units);
    }

    /** What was worked out: as a rule shows it. */
    String reckoned(Length length) {
        return length.formatBoth(units);
    }

    /** What is left between two things: never more than there is; where no rule shows it, that it is less than one shows. */
    String left(Length length) {
        return length.mm() >= NOTHING_MM && length.mm() < LEAST_MM - SLACK_MM
                ? "less than " + Length.ofMm(LEAST_MM).formatFineBoth(units)
                : length.formatDownBoth(units);
    }

    /** What passes or runs into something: never less than it does. */
    String much(Length length) {
        return length.formatUpBoth(units);
    }
}
