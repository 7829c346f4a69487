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
import turnalike.job.read.JobReader;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Samples;
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
    void control_tells_lengths_in_the_jobs_own_units() throws IOException {
        String pieces = file("inches.csv", "piece,length\n1,15.25\n2,15.0\n3,14.75\n4,15.0\n5,15.0\n6,15.0\n");
        Path charts = folder.resolve("charts");
        String out = Ran.here("control", pieces, "--column", "length", "--job", DEMO_JOB, "--out", charts.toString())
                .out();
        assertThat(out)
                .contains("length, in, of 6 pieces", "centre  15.000\n")
                .contains(" in; expect pieces outside it (Cpk ");
        assertThat(Files.readString(charts.resolve("control-chart-of-length.svg")))
                .contains("single values, in", ">centre 15.0");
    }

    /** Whoever weighs in ounces is sent to the table's own column. */
    @Test
    void control_names_the_columns_that_the_table_has() throws IOException {
        String pieces = file("ounces.csv", "piece,mass_oz,d1\n1,8.1,1.5\n2,8.3,1.5\n");
        assertThat(Ran.here("control", pieces, "--column", "weight").err())
                .contains("no piece has a figure in column 'weight'; chart one of mass_oz, d1")
                .doesNotContain("mass_g");
        assertThat(Ran.here("control", "--help").out()).contains("--column mass_oz, for a table in ounces");
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
        Job job = JobReader.read(Files.readString(Path.of(DEMO_JOB))).job().orElseThrow();
        JsonNode mend = Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "15", "--to", "142", "--json")
                .json();
        assertThat(mend.get("mass_after_g").doubleValue()).isCloseTo(142, within(1e-6));
        double[] thick = new double[job.pattern().placed().size()];
        for (JsonNode size : mend.get("sizes")) {
            thick[size.get("member").intValue()] = size.get("off_diameter_mm").doubleValue();
        }
        double volume = 0;
        for (PlacedMember placed : job.pattern().placed()) {
            DoubleUnaryOperator shape = Samples.shape(placed.member(), Member.Ends.NEITHER);
            double half = placed.member().length().mm() / 2;
            DoubleUnaryOperator disc =
                    x -> Math.PI * Math.pow(shape.applyAsDouble(x) + thick[placed.number() - 1] / 2, 2);
            volume += Quadrature.integrate(disc, 0, half) + Quadrature.integrate(disc, half, 2 * half);
        }
        double taken = 0;
        double cost = 0;
        for (JsonNode cut : mend.get("cuts")) {
            PlacedMember placed = job.pattern().placed().get(cut.get("member").intValue());
            double off = cut.get("take_off_diameter_mm").doubleValue();
            assertThat(off).isPositive();
            assertThat(cut.get("from_mm").doubleValue())
                    .isCloseTo(placed.start().mm(), within(1e-9));
            assertThat(cut.get("to_mm").doubleValue()).isCloseTo(placed.end().mm(), within(1e-9));
            assertThat(placed.member().kind().word()).isNotEqualTo("tenon");
            DoubleUnaryOperator shape = Samples.shape(placed.member(), Member.Ends.NEITHER);
            double half = placed.member().length().mm() / 2;
            double own = thick[placed.number() - 1] / 2;
            DoubleUnaryOperator ring = x -> Math.PI
                    * (Math.pow(shape.applyAsDouble(x) + own, 2) - Math.pow(shape.applyAsDouble(x) + own - off / 2, 2));
            taken += Quadrature.integrate(ring, 0, half) + Quadrature.integrate(ring, half, 2 * half);
            cost += 2 * Math.max(0, off - Math.max(0, 2 * own)) / (25.4 / 64);
        }
        // In the piece's own wood; what little is put down to its tenons is left out here.
        assertThat(143.4 / volume * taken).isCloseTo(143.4 - 142, withinPercentage(0.2));
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
    void mend_says_what_is_lacking_and_how_to_give_it() throws IOException {
        String csv = "piece,mass_g\na,140\nb,\n";
        String pieces = file("two.csv", csv).toString();
        Ran alone = Ran.here("mend", DEMO_JOB, pieces, "--piece", "a");
        assertThat(alone.code()).isEqualTo(2);
        assertThat(alone.err()).contains("--to: no other piece is weighed").contains("give the mass wanted");
        Ran unweighed = Ran.here("mend", DEMO_JOB, pieces, "--piece", "b");
        assertThat(unweighed.code()).isEqualTo(2);
        assertThat(unweighed.err()).contains("piece b: has no mass; weigh it");
        assertThat(Ran.here("mend", DEMO_JOB, pieces, "--piece", "a", "--to", "138")
                        .code())
                .isZero();
    }

    /** By the format's formula, with the demo's tolerances of 1/64 in and 3 % of the mean; the pattern has 15 in and 1 in at its first check. */
    @Test
    void likeness_counts_and_says_what_sets_each_piece_apart() throws IOException {
        String csv =
                "piece,mass_g,length,m3,d1,d2\na,140,15,1.625,1,1.125\nb,141,15.02,1.6,1,1.125\nc,142,15,1.625,1.03,\n";
        JsonNode likeness =
                Ran.here("likeness", DEMO_JOB, file("three.csv", csv), "--json").json();
        double tolerance = 0.03 * 141;
        assertThat(likeness.at("/pieces/0/figure").doubleValue()).isCloseTo(1 / tolerance, within(1e-9));
        assertThat(likeness.at("/pieces/1/figure").doubleValue())
                .isCloseTo(3 * 0.02 * 64 + 3 * 0.025 * 64, within(1e-9));
        assertThat(likeness.at("/pieces/1/words").textValue())
                .isEqualTo("piece b: its hub bead crest stands 0.025 in low; it is 0.02 in long");
        assertThat(likeness.at("/pieces/2/words").textValue())
                .startsWith("piece c: its middle of the long taper is 0.03 in too thick");
        assertThat(likeness.get("pairs")).hasSize(3);
        JsonNode nearest = likeness.at("/pairs/0");
        assertThat(nearest.get("piece").textValue() + nearest.get("other").textValue())
                .isEqualTo("ac");
        assertThat(nearest.get("difference").doubleValue()).isCloseTo(2 / tolerance + 2 * 0.03 * 64, within(1e-9));
        assertThat(Ran.here("likeness", DEMO_JOB, folder.resolve("three.csv").toString())
                        .out())
                .contains("   8.64  piece b: its hub bead crest stands 0.025 in low");
    }

    @Test
    void colour_counts_once_the_job_gives_it_a_weight() throws IOException {
        String csv = "piece,mass_g,colour\na,140,red\nb,140,brown\n";
        String pieces = file("colour.csv", csv);
        assertThat(Ran.here("likeness", DEMO_JOB, pieces, "--json")
                        .json()
                        .at("/pairs/0/difference")
                        .doubleValue())
                .isZero();
        String job = Files.readString(Path.of(DEMO_JOB))
                .replace("\"frame\":", "\"likeness\": {\"noted\": {\"colour\": 0.5}}, \"frame\":");
        assertThat(Ran.here("likeness", file("colour.job.json", job), pieces, "--json")
                        .json()
                        .at("/pairs/0/difference")
                        .doubleValue())
                .isEqualTo(0.5);
    }

    @Test
    void control_tells_the_drift_of_the_last_pieces_and_how_the_work_holds_its_tolerance() throws IOException {
        double[] belly = {1.124, 1.127, 1.123, 1.126, 1.125, 1.124, 1.127, 1.130, 1.134, 1.138, 1.142, 1.146};
        StringBuilder csv = new StringBuilder("piece,d2\n");
        for (int i = 0; i < belly.length; i++) {
            csv.append(i + 1).append(',').append(belly[i]).append('\n');
        }
        String pieces = file("belly.csv", csv.toString());
        JsonNode chart = Ran.here("control", pieces, "--column", "d2", "--job", DEMO_JOB, "--json")
                .json();
        String words = chart.at("/drift/words").textValue();
        assertThat(words).matches("the diameters at the belly grew 0\\.0\\d+ in over \\d pieces, \\d to 1\\d");
        // From piece 7 on 0.0038 in a piece.
        assertThat(chart.at("/drift/change").doubleValue()
                        / chart.at("/drift/pieces").intValue())
                .isCloseTo(0.0038 * 25.4, within(0.02));
        assertThat(chart.at("/rules/choice").textValue()).isEqualTo("self-starting");
        assertThat(chart.at("/rules/false_alarms_pct_of_40").doubleValue()).isLessThan(5);
        assertThat(chart.at("/rules/drift_seen_pct").doubleValue()).isBetween(0.0, 100.0);
        // NIST/SEMATECH e-Handbook 6.1.6: Cp = (USL - LSL) / 6s, Cpk = min(USL - mean, mean - LSL) / 3s.
        double mean = chart.get("centre").doubleValue();
        double sigma = chart.get("mean_moving_range").doubleValue() / 1.128;
        double tolerance = 25.4 / 64;
        assertThat(chart.at("/capability/cp").doubleValue()).isCloseTo(tolerance / (3 * sigma), within(1e-9));
        double nearer = Math.min(1.125 * 25.4 + tolerance - mean, mean - 1.125 * 25.4 + tolerance);
        assertThat(chart.at("/capability/cpk").doubleValue()).isCloseTo(nearer / (3 * sigma), within(1e-9));
        assertThat(Ran.here("control", pieces, "--column", "d2", "--json")
                        .json()
                        .has("capability"))
                .isFalse();
        Ran out = Ran.here(
                "control",
                pieces,
                "--column",
                "d2",
                "--job",
                DEMO_JOB,
                "--out",
                folder.resolve("c").toString());
        assertThat(out.out())
                .contains(
                        "The diameters at the belly grew 0.0",
                        "at most 1 set in 20 raises a false alarm",
                        "check the setting")
                .doesNotContain("Nothing")
                .containsPattern("1\\.\\d{4} to 1\\.\\d{4} in.* \\(Cpk \\d\\.\\d\\d, Ppk");
        assertThat(folder.resolve("c/control-chart-of-d2.svg")).isNotEmptyFile();
        assertThat(folder.resolve("c/control-chart-of-d2-us-letter.pdf")).isNotEmptyFile();
    }

    @Test
    void control_lets_the_rules_be_chosen_and_says_how_often_they_speak_for_nothing() throws IOException {
        String pieces = file("belly2.csv", "piece,d2\n1,3\n2,4\n3,5\n4,6\n5,7\n6,8\n7,9\n");
        JsonNode chart = Ran.here("control", pieces, "--column", "d2", "--rules", "nelson", "--json")
                .json();
        assertThat(chart.at("/signals").toString()).contains("six points in a row");
        assertThat(chart.at("/rules/choice").textValue()).isEqualTo("nelson");
        assertThat(Ran.here("control", pieces, "--column", "d2", "--rules", "usual")
                        .out())
                .contains("62 in 100 sets of 40 pieces raise a false alarm");
        assertThat(Ran.here("control", pieces, "--column", "d2", "--rules", "loud")
                        .err())
                .contains("--rules: no choice is called 'loud'", "self-starting, usual");
        assertThat(Ran.here("control", file("three.csv", "piece,d2\n1,3\n2,4\n3,5\n"), "--column", "d2")
                        .out())
                .contains("Too few to tell: 3 pieces");
    }

    @Test
    void a_likely_slip_is_asked_about_by_every_command_that_reads_pieces() throws IOException {
        String csv = Files.readString(Path.of(DEMO_PIECES)).replace("\n9,140.9,", "\n9,1409,");
        String pieces = file("slip.csv", csv);
        String question =
                "1409 g is 1267.7 g from the usual 141.3 g: did the decimal point slip, and is 140.9 g meant?";
        for (List<String> command : List.of(
                List.of("match", DEMO_JOB, pieces, "--seconds", "0.1"),
                List.of("likeness", DEMO_JOB, pieces),
                List.of("mend", DEMO_JOB, pieces, "--piece", "12"),
                List.of("control", pieces, "--column", "mass_g", "--job", DEMO_JOB))) {
            assertThat(Ran.here(command.toArray(String[]::new)).out()).contains(question);
            List<String> asJson = new ArrayList<>(command);
            asJson.add("--json");
            JsonNode questions = Ran.here(asJson.toArray(String[]::new)).json().get("questions");
            assertThat(questions).hasSize(1);
            assertThat(questions.at("/0/where").textValue()).isEqualTo("piece 9, column mass_g");
            assertThat(questions.at("/0/question").textValue()).isEqualTo(question);
        }
        assertThat(Ran.here("match", DEMO_JOB, DEMO_PIECES, "--seconds", "0.1", "--json")
                        .json()
                        .get("questions"))
                .isEmpty();
    }

    @Test
    void match_writes_the_record_of_a_wheel_a_row_and_legs() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB));
        String frame = "\"frame\": \\{[^}]*}";
        Path wheel = folder.resolve("wheel");
        assertThat(Ran.here("match", DEMO_JOB, DEMO_PIECES, "--out", wheel.toString(), "--paper", "a4")
                        .code())
                .isZero();
        assertThat(wheel.toFile().list())
                .containsExactlyInAnyOrder(
                        "match.json",
                        "wheel.svg",
                        "frame.svg",
                        "balance-and-roundness.svg",
                        "set.csv",
                        "set-record-a4.pdf",
                        "set-record-a4.svg");
        String row = file("row.job.json", job.replaceAll(frame, "\"frame\": {\"kind\": \"row\", \"places\": 12}"));
        Path rows = folder.resolve("rows");
        assertThat(Ran.here("match", row, DEMO_PIECES, "--out", rows.toString()).code())
                .isZero();
        assertThat(rows.toFile().list())
                .containsExactlyInAnyOrder(
                        "match.json",
                        "row.svg",
                        "frame.svg",
                        "set.csv",
                        "set-record-us-letter.pdf",
                        "set-record-us-letter.svg");
        String legs = file(
                "legs.job.json",
                job.replaceAll(frame, "\"frame\": {\"kind\": \"legs\", \"places\": 4, \"groups\": 3}"));
        Path groups = folder.resolve("groups");
        assertThat(Ran.here("match", legs, DEMO_PIECES, "--out", groups.toString())
                        .code())
                .isZero();
        assertThat(Files.readString(groups.resolve("legs.svg"))).contains("3 groups of 4", ">3·4<");
    }

    @Test
    void the_jobs_own_counterweight_radius_serves_a_wheel_that_has_none() throws IOException {
        String job = Files.readString(Path.of(DEMO_JOB))
                .replace(", \"counterweight_radius\": \"14\"", "")
                .replace("\"count\": 14", "\"counterweight_radius\": \"300 mm\", \"count\": 14");
        JsonNode match = Ran.here("match", file("top.job.json", job), DEMO_PIECES, "--json", "--seconds", "0.1")
                .json();
        assertThat(match.at("/counterweight/radius_mm").doubleValue()).isEqualTo(300);
        assertThat(match.at("/counterweight/mass_g").doubleValue())
                .isCloseTo(match.get("unbalance_g_mm").doubleValue() / 300, within(1e-9));
    }

    @Test
    void a_light_piece_is_told_how_far_the_others_would_come_down() {
        Ran ran = Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "8");
        assertThat(ran.out()).contains("bring the others down to it, each by so much: 1 (0.5 g)", "2.5 % heavier");
        assertThat(Ran.here("mend", DEMO_JOB, DEMO_PIECES, "--piece", "8", "--json")
                        .json()
                        .get("ways"))
                .hasSize(3);
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

    @Test
    void the_worst_of_a_row_stand_far_from_where_it_is_seen() throws IOException {
        String csv = "piece,mass_g,d1\na,140,1\nb,140,1.002\nc,140,1.02\nd,140,1.03\n";
        String pieces = file("seen.csv", csv);
        for (String end : List.of("start", "end")) {
            String job = Files.readString(Path.of(DEMO_JOB))
                    .replaceAll(
                            "\"frame\": \\{[^}]*}",
                            "\"frame\": {\"kind\": \"row\", \"places\": 4, \"seen_from\": \"" + end + "\"}");
            JsonNode places = Ran.here("match", file(end + ".job.json", job), pieces, "--json")
                    .json()
                    .get("places");
            assertThat(places)
                    .extracting(place -> place.get("piece").textValue())
                    .containsExactly(
                            end.equals("start")
                                    ? new String[] {"a", "b", "c", "d"}
                                    : new String[] {"d", "c", "b", "a"});
        }
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
