package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.answer.MatchJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.units.UnitSystem;

/** The same input gives the same set, however slow the clock. */
class SameSetTest {
    private static JsonNode match(String job, String csv, Effort effort) throws IOException {
        SetMatch match = MatchJob.of(
                JobReader.read(job).job().orElseThrow(),
                PiecesFile.parse(csv, UnitSystem.METRIC).pieces(),
                false,
                effort);
        return new ObjectMapper().readTree(MatchJson.print(match, List.of()));
    }

    private static String job(int places) {
        return SmallWheel.framed(0.1, "{\"kind\": \"wheel\", \"places\": %d, \"hub_radius\": 60}".formatted(places));
    }

    /** A machine that is busy now and then: each ask takes its time, and steps are all that ends the search. */
    private static Effort slow(Effort steps) {
        return new Effort() {
            private int asks;

            @Override
            public boolean spent() {
                return spentAfter(1);
            }

            @Override
            public boolean spentAfter(int more) {
                if (asks++ % 200 == 0) {
                    try {
                        Thread.sleep(1);
                    } catch (InterruptedException stopped) {
                        Thread.currentThread().interrupt();
                    }
                }
                return steps.spentAfter(more);
            }

            @Override
            public Ending cause() {
                return steps.cause();
            }

            @Override
            public Effort share(double share) {
                return slow(steps.share(share));
            }
        };
    }

    @Test
    void by_steps_a_slow_machine_places_the_set_a_fast_one_does() throws IOException {
        for (int places : new int[] {7, 12, 20}) {
            SmallWheel wheel = SmallWheel.random(new Random(places), places + 2);
            JsonNode fast = match(job(places), wheel.csv(), Effort.ofAsks(6_000));
            assertThat(fast.get("ended_by").asText()).isIn("steps", "proof");
            assertThat(match(job(places), wheel.csv(), slow(Effort.ofAsks(6_000))))
                    .isEqualTo(fast);
        }
    }

    /** What a proof ends does not ask how long it took. */
    @Test
    void by_proof_the_effort_makes_no_difference() throws IOException {
        for (int places : new int[] {4, 6, 8}) {
            SmallWheel wheel = SmallWheel.random(new Random(places), places + 1);
            JsonNode once = match(job(places), wheel.csv(), Effort.unlimited());
            assertThat(match(job(places), wheel.csv(), Effort.ofAsks(0))).isEqualTo(once);
        }
    }

    /** The first piece listed that is placed begins the round, and the earlier listed of its neighbours is next. */
    @Test
    void a_wheel_that_may_be_turned_begins_with_the_piece_listed_first() throws IOException {
        SmallWheel wheel = SmallWheel.random(new Random(2), 9);
        int[] order =
                SmallWheel.order(match(job(8), wheel.csv(), Effort.unlimited()).get("places"));
        for (int piece : order) {
            assertThat(order[0]).isLessThanOrEqualTo(piece);
        }
        assertThat(order[1]).isLessThan(order[7]);
    }

    @Test
    void weights_in_whole_grams_are_asked_about_where_tenths_are_said() {
        String whole = "piece,mass_g\n1,50\n2,51\n3,50\n4,52\n5,51\n";
        assertThat(asked(0.1, whole)).containsExactly(Slip.Kind.SCALE);
        assertThat(asked(1, whole)).isEmpty();
        assertThat(asked(0.1, whole.replace("4,52", "4,52.3"))).isEmpty();
        assertThat(asked(0.1, whole.replace("5,51\n", ""))).isEmpty();
    }

    private static List<Slip.Kind> asked(double scaleG, String csv) {
        String job = SmallWheel.framed(scaleG, "{\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 60}");
        return ColumnTargets.questions(
                        JobReader.read(job).job().orElseThrow(), PiecesFile.parse(csv, UnitSystem.METRIC))
                .stream()
                .map(Slip::kind)
                .filter(kind -> kind == Slip.Kind.SCALE)
                .toList();
    }
}
