package turnalike.pieces.control;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which rules speak, and how often each choice speaks of work that is steady. The limits drawn are the same for all. */
public enum RuleChoice {
    /** Hawkins' self-starting cumulative sum: the choice unless another is made. */
    SELF_STARTING("self-starting"),
    /** Western Electric's four, Nelson's trend of six and the moving range's limit. */
    USUAL("usual"),
    /** Western Electric's four. */
    WESTERN_ELECTRIC("western-electric"),
    /** Nelson's eight. */
    NELSON("nelson");

    private static final int STEP = 10;

    private final String word;

    RuleChoice(String word) {
        this.word = word;
    }

    /** {@return its word: {@code self-starting}} */
    public String word() {
        return word;
    }

    /** {@return the rules that speak, in a set of the caller's own} */
    public Set<RunRule> rules() {
        return switch (this) {
            case SELF_STARTING -> RunRule.selfStarting();
            case USUAL -> RunRule.usual();
            case WESTERN_ELECTRIC -> RunRule.westernElectric();
            case NELSON -> RunRule.nelson();
        };
    }

    /** Of 10, 20, 30 and 40 pieces. */
    private double[] falseAlarmsPct() {
        return switch (this) {
            case SELF_STARTING -> new double[] {0.2, 1.4, 2.8, 4.1};
            case USUAL -> new double[] {11.3, 32.6, 49.4, 61.5};
            case WESTERN_ELECTRIC -> new double[] {7.7, 22.2, 34.6, 44.3};
            case NELSON -> new double[] {8.4, 24.7, 38.7, 50.3};
        };
    }

    /**
     * {@return in how many of 100 stable sets of that many pieces, looked at after every piece, some rule speaks} Simulated: 20,000 sets of
     * normal pieces, right to half a per cent; between the tens in a straight line. Above forty pieces the figure for forty.
     *
     * @param pieces how many, zero or more
     */
    public double falseAlarmsPct(int pieces) {
        double[] rates = falseAlarmsPct();
        int tens = Math.min(pieces / STEP, rates.length);
        double before = tens == 0 ? 0 : rates[tens - 1];
        if (tens == rates.length) {
            return before;
        }
        return before + (rates[tens] - before) * (pieces % STEP) / STEP;
    }

    /**
     * {@return the choice of that word; empty when there is none}
     *
     * @param word as {@link #word} gives it
     */
    public static Optional<RuleChoice> find(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }

    /** {@return the words there are, for a message} */
    public static String words() {
        return Arrays.stream(values()).map(RuleChoice::word).collect(Collectors.joining(", "));
    }
}
