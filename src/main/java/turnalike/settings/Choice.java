package turnalike.settings;

import java.util.Arrays;
import java.util.Optional;

/** A choice of openings that reaches every mark, with what the three parts of the aim make of it. */
final class Choice {
    private final int[] openings;
    private final int[] stick;
    private final int sum;
    private final double longestMm;
    private final Optional<Strikes> strikes;

    private Choice(int[] openings, int[] stick, int sum, double longestMm, Optional<Strikes> strikes) {
        this.openings = openings;
        this.stick = stick;
        this.sum = sum;
        this.longestMm = longestMm;
        this.strikes = strikes;
    }

    /** The first {@code count} of the openings chosen, as just counted. */
    static Choice of(StepCount counted, int[] chosen, int count) {
        int[] kept = Arrays.copyOf(chosen, count);
        Arrays.sort(kept);
        return new Choice(kept, counted.stick(), counted.sum(), counted.longestStepMm(chosen, count), Optional.empty());
    }

    /**
     * Openings with the paths on which no mark's whole error is past the limit.
     *
     * @param chosen in the order in which the strikes count them, after the pinned ones
     * @param longestMm the longest distance stepped with one of them
     */
    static Choice of(int[] chosen, int[] stick, Strikes strikes, double longestMm) {
        int[] sorted = stick.clone();
        Arrays.sort(sorted);
        return new Choice(chosen.clone(), sorted, strikes.sum(), longestMm, Optional.of(strikes));
    }

    /** The paths, where a limit to the whole error makes them part of the choice. */
    Optional<Strikes> strikes() {
        return strikes;
    }

    /** Indices into {@link Spans#openings}, the pinned ones left out; with a limit to the whole error one may stand there twice. A copy. */
    int[] openings() {
        return openings.clone();
    }

    /** The marks that the stick gives because the search says so, rising; a copy. */
    int[] stick() {
        return stick.clone();
    }

    int settings() {
        return openings.length;
    }

    /** The sum of steps. */
    int sum() {
        return sum;
    }

    /** The longest distance stepped with an opening that is not pinned. */
    double longestMm() {
        return longestMm;
    }

    /** Fewer settings first, then the smaller sum, then the shorter longest step. */
    boolean betterThan(Choice other) {
        if (settings() != other.settings()) {
            return settings() < other.settings();
        }
        if (sum != other.sum) {
            return sum < other.sum;
        }
        return longestMm < other.longestMm - Spans.SLACK_MM;
    }
}
