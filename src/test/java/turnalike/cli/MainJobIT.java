package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.read.JobReader;
import turnalike.solid.Quadrature;

/** The main job as its users run it: a process, its files and its JSON, held against the file format and against other routes. */
class MainJobIT {
    @TempDir
    Path folder;

    private static final String METRIC_JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Stool rungs (invented)", "units": "mm",
             "pattern": {"name": "Rung", "stock": {"section": "round", "size": 40, "length": "410 mm"},
              "members": [
               {"kind": "tenon", "length": 25, "diameter": 16, "chamfer": 2},
               {"kind": "half-cove", "length": 12.5, "from": 16, "to": 30},
               {"kind": "bead", "length": 14, "root": 26, "crown": "34,5 mm"},
               {"kind": "vee", "length": 5, "rim": 28, "bottom": 24},
               {"kind": "reverse-ogee", "length": 30, "from": 28, "to": 20},
               {"kind": "curve", "points": [[0, 20], [40, 24], ["3 in", 27], [120, 22]]},
               {"kind": "half-bead", "length": 11, "from": 22, "to": 30},
               {"kind": "square", "length": 40, "side": 27},
               {"kind": "cove", "length": 17, "rim": 26, "bottom": 18, "by_eye": true},
               {"kind": "taper", "length": 80, "from": 24, "to": 17},
               {"kind": "tenon", "length": 25, "diameter": 15, "chamfer": 1.5}]},
             "wood": {"density_kg_m3": 700}, "count": 6,
             "tolerances": {"mark": 0.3, "diameter": 0.4, "mass_pct": 4, "scale_g": 0.1},
             "allowances": {"sizing": 0.8, "sanding": 0.2},
             "frame": {"kind": "wheel", "places": 6, "hub_radius": 60, "tenon_at": "end"}}
            """;

    @Test
    void the_demo_does_the_whole_job_and_says_where_everything_is() throws IOException, InterruptedException {
        Ran ran = Ran.asProcess(folder, "demo", "--out", "d");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("Dividers", "Calipers", "Stock", "Set ", "Balance", "Written");
        List<String> named = ran.out()
                .lines()
                .filter(line -> line.startsWith("  d/"))
                .map(String::strip)
                .toList();
        assertThat(named).hasSizeGreaterThanOrEqualTo(12);
        assertThat(named).allSatisfy(name -> assertThat(folder.resolve(name)).isNotEmptyFile());
    }

    @Test
    void a_plan_keeps_to_the_file_format() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("rung.job.json"), METRIC_JOB);
        Ran ran = Ran.asProcess(folder, "plan", "rung.job.json", "--json");
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode plan = ran.json();
        solidAgreesWithQuadrature(plan);
        double[] marks = marksAreWhereTheFormatPutsThem(plan);
        dividersReachEveryMark(plan, marks, 0.3);
        assertThat(plan.at("/settings/fewest_proven").isBoolean()).isTrue();
        assertThat(plan.get("warnings").isArray()).isTrue();
        calipersSizeEveryDiameter(plan);
    }

    private static void solidAgreesWithQuadrature(JsonNode plan) {
        Quadrature by =
                new Quadrature(JobReader.read(METRIC_JOB).job().orElseThrow().pattern());
        JsonNode solid = plan.get("solid");
        assertThat(plan.get("length_mm").doubleValue()).isCloseTo(379.5, within(1e-9));
        assertThat(solid.get("density_kg_m3").doubleValue()).isEqualTo(700);
        assertThat(solid.get("volume_mm3").doubleValue()).isCloseTo(by.volume(), withinPercentage(1e-8));
        assertThat(solid.get("mass_g").doubleValue()).isCloseTo(by.volume() * 700e-6, withinPercentage(1e-8));
        assertThat(solid.get("balance_mm").doubleValue()).isCloseTo(by.balance(), withinPercentage(1e-8));
        assertThat(solid.get("spin_inertia_g_mm2").doubleValue()).isCloseTo(by.spin() * 700e-6, withinPercentage(1e-8));
        assertThat(solid.get("swing_inertia_g_mm2").doubleValue())
                .isCloseTo(by.swing() * 700e-6, withinPercentage(1e-8));
    }

    private static double[] marksAreWhereTheFormatPutsThem(JsonNode plan) {
        List<Double> places = new ArrayList<>();
        for (JsonNode mark : plan.get("marks")) {
            assertThat(mark.get("label").textValue()).isNotBlank();
            places.add(mark.get("mm").doubleValue());
        }
        double[] fixed = {0, 25, 37.5, 44.5, 51.5, 54, 56.5, 86.5, 206.5, 217.5, 257.5, 274.5, 354.5, 379.5};
        // Besides these only the curve has marks, from 86.5 to 206.5: its given highest point, 3 in on, and where it is
        // sized between.
        double highest = 86.5 + 76.2;
        assertThat(places).isSorted();
        assertThat(places.stream().filter(place -> place <= 86.5 + 1e-9 || place >= 206.5 - 1e-9))
                .hasSize(fixed.length);
        for (double place : fixed) {
            assertThat(places).anyMatch(each -> Math.abs(each - place) < 1e-9);
        }
        assertThat(places).anyMatch(each -> Math.abs(each - highest) < 1e-9);
        return places.stream().mapToDouble(each -> each).toArray();
    }

    /** The format's own rule, applied step by step: each mark once, from one already reached, within three steps of a given one. */
    private static void dividersReachEveryMark(JsonNode plan, double[] marks, double markError) {
        int[] steps = new int[marks.length];
        Arrays.fill(steps, -1);
        steps[0] = 0;
        steps[marks.length - 1] = 0;
        // The square from 217.5 to 257.5 lies between two shoulder lines, and nothing is stepped over it.
        int shoulder = IntStream.range(0, marks.length)
                .filter(i -> Math.abs(marks[i] - 217.5) < 1e-9)
                .findFirst()
                .orElseThrow();
        steps[shoulder] = 0;
        steps[shoulder + 1] = 0;
        boolean more = true;
        while (more) {
            more = false;
            for (JsonNode divider : plan.at("/settings/dividers")) {
                for (JsonNode step : divider.get("steps")) {
                    int from = step.get("from").intValue();
                    int to = step.get("to").intValue();
                    assertThat(from <= shoulder).isEqualTo(to <= shoulder);
                    double apart = Math.abs(marks[from] - marks[to]);
                    assertThat(apart).isCloseTo(divider.get("mm").doubleValue(), within(0.1 + 1e-9));
                    if (steps[from] >= 0 && steps[to] < 0) {
                        steps[to] = steps[from] + 1;
                        more = true;
                    }
                }
            }
        }
        int most = Arrays.stream(steps).max().orElse(0);
        assertThat(Arrays.stream(steps).min().orElse(-1))
                .as("every mark is reached")
                .isZero();
        assertThat(most).isLessThanOrEqualTo(3);
        assertThat(plan.at("/settings/worst_mark_error_mm").doubleValue()).isCloseTo(most * markError, within(1e-9));
    }

    private static void calipersSizeEveryDiameter(JsonNode plan) {
        List<String> sized = new ArrayList<>();
        for (JsonNode caliper : plan.at("/settings/calipers")) {
            double finished = caliper.get("finished_mm").doubleValue();
            assertThat(caliper.get("mm").doubleValue()).isCloseTo(finished + 0.8, within(1e-9));
            caliper.get("members")
                    .forEach(index -> sized.add(index.intValue() + ":" + Math.round(finished * 10) / 10.0));
        }
        assertThat(sized)
                .contains("0:16.0", "1:16.0", "1:30.0", "2:26.0", "2:34.5", "3:24.0", "4:20.0", "9:17.0", "10:15.0");
        assertThat(sized).noneMatch(each -> each.startsWith("8:") || each.startsWith("7:"));
    }

    @Test
    void a_match_is_the_best_of_all_choices_and_orders() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("rung.job.json"), METRIC_JOB);
        Random random = new Random(6);
        StringBuilder csv = new StringBuilder("mass_g,piece,balance,remark\n");
        double[] masses = new double[8];
        double[] balances = new double[8];
        for (int i = 0; i < masses.length; i++) {
            masses[i] = Math.round(1200 + 25 * random.nextGaussian()) / 10.0;
            balances[i] = Math.round(1800 + 20 * random.nextGaussian()) / 10.0;
            csv.append(String.format(Locale.ROOT, "%.1f,p%d,%.1f,kept%n", masses[i], i, balances[i]));
        }
        Files.writeString(folder.resolve("pieces.csv"), csv.toString());
        Ran ran = Ran.asProcess(folder, "match", "rung.job.json", "pieces.csv", "--json", "--strict");
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode match = ran.json();
        double shoulder = 379.5 - 25;
        double x = 0;
        double y = 0;
        double squares = 0;
        List<String> used = new ArrayList<>();
        for (int place = 0; place < 6; place++) {
            JsonNode seat = match.get("places").get(place);
            int piece = Integer.parseInt(seat.get("piece").textValue().substring(1));
            used.add(seat.get("piece").textValue());
            assertThat(seat.get("place").intValue()).isEqualTo(place + 1);
            assertThat(seat.get("angle_deg").doubleValue()).isCloseTo(60.0 * place, within(1e-9));
            assertThat(seat.get("mass_g").doubleValue()).isEqualTo(masses[piece]);
            double radius = 60 + shoulder - balances[piece];
            x += masses[piece] * radius * Math.cos(Math.PI / 3 * place);
            y += masses[piece] * radius * Math.sin(Math.PI / 3 * place);
            squares += radius * radius;
        }
        double unbalance = match.get("unbalance_g_mm").doubleValue();
        assertThat(unbalance).isCloseTo(Math.hypot(x, y), within(1e-6));
        double best = new BruteForce(masses, balances, shoulder).best();
        assertThat(unbalance).isCloseTo(best, within(1e-6));
        assertThat(match.get("best_proven").booleanValue()).isTrue();
        assertThat(match.get("noise_floor_g_mm").doubleValue())
                .isCloseTo(0.1 / Math.sqrt(12) * Math.sqrt(squares), withinPercentage(1e-8));
        assertThat(match.get("spares")).hasSize(2);
        match.get("spares").forEach(spare -> used.add(spare.textValue()));
        assertThat(used).doesNotHaveDuplicates().hasSize(8);
    }

    /** Every ordered choice of six, each tried. */
    private static final class BruteForce {
        private final double[] masses;
        private final double[] balances;
        private final double shoulder;
        private final int[] chosen = new int[6];
        private final boolean[] taken;
        private double best = Double.POSITIVE_INFINITY;

        BruteForce(double[] masses, double[] balances, double shoulder) {
            this.masses = masses;
            this.balances = balances;
            this.shoulder = shoulder;
            this.taken = new boolean[masses.length];
        }

        double best() {
            choose(0);
            return best;
        }

        private void choose(int place) {
            if (place == chosen.length) {
                judge();
                return;
            }
            for (int i = 0; i < masses.length; i++) {
                if (!taken[i]) {
                    taken[i] = true;
                    chosen[place] = i;
                    choose(place + 1);
                    taken[i] = false;
                }
            }
        }

        private void judge() {
            double x = 0;
            double y = 0;
            double sum = 0;
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (int place = 0; place < chosen.length; place++) {
                double mass = masses[chosen[place]];
                double radius = 60 + shoulder - balances[chosen[place]];
                x += mass * radius * Math.cos(Math.PI / 3 * place);
                y += mass * radius * Math.sin(Math.PI / 3 * place);
                sum += mass;
                least = Math.min(least, mass);
                most = Math.max(most, mass);
            }
            if ((most - least) / (sum / chosen.length) <= 0.04) {
                best = Math.min(best, Math.hypot(x, y));
            }
        }
    }

    @Test
    void an_error_is_one_line_and_exit_code_two() throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("rung.job.json"), METRIC_JOB.replace("\"crown\": \"34,5 mm\"", "\"crown\": 26"));
        Ran ran = Ran.asProcess(folder, "plan", "rung.job.json", "--json");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo(
                        "turnalike: rung.job.json: member 3 (bead): crown: must exceed the root, was 26 mm (1.0236 in)"
                                + " with a root of 26 mm (1.0236 in); make the crown larger or the root smaller\n");
    }

    @Test
    void the_completion_script_is_good_bash() throws IOException, InterruptedException {
        Ran ran = Ran.asProcess(folder, "completion");
        assertThat(ran.code()).isZero();
        Path script = Files.writeString(folder.resolve("completion.bash"), ran.out());
        Process bash = new ProcessBuilder("bash", "-n", script.toString()).start();
        assertThat(bash.waitFor()).isZero();
        assertThat(ran.out()).contains("plan", "match", "--json");
    }
}
