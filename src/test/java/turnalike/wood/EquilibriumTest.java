package turnalike.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class EquilibriumTest {
    private static double pct(Air air) {
        return new Equilibrium(air).moisture().pct();
    }

    @Test
    void follows_the_printed_table_and_another_program() {
        int printed = 0;
        int computed = 0;
        for (String line : table()) {
            String[] cells = line.split(",", -1);
            double found = pct(Air.ofCelsius(Double.parseDouble(cells[1]), Double.parseDouble(cells[0])));
            if (!cells[2].isEmpty()) {
                printed++;
                assertThat(found).as(line).isEqualTo(Double.parseDouble(cells[2]), within(0.06));
            }
            if (!cells[3].isEmpty()) {
                computed++;
                assertThat(found).as(line).isEqualTo(Double.parseDouble(cells[3]), within(0.0006));
            }
        }
        assertThat(printed).isEqualTo(40);
        assertThat(computed).isEqualTo(38);
    }

    /** The cells our notes single out: 110 F, 20 % humidity is 4.05 by the equation, its printed neighbours 4.2 and 3.9. */
    @Test
    void fahrenheit_is_the_same_air() {
        assertThat(pct(Air.ofFahrenheit(110, 20))).isEqualTo(4.05, within(0.006));
        assertThat(Air.ofFahrenheit(70, 65).celsius()).isEqualTo(21.111, within(0.001));
    }

    @Test
    void rises_with_humidity_from_nothing_to_at_most_thirty_percent() {
        Seeds.each(300, random -> {
            double celsius = -20 + 120 * random.nextDouble();
            double drier = 99 * random.nextDouble();
            assertThat(pct(Air.ofCelsius(celsius, 0))).isZero();
            assertThat(pct(Air.ofCelsius(celsius, drier + 1)))
                    .isGreaterThan(pct(Air.ofCelsius(celsius, drier)))
                    .isLessThan(30);
        });
    }

    @Test
    void air_out_of_range_is_refused() {
        assertThat(Air.read(21, 65).get()).isEqualTo(Air.ofCelsius(21, 65));
        assertThat(Air.read(21, 101).isValue()).isFalse();
        assertThat(Air.read(150, 50).isValue()).isFalse();
        assertThat(Air.read(Double.NaN, 50).isValue()).isFalse();
        assertThatThrownBy(() -> Air.ofCelsius(21, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Air.ofCelsius(-21, 50)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_working_names_the_equation_and_the_air() {
        assertThat(new Equilibrium(Air.ofCelsius(21.1, 65)).working().how()).contains("21.1", "65 %", "12.0 %");
        assertThat(new Equilibrium(Air.ofCelsius(21.1, 65)).working().source()).contains("4-5");
    }

    private static List<String> table() {
        try (InputStream bytes = EquilibriumTest.class.getResourceAsStream("emc_table_4_2.csv")) {
            if (bytes == null) {
                throw new AssertionError("emc_table_4_2.csv is not on the class path");
            }
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
