package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/** Legs, held against every way to group them with the difference worked from the file format's formula. */
class LegsSetTest {
    private static String job(String frame) {
        return SmallWheel.framed(0.1, frame);
    }

    private static final class Lot {
        final double[] masses;
        final double[] lengths;
        double mean;

        Lot(Random random, int pieces) {
            masses = new double[pieces];
            lengths = new double[pieces];
            for (int i = 0; i < pieces; i++) {
                masses[i] = Math.round(500 + 8 * random.nextGaussian()) / 10.0;
                lengths[i] = Math.round(13000 + 30 * random.nextGaussian()) / 100.0;
                mean += masses[i] / pieces;
            }
        }

        String csv() {
            StringBuilder csv = new StringBuilder("piece,mass_g,length\n");
            for (int i = 0; i < masses.length; i++) {
                csv.append(String.format(Locale.ROOT, "p%d,%s,%s%n", i, masses[i], lengths[i]));
            }
            return csv.toString();
        }

        /** Lengths count 3 in marks of 0.25 mm, masses 1 in 10 % of the mean. */
        double difference(int p, int q) {
            return 3 * Math.abs(lengths[p] - lengths[q]) / 0.25 + Math.abs(masses[p] - masses[q]) / (0.1 * mean);
        }

        double within(List<Integer> group) {
            double sum = 0;
            for (int i = 0; i < group.size(); i++) {
                for (int j = 0; j < i; j++) {
                    sum += difference(group.get(i), group.get(j));
                }
            }
            return sum;
        }

        double best(int size, int groups) {
            List<Integer> all = new ArrayList<>();
            for (int i = 0; i < masses.length; i++) {
                all.add(i);
            }
            return best(all, size, groups);
        }

        /** The first piece left is left over, or is grouped with some others. */
        private double best(List<Integer> left, int size, int groups) {
            if (groups == 0) {
                return 0;
            }
            if (left.size() < size * groups) {
                return Double.POSITIVE_INFINITY;
            }
            List<Integer> rest = left.subList(1, left.size());
            double best = best(rest, size, groups);
            List<List<Integer>> mates = new ArrayList<>();
            choose(rest, size - 1, 0, new ArrayList<>(), mates);
            for (List<Integer> others : mates) {
                List<Integer> group = new ArrayList<>(others);
                group.add(left.get(0));
                List<Integer> remaining = new ArrayList<>(rest);
                remaining.removeAll(others);
                best = Math.min(best, within(group) + best(remaining, size, groups - 1));
            }
            return best;
        }

        private static void choose(
                List<Integer> from, int count, int start, List<Integer> chosen, List<List<Integer>> into) {
            if (chosen.size() == count) {
                into.add(new ArrayList<>(chosen));
                return;
            }
            for (int i = start; i < from.size(); i++) {
                chosen.add(from.get(i));
                choose(from, count, i + 1, chosen, into);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    @Test
    void groups_are_the_most_alike_there_are() {
        Seeds.each(10, random -> {
            int size = 2 + random.nextInt(3);
            Lot lot = new Lot(random, size + random.nextInt(7));
            int most = lot.masses.length / size;
            boolean told = random.nextBoolean();
            int groups = told ? 1 + random.nextInt(most) : most;
            String count = told ? ", \"groups\": %d".formatted(groups) : "";
            String frame = "{\"kind\": \"legs\", \"places\": %d%s}".formatted(size, count);
            assertBest(lot, size, groups, SmallWheel.match(job(frame), lot.csv(), false));
        });
    }

    @Test
    void the_legs_of_one_table_are_found_among_all() {
        Lot lot = new Lot(new Random(2), 12);
        JsonNode match = SmallWheel.match(job("{\"kind\": \"legs\", \"places\": 4, \"groups\": 1}"), lot.csv(), false);
        assertBest(lot, 4, 1, match);
        assertThat(match.get("spares")).hasSize(8);
        assertThat(match.at("/next_set/pieces").size()).isLessThanOrEqualTo(4);
    }

    private static void assertBest(Lot lot, int size, int groups, JsonNode match) {
        assertThat(match.get("groups")).hasSize(groups);
        double total = 0;
        List<Integer> used = new ArrayList<>();
        for (JsonNode each : match.get("groups")) {
            List<Integer> group = new ArrayList<>();
            for (int piece : SmallWheel.order(each)) {
                group.add(piece);
            }
            assertThat(group).hasSize(size);
            used.addAll(group);
            total += lot.within(group);
        }
        for (int piece : SmallWheel.order(match.get("spares"))) {
            used.add(piece);
        }
        assertThat(used).doesNotHaveDuplicates().hasSize(lot.masses.length);
        assertThat(match.get("total_difference").doubleValue()).isCloseTo(total, within(1e-9));
        assertThat(total).isCloseTo(lot.best(size, groups), within(1e-9));
        assertThat(match.get("best_proven").booleanValue()).isTrue();
    }

    @Test
    void a_group_of_unlike_weights_is_told() {
        String csv = "piece,mass_g\na,50\nb,50\nc,50\nd,58\n";
        JsonNode match = SmallWheel.match(job("{\"kind\": \"legs\", \"places\": 4}"), csv, false);
        // 8 g of 52 g on average
        assertThat(match.get("warnings").toString()).contains("group 1: masses differ by 15.38 %");
        JsonNode alike = SmallWheel.match(job("{\"kind\": \"legs\", \"places\": 4}"), csv.replace("58", "51"), false);
        assertThat(alike.get("warnings")).isEmpty();
    }

    /** A sum of differences is no length: what it counts is said beside it. */
    @Test
    void how_unlike_a_group_is_says_what_it_counts() {
        Job job =
                JobReader.read(job("{\"kind\": \"legs\", \"places\": 3}")).job().orElseThrow();
        SetMatch set = MatchJob.of(
                job,
                PiecesFile.parse("piece,mass_g\na,50\nb,50.4\nc,50.9\n", UnitSystem.METRIC)
                        .pieces(),
                false,
                Effort.ofAsks(100));
        assertThat(set.verdict().sentences().get(0))
                .matches(
                        "pieces of one group differ by \\d\\.\\d{1,3} in all, counted in tolerances; no other grouping has less");
    }

    @Test
    void too_few_pieces_are_told() {
        Job job = JobReader.read(job("{\"kind\": \"legs\", \"places\": 4, \"groups\": 2}"))
                .job()
                .orElseThrow();
        assertThat(MatchJob.problems(
                        job,
                        PiecesFile.parse("piece,mass_g\na,1\nb,1\nc,1\n", UnitSystem.METRIC)
                                .pieces()))
                .singleElement()
                .satisfies(problem -> assertThat(problem.line())
                        .isEqualTo("pieces: 3 pieces for 2 groups of 4; log 5 more or ask for less"));
        assertThat(job.frame().orElseThrow().pieces()).isEqualTo(8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"kind\": \"legs\", \"places\": 1} | frame: places: was 1; give a whole number from 2 to 8",
                "{\"kind\": \"legs\", \"places\": 9} | frame: places: was 9; give a whole number from 2 to 8",
                "{\"kind\": \"legs\"} | frame: places: is missing; give a whole number from 2 to 8",
                "{\"kind\": \"legs\", \"places\": 4, \"groups\": 0} | frame: groups: was 0; give a whole number from 1 to 400",
                "{\"kind\": \"legs\", \"places\": 4, \"tables\": 2} | frame: has an unknown key 'tables'; remove it or use one"
                        + " of kind, places, groups, rake_deg, splay_deg, foot_moves, height, seat_thickness, apart, stretchers, seat_wood, under",
            })
    void what_makes_no_sense_is_told_with_place_and_mend(String frame, String line) {
        Job.Read read = JobReader.read(job(frame));
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).line()).isEqualTo(line);
    }
}
