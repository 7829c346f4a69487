package turnalike.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What the turner charges: nothing of it is known to the program.
 *
 * @param hourly for an hour's work; without it no price is made
 * @param others each thing charged besides the work: wood, finish, carriage
 * @param markupPct per hundred of all these, 0 for none
 * @param taxPct per hundred of the sum, as the turner has to charge it; 0 for none
 * @param currency as it is to stand beside the figures; may be empty
 */
public record Charges(
        Optional<BigDecimal> hourly, List<Other> others, BigDecimal markupPct, BigDecimal taxPct, String currency) {
    /** Nothing charged: no price is made. */
    public static final Charges NONE = new Charges(Optional.empty(), List.of(), BigDecimal.ZERO, BigDecimal.ZERO, "");

    /**
     * One thing charged besides the work.
     *
     * @param item what it is
     * @param amount what it costs
     */
    public record Other(String item, BigDecimal amount) {}

    public Charges {
        others = List.copyOf(others);
    }
}
