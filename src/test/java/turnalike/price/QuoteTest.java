package turnalike.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class QuoteTest {
    private static BigDecimal money(String text) {
        return new BigDecimal(text);
    }

    @Test
    void by_hand() {
        Charges charges = new Charges(
                Optional.of(money("45")),
                List.of(new Charges.Other("wood", money("62.5")), new Charges.Other("oil", money("9"))),
                money("10"),
                money("19"),
                "EUR");
        Quote quote = Quote.of(962.5637, charges, 14);
        // 16.04 h at 45 is 721.80; with wood and oil 793.30; a tenth of it 79.33; 19 % of 872.63 is 165.7997.
        assertThat(quote.lines())
                .extracting(line -> line.amount().toPlainString())
                .containsExactly("793.98", "68.75", "9.90"); // 16.04 h at 49.50
        assertThat(quote.markup()).isEqualTo(money("79.33"));
        assertThat(quote.net()).isEqualTo(money("872.63"));
        assertThat(quote.tax()).isEqualTo(money("165.80"));
        assertThat(quote.total()).isEqualTo(money("1038.43"));
        assertThat(quote.perPiece()).isEqualTo(money("62.34")); // 62.3307…, upward
    }

    @Test
    void nothing_charged_but_work() {
        Quote quote =
                Quote.of(90, new Charges(Optional.of(money("30")), List.of(), BigDecimal.ZERO, BigDecimal.ZERO, ""), 3);
        assertThat(quote.lines()).hasSize(1);
        assertThat(quote.total()).isEqualTo(money("45.00"));
        assertThat(quote.tax().signum()).isZero();
    }

    @Test
    void lines_add_up_and_pieces_pay_for_all() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 500; i++) {
            List<Charges.Other> others = new ArrayList<>();
            for (int n = random.nextInt(4); n > 0; n--) {
                others.add(new Charges.Other("thing " + n, BigDecimal.valueOf(random.nextInt(100_000), 2)));
            }
            Charges charges = new Charges(
                    Optional.of(BigDecimal.valueOf(random.nextInt(20_000), 2)),
                    others,
                    BigDecimal.valueOf(random.nextInt(400), 1),
                    BigDecimal.valueOf(random.nextInt(300), 1),
                    "");
            int pieces = 1 + random.nextInt(100);
            Quote quote = Quote.of(random.nextDouble() * 5_000, charges, pieces);
            BigDecimal sum = quote.lines().stream().map(Quote.Line::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum).isEqualByComparingTo(quote.net());
            assertThat(quote.total()).isEqualByComparingTo(quote.net().add(quote.tax()));
            BigDecimal paid = quote.perPiece().multiply(BigDecimal.valueOf(pieces));
            assertThat(paid).isBetween(quote.net(), quote.net().add(BigDecimal.valueOf(pieces, 2)));
        }
    }
}
