package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;

class WheelMatchTest {
    @Test
    void finds_what_plain_enumeration_finds_on_small_wheels() {
        Seeds.each(300, random -> {
            int places = 1 + random.nextInt(6);
            int pieces = places + random.nextInt(Math.min(3, 8 - places) + 1);
            WheelProblem problem = random(random, places, pieces, random.nextInt(3) == 0);
            WheelPlacement placement = WheelMatch.solve(problem, Effort.ofAsks(0));
            assertSound(problem, placement);
            assertThat(placement.bestProven()).isTrue();
            assertThat(placement.unbalance().gMm()).isCloseTo(new PlainEnumeration(problem).smallestGMm, within(1e-7));
        });
    }

    @Test
    void finds_what_plain_enumeration_finds_on_eight_places_from_nine_pieces() {
        Seeds.each(3, random -> {
            WheelProblem problem = random(random, 8, 9, false);
            WheelPlacement placement = WheelMatch.solve(problem, Effort.ofAsks(0));
            assertSound(problem, placement);
            assertThat(placement.bestProven()).isTrue();
            assertThat(placement.unbalance().gMm()).isCloseTo(new PlainEnumeration(problem).smallestGMm, within(1e-7));
        });
    }

    @Test
    void large_wheels_come_below_the_noise_of_the_scale() {
        Seeds.each(4, random -> {
            WheelProblem any = random(random, 30 + random.nextInt(371), 2000, true);
            WheelProblem problem =
                    new WheelProblem(any.pieces(), any.wheel(), any.tolerancePct(), any.scale(), any.given(), false);
            WheelPlacement placement = WheelMatch.solve(problem, Effort.ofAsks(500));
            assertSound(problem, placement);
            assertThat(placement.unbalance().gMm()).isLessThan(placement.noiseFloorGMm());
        });
    }

    @Test
    void the_same_effort_gives_the_same_placement() {
        WheelProblem problem = random(new Random(5), 24, 30, false);
        assertThat(WheelMatch.solve(problem, Effort.ofAsks(30)))
                .isEqualTo(WheelMatch.solve(problem, Effort.ofAsks(30)));
    }

    @Test
    void a_set_that_passes_is_chosen_before_a_set_that_balances() {
        // Three of the four light ones are alike within 20 % and leave less over, but only the heavy three pass.
        WheelProblem problem = problem(3, 2, 100, 10, 101, 10.3, 100.5, 10.6);
        WheelPlacement placement = WheelMatch.solve(problem, Effort.unlimited());
        assertThat(placement.seats()).extracting(s -> s.piece().mass().grams()).containsOnly(100.0, 101.0, 100.5);
        assertThat(placement.spares()).hasSize(3);
        assertThat(placement.massSpread().grams()).isEqualTo(1);
        assertThat(placement.warnings()).isEmpty();
    }

    @Test
    void the_set_most_alike_is_placed_with_a_warning_when_none_passes() {
        WheelPlacement placement = WheelMatch.solve(problem(3, 1, 100, 110, 120, 180, 190, 195), Effort.unlimited());
        assertThat(placement.seats()).extracting(s -> s.piece().mass().grams()).containsOnly(180.0, 190.0, 195.0);
        assertThat(placement.warnings()).singleElement().asString().contains("most alike");
    }

    @Test
    void like_pieces_balance_to_nothing_and_that_is_proven() {
        WheelPlacement placement = WheelMatch.solve(problem(7, 2, 80, 80, 80, 80, 80, 80, 80), Effort.ofAsks(0));
        assertThat(placement.unbalance()).isEqualTo(Moment.NONE);
        assertThat(placement.bestProven()).isTrue();
    }

    @Test
    void one_very_heavy_piece_does_not_hold_up_the_choice() {
        double[] massesG = new double[41];
        for (int i = 0; i < 40; i++) {
            massesG[i] = 100 + i * 0.1;
        }
        massesG[40] = 400;
        WheelPlacement placement = WheelMatch.solve(problem(16, 1.55, massesG), Effort.ofAsks(100));
        assertThat(placement.massSpread().grams()).isLessThan(1.65);
        assertThat(placement.warnings()).isEmpty();
    }

    @Test
    void the_noise_floor_is_that_of_the_scale() {
        WheelPlacement placement = WheelMatch.solve(problem(4, 2, 80, 80, 80, 80), Effort.ofAsks(0));
        assertThat(placement.noiseFloorGMm()).isCloseTo(0.1 / Math.sqrt(12) * Math.sqrt(4 * 300.0 * 300), within(1e-9));
    }

    @Test
    void too_few_pieces_and_bad_ones_are_problems() {
        WheelProblem problem = problem(4, 2, 80, 80, -1);
        assertThat(problem.problems()).extracting(Problem::where).containsExactly("pieces", "piece 3");
        assertThatThrownBy(() -> WheelMatch.solve(problem, Effort.unlimited()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 pieces for 4 places");
    }

    private static void assertSound(WheelProblem problem, WheelPlacement placement) {
        int places = problem.wheel().places();
        assertThat(placement.seats()).hasSize(places);
        List<Candidate> all = new ArrayList<>(placement.spares());
        placement.seats().forEach(seat -> all.add(seat.piece()));
        assertThat(all).containsExactlyInAnyOrderElementsOf(problem.pieces());
        assertThat(placement.unbalance().gMm())
                .isCloseTo(PlainEnumeration.unbalanceGMm(problem, placement.seats()), within(1e-6));
        for (Seat seat : placement.seats()) {
            assertThat(seat.angle().degrees()).isEqualTo(360.0 * (seat.place() - 1) / places);
        }
        double meanG = placement.seats().stream()
                        .mapToDouble(s -> s.piece().mass().grams())
                        .sum()
                / places;
        if (placement.warnings().isEmpty()) {
            assertThat(placement.massSpread().grams() / meanG).isLessThan(problem.tolerancePct() / 100 + 1e-9);
        }
    }

    private static WheelProblem problem(int places, double tolerancePct, double... massesG) {
        List<Candidate> pieces = new ArrayList<>();
        for (double massG : massesG) {
            pieces.add(new Candidate("" + (pieces.size() + 1), Mass.ofGrams(massG), Length.ofMm(300)));
        }
        Wheel wheel = new Wheel(places, Length.ofMm(50));
        return new WheelProblem(pieces, wheel, tolerancePct, Mass.ofGrams(0.1), List.of(), false);
    }

    private static WheelProblem random(Random random, int places, int pieces, boolean given) {
        boolean coarse = random.nextInt(4) == 0; // whole grams: many equal pieces
        boolean sameReach = random.nextInt(3) == 0;
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double massG = 100 + 3 * random.nextGaussian();
            massG = coarse ? Math.rint(massG) : Math.rint(massG * 10) / 10;
            double reachMm = sameReach ? 290 : 290 + random.nextGaussian();
            all.add(new Candidate("p" + i, Mass.ofGrams(massG), Length.ofMm(reachMm)));
        }
        List<Moment> moments = given
                ? List.of(
                        new Moment(random.nextDouble() * 3000, Angle.ofDegrees(random.nextInt(360))),
                        new Moment(random.nextDouble() * 300, Angle.ofDegrees(random.nextInt(360))))
                : List.of();
        double[] tolerances = {0.5, 2, 5, 50};
        return new WheelProblem(
                all,
                new Wheel(places, Length.ofMm(60)),
                tolerances[random.nextInt(4)],
                Mass.ofGrams(0.1),
                moments,
                random.nextBoolean());
    }
}
