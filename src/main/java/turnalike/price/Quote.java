package turnalike.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What an order comes to. Each line is rounded to a hundredth by itself, half of one upward, and the sums are of the rounded lines, so that
 * the paper adds up by hand. A markup has no line of its own: it is spread into every price, and only the turner is told how much of it that is.
 *
 * @param lines what is charged; their amounts add up to {@code net}
 * @param net before tax
 * @param markup how much of that is the markup, 0 where none is told
 * @param tax on it, 0 where none is told
 * @param pieces good ones that are delivered
 * @param currency as it is to stand beside the figures; may be empty
 */
public record Quote(List<Line> lines, BigDecimal net, BigDecimal markup, BigDecimal tax, int pieces, String currency) {
    private static final int DECIMALS = 2;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    /**
     * One line.
     *
     * @param item what it is
     * @param quantity of it: hours to two decimals, else 1
     * @param unit of the quantity: {@code h}, or empty
     * @param each price of one unit
     * @param amount of the line
     */
    public record Line(String item, BigDecimal quantity, String unit, BigDecimal each, BigDecimal amount) {}

    public Quote {
        lines = List.copyOf(lines);
    }

    /**
     * {@return the quote}
     *
     * @param minutes of work, 0 or more
     * @param charges with a rate for the hour
     * @param pieces good ones that are delivered, 1 or more
     */
    public static Quote of(double minutes, Charges charges, int pieces) {
        List<Line> marked =
                lines(minutes, charges, BigDecimal.ONE.add(charges.markupPct().divide(HUNDRED)));
        BigDecimal net = sum(marked);
        BigDecimal markup = net.subtract(sum(lines(minutes, charges, BigDecimal.ONE)));
        return new Quote(marked, net, markup, percent(net, charges.taxPct()), pieces, charges.currency());
    }

    private static List<Line> lines(double minutes, Charges charges, BigDecimal times) {
        List<Line> out = new ArrayList<>();
        BigDecimal rate = rounded(charges.hourly().orElseThrow().multiply(times));
        BigDecimal hours = rounded(BigDecimal.valueOf(minutes).divide(MINUTES, 12, RoundingMode.HALF_UP));
        out.add(new Line("work", hours, "h", rate, rounded(hours.multiply(rate))));
        charges.others()
                .forEach(other ->
                        out.add(once(other.item(), rounded(other.amount().multiply(times)))));
        return out;
    }

    private static Line once(String item, BigDecimal amount) {
        return new Line(item, BigDecimal.ONE, "", amount, amount);
    }

    private static BigDecimal sum(List<Line> lines) {
        return lines.stream().map(Line::amount).reduce(rounded(BigDecimal.ZERO), BigDecimal::add);
    }

    private static BigDecimal percent(BigDecimal of, BigDecimal percent) {
        return rounded(of.multiply(percent).divide(HUNDRED));
    }

    private static BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
    }

    /** {@return what is to be paid} */
    public BigDecimal total() {
        return net.add(tax);
    }

    /** {@return what one piece comes to before tax, rounded upward to a hundredth} */
    public BigDecimal perPiece() {
        return net.divide(BigDecimal.valueOf(pieces), DECIMALS, RoundingMode.CEILING);
    }
}
