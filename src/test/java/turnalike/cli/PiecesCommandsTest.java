package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.Job;
import turnalike.pattern.ContractShape;
import turnalike.pattern.Member;
import turnalike.pattern.Placed;
import turnalike.solid.Quadrature;

/** {@code control}, {@code mend} and {@code match} in a row, held against published figures and other routes. */
class PiecesCommandsTest {
    private static final String DEMO_JOB = "src/main/resources/turnalike/demo/fair-wheel.job.json";
    private static final String DEMO_PIECES = "src/main/resources/turnalike/demo/fair-wheel-pieces.csv";

    @TempDir
    Path folder;

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    /** NIST/SEMATECH e-Handbook 6.3.2.2, the flow-rate example (VERIFIED: four public test suites quote it). */
    @Test
    void control_gives_the_handbooks_limits() throws IOException {
        double[] flow = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
        StringBuilder csv = new StringBuilder("piece,mass_g\n");
        for (int i = 0; i < flow.length; i++) {
            csv.append(i + 1).append(',').append(flow[i]).append('\n');
        }
        JsonNode chart = Ran.here("control", file("flow.csv", csv.toString()), "--column", "mass_g", "--json")
                .json();
        assertThat(chart.get("centre").doubleValue()).isCloseTo(50.81, within(1e-9));
        assertThat(chart.get("mean_moving_range").doubleValue()).isCloseTo(1.8778, within(5e-5));
        assertThat(chart.get("upper").doubleValue()).isCloseTo(55.8041, within(5e-5));
        assertThat(chart.get("lower").doubleValue()).isCloseTo(45.8159, within(5e-5));
        assertThat(chart.get("range_upper").doubleValue()).isCloseTo(6.1349, within(5e-4));
        assertThat(chart.get("signals").isArray()).isTrue();
        JsonNode exact = Ran.here(
                        "control",
                        folder.resolve("flow.csv").toString(),
                        "--column",
                        "mass_g",
                        "--json",
                        "--d2",
                        "1.1283791670955126")
                .json();
        assertThat(exact.get("upper").doubleValue()).isCloseTo(55.8024, within(5e-5));
    }

    @Test
    void control_names_the_piece_that_stands_out() throws IOException {
        StringBuilder csv = new StringBuilder("piece,mass_g\n");
        for (int i = 1; i <= 20; i++) {
            csv.append(i).append(',').append(i == 13 ? 160 : 140 + i % 2).append('\n');
        }
        JsonNode chart = Ran.here("control", file("odd.csv", csv.toString()), "--column", "mass_g", "--json")
                .json();
        assertThat(chart.get("signals")).anySatisfy(signal -> {
            assertThat(signal.get("piece").textValue()).isEqualTo("13");
            assertThat(signal.get("rule").textValue()).isNotBlank();
        });
    }

    @Test
    void a_mended_piece_weighs_what_its_smaller_solid_weighs() throws IOException {
        Job job = Job.parse(Files.readString(Path.of(DEMO_JOB))).job().orElseThrow();
        JsonNode mend = Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "15", "--to", "142", "--json")
                .json();
        assertThat(mend.get("mass_after_g").doubleValue()).isCloseTo(142, within(1e-6));
        double taken = 0;
        double cost = 0;
        for (JsonNode cut : mend.get("cuts")) {
            Placed placed = job.pattern().placed().get(cut.get("member").intValue());
            double off = cut.get("take_off_diameter_mm").doubleValue();
            assertThat(off).isPositive();
            assertThat(cut.get("from_mm").doubleValue())
                    .isCloseTo(placed.start().mm(), within(1e-9));
            assertThat(cut.get("to_mm").doubleValue()).isCloseTo(placed.end().mm(), within(1e-9));
            assertThat(placed.member().kind()).isNotEqualTo("tenon");
            DoubleUnaryOperator shape = ContractShape.of(placed.member(), Member.Ends.NEITHER);
            double half = placed.member().length().mm() / 2;
            DoubleUnaryOperator ring = x ->
                    Math.PI * (Math.pow(shape.applyAsDouble(x), 2) - Math.pow(shape.applyAsDouble(x) - off / 2, 2));
            taken += Quadrature.integrate(ring, 0, half) + Quadrature.integrate(ring, half, 2 * half);
            cost += 2 * off / (25.4 / 64);
        }
        double rho = job.wood().density().gramsPerMm3();
        assertThat(rho * taken).isCloseTo(143.4 - 142, withinPercentage(1e-6));
        assertThat(mend.get("likeness_cost").doubleValue()).isCloseTo(cost, withinPercentage(1e-6));
    }

    @Test
    void mend_aims_at_the_median_of_the_others_and_knows_its_limits() {
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "6").out())
                .contains("Turn another");
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "8").out())
                .contains("lacks", "spare");
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "7").out())
                .contains("leave it");
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "12").out())
                .contains("take ", "between marks");
        Ran wrong = Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "99");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("no piece is labelled '99'");
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "9", "--to", "-3")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void a_row_is_the_best_of_all_choices_and_orders() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB))
                .replaceAll(
                        "\"frame\": \\{[^}]*}",
                        "\"likeness\": {\"length\": 4}, \"frame\": {\"kind\": \"row\", \"places\": 5}");
        Random random = new Random(5);
        double[][] figures = new double[7][3];
        StringBuilder csv = new StringBuilder("piece,mass_g,length,d1\n");
        for (int i = 0; i < figures.length; i++) {
            figures[i][0] = Math.round(1400 + 12 * random.nextGaussian()) / 10.0;
            figures[i][1] = Math.round(15000 + 30 * random.nextGaussian()) / 1000.0;
            figures[i][2] = i == 2 ? Double.NaN : Math.round(1125 + 20 * random.nextGaussian()) / 1000.0;
            csv.append(String.format(
                    Locale.ROOT,
                    "p%d,%.1f,%.3f,%s%n",
                    i,
                    figures[i][0],
                    figures[i][1],
                    i == 2 ? "" : String.format(Locale.ROOT, "%.3f", figures[i][2])));
        }
        JsonNode row = Ran.here("match", file("row.job.json", job), file("row.csv", csv.toString()), "--json")
                .json();
        List<Integer> order = new ArrayList<>();
        row.get("places")
                .forEach(place -> order.add(
                        Integer.parseInt(place.get("piece").textValue().substring(1))));
        assertThat(order).hasSize(5).doesNotHaveDuplicates();
        AllRows rows = new AllRows(figures);
        assertThat(row.get("total_difference").doubleValue()).isCloseTo(rows.total(order), within(1e-9));
        assertThat(row.get("total_difference").doubleValue()).isCloseTo(rows.best(new ArrayList<>(), 5), within(1e-9));
        assertThat(row.get("best_proven").booleanValue()).isTrue();
    }

    /** Every ordered choice, by the format's formula: lengths count 4, diameters 2, mass 1, in tolerances of 1/64 in and 3 % of the mean. */
    private static final class AllRows {
        private final double[][] figures;
        private final double meanMass;

        AllRows(double[][] figures) {
            this.figures = figures;
            double sum = 0;
            for (double[] each : figures) {
                sum += each[0];
            }
            this.meanMass = sum / figures.length;
        }

        double difference(int p, int q) {
            double sum = Math.abs(figures[p][0] - figures[q][0]) / (0.03 * meanMass);
            sum += 4 * Math.abs(figures[p][1] - figures[q][1]) * 64;
            if (!Double.isNaN(figures[p][2]) && !Double.isNaN(figures[q][2])) {
                sum += 2 * Math.abs(figures[p][2] - figures[q][2]) * 64;
            }
            return sum;
        }

        double total(List<Integer> order) {
            double sum = 0;
            for (int i = 1; i < order.size(); i++) {
                sum += difference(order.get(i - 1), order.get(i));
            }
            return sum;
        }

        double best(List<Integer> order, int places) {
            if (order.size() == places) {
                double least =
                        order.stream().mapToDouble(i -> figures[i][0]).min().orElseThrow();
                double most =
                        order.stream().mapToDouble(i -> figures[i][0]).max().orElseThrow();
                double mean =
                        order.stream().mapToDouble(i -> figures[i][0]).average().orElseThrow();
                return (most - least) / mean <= 0.03 ? total(order) : Double.POSITIVE_INFINITY;
            }
            double best = Double.POSITIVE_INFINITY;
            for (int i = 0; i < figures.length; i++) {
                if (!order.contains(i)) {
                    order.add(i);
                    best = Math.min(best, best(order, places));
                    order.remove(order.size() - 1);
                }
            }
            return best;
        }
    }
}
