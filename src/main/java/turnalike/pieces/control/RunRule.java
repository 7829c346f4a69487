package turnalike.pieces.control;

import java.util.EnumSet;
import java.util.Set;

/**
 * The run rules of a control chart. A rule signals at each point that completes its pattern, looking back over the points up to it; for
 * the rules that count points beyond a line, the completing point is itself beyond it. A point on a line is not beyond it; a point on the
 * centre is on neither side and ends a run; equal neighbours neither rise nor fall.
 *
 * <p>Sources: the Western Electric handbook's four tests, and L. S. Nelson, Journal of Quality Technology 16 (1984), eight tests. The
 * wording of tests 1 to 5 and how the two sets are related was checked against a public test suite's notes; the rest is from memory.
 */
public enum RunRule {
    /** Western Electric 1, Nelson 1. */
    BEYOND_THREE("one point beyond 3 sigma", 1),
    /** Western Electric 2, Nelson 5. */
    TWO_OF_THREE_BEYOND_TWO("two of three points beyond 2 sigma on one side", 3),
    /** Western Electric 3, Nelson 6. */
    FOUR_OF_FIVE_BEYOND_ONE("four of five points beyond 1 sigma on one side", 5),
    /** Western Electric 4. */
    EIGHT_ON_ONE_SIDE("eight points in a row on one side of the centre", 8),
    /** Nelson 2. */
    NINE_ON_ONE_SIDE("nine points in a row on one side of the centre", 9),
    /** Nelson 3: six points, that is five steps. */
    SIX_STEADY("six points in a row steadily rising or falling", 6),
    /** Nelson 4. */
    FOURTEEN_ALTERNATING("fourteen points in a row alternating up and down", 14),
    /** Nelson 7. */
    FIFTEEN_WITHIN_ONE("fifteen points in a row within 1 sigma", 15),
    /** Nelson 8. */
    EIGHT_BEYOND_ONE("eight points in a row beyond 1 sigma on either side", 8),
    /** The limit of the moving-range chart. */
    RANGE_BEYOND("a moving range above its limit", 2),
    /** Hawkins' self-starting cumulative sum, see {@link WorkChange}. */
    LASTING_CHANGE("a lasting change, by self-starting cumulative sum", 5),
    /** One score of the same watch beyond its limit. */
    STANDS_APART("one piece far from all before it", 5);

    private final String words;
    private final int points;

    RunRule(String words, int points) {
        this.words = words;
        this.points = points;
    }

    /** {@return what the rule looks for, in words: {@code one point beyond 3 sigma}} */
    public String words() {
        return words;
    }

    /** How many points the pattern spans at most. */
    int points() {
        return points;
    }

    /** How many points complete it at the soonest: two of three are two already when the chart has no third before them. */
    int fewest() {
        return this == TWO_OF_THREE_BEYOND_TWO || this == FOUR_OF_FIVE_BEYOND_ONE ? points - 1 : points;
    }

    /** {@return the four of the Western Electric handbook, in a set of the caller's own} */
    public static Set<RunRule> westernElectric() {
        return EnumSet.of(BEYOND_THREE, TWO_OF_THREE_BEYOND_TWO, FOUR_OF_FIVE_BEYOND_ONE, EIGHT_ON_ONE_SIDE);
    }

    /** {@return Nelson's eight, in a set of the caller's own} */
    public static Set<RunRule> nelson() {
        return EnumSet.of(
                BEYOND_THREE,
                NINE_ON_ONE_SIDE,
                SIX_STEADY,
                FOURTEEN_ALTERNATING,
                TWO_OF_THREE_BEYOND_TWO,
                FOUR_OF_FIVE_BEYOND_ONE,
                FIFTEEN_WITHIN_ONE,
                EIGHT_BEYOND_ONE);
    }

    /**
     * {@return the two of the self-starting watch, in a set of the caller's own} They are what speaks unless another choice is made, see
     * {@link RuleChoice}.
     */
    public static Set<RunRule> selfStarting() {
        return EnumSet.of(LASTING_CHANGE, STANDS_APART);
    }

    /**
     * Western Electric's four, Nelson's trend of six (turning drifts as the tool dulls and the caliper's setting creeps, which the four see
     * late) and the moving range's own limit. Common practice, no source.
     *
     * @return those six rules, in a set of the caller's own
     */
    public static Set<RunRule> usual() {
        Set<RunRule> usual = westernElectric();
        usual.add(SIX_STEADY);
        usual.add(RANGE_BEYOND);
        return usual;
    }
}
