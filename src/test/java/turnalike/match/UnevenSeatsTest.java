package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
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

/** A seat that lies deeper takes its piece nearer to the axle: held against every order, each piece's pull added up in its own seat. */
class UnevenSeatsTest {
    @Test
    void the_least_unbalance_of_every_set_and_order_is_found_and_proven() {
        Seeds.each(12, random -> {
            int places = 3 + random.nextInt(4);
            int spares = random.nextInt(3);
            WheelProblem problem = random(random, places, places + spares, 100);
            WheelPlacement placed = WheelMatch.solve(problem, Effort.unlimited());
            double least = least(problem, new ArrayList<>());
            assertThat(placed.unbalance().gMm()).isCloseTo(least, within(1e-7));
            assertThat(placed.bestProven()).isTrue();
            assertThat(unbalance(
                            problem,
                            placed.seats().stream()
                                    .map(seat -> problem.pieces().indexOf(seat.piece()))
                                    .toList()))
                    .isCloseTo(least, within(1e-7));
        });
    }

    /** Deep and shallow in turn: the depths alone cancel round the wheel, but no wheel of theirs may be turned under its pieces. */
    @Test
    void seats_that_cancel_one_another_still_tell_their_places_apart() {
        WheelProblem even = random(new Random(3), 6, 6, 100);
        List<Length> turns = new ArrayList<>();
        for (int place = 0; place < 6; place++) {
            turns.add(Length.ofMm(place % 2 == 0 ? 30 : 0));
        }
        WheelProblem problem = new WheelProblem(even.pieces(), even.wheel(), 100, even.scale(), List.of(), true, turns);
        WheelPlacement placed = WheelMatch.solve(problem, Effort.unlimited());
        assertThat(placed.unbalance().gMm()).isCloseTo(least(problem, new ArrayList<>()), within(1e-7));
    }

    /** What the searches leave out of uneven seats is bounded: by hand, two pieces 3 g off the mean in seats 2 mm off theirs. */
    @Test
    void what_the_search_leaves_out_is_bounded_and_none_with_seats_alike() {
        double[] masses = {97, 103};
        WheelArrays uneven = new WheelArrays(
                masses, masses, new PlaceDirections(2), new SetRule(masses, 2, 1), 0, 0, new double[] {-2, 2}, 100);
        assertThat(uneven.missGMm()).isCloseTo(12, within(1e-9));
        assertThat(uneven.trueGMm(new int[] {0, 1})[0]).isCloseTo(97 - 103 - 6 + 6, within(1e-12));
        assertThat(uneven.free()).isFalse();
        WheelArrays alike = new WheelArrays(masses, masses, new PlaceDirections(2), new SetRule(masses, 2, 1), 0, 0);
        assertThat(alike.missGMm()).isZero();
        assertThat(alike.free()).isTrue();
    }

    /** Seats deeper by the same everywhere are a smaller hub. */
    @Test
    void seats_all_deeper_alike_are_a_smaller_hub() {
        WheelProblem problem = random(new Random(5), 8, 9, 0);
        WheelProblem deeper = new WheelProblem(
                problem.pieces(),
                problem.wheel(),
                100,
                problem.scale(),
                List.of(),
                true,
                Collections.nCopies(8, Length.ofMm(4)));
        List<Candidate> nearer = problem.pieces().stream()
                .map(p -> new Candidate(p.label(), p.mass(), p.reach().minus(Length.ofMm(4))))
                .toList();
        WheelProblem smaller = new WheelProblem(nearer, problem.wheel(), 100, problem.scale(), List.of(), true);
        assertThat(WheelMatch.solve(deeper, Effort.unlimited()).unbalance().gMm())
                .isCloseTo(
                        WheelMatch.solve(smaller, Effort.unlimited())
                                .unbalance()
                                .gMm(),
                        within(1e-7));
    }

    private static double least(WheelProblem problem, List<Integer> order) {
        if (order.size() == problem.wheel().places()) {
            return unbalance(problem, order);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int piece = 0; piece < problem.pieces().size(); piece++) {
            if (!order.contains(piece)) {
                order.add(piece);
                least = Math.min(least, least(problem, order));
                order.remove(order.size() - 1);
            }
        }
        return least;
    }

    private static double unbalance(WheelProblem problem, List<Integer> order) {
        double x = 0;
        double y = 0;
        for (Moment given : problem.given()) {
            x += given.gMm() * Math.cos(given.at().radians());
            y += given.gMm() * Math.sin(given.at().radians());
        }
        for (int place = 0; place < order.size(); place++) {
            Candidate piece = problem.pieces().get(order.get(place));
            double pull = piece.mass().grams()
                    * (piece.reach().mm() - problem.seatDepths().get(place).mm());
            x += pull * Math.cos(2 * Math.PI * place / order.size());
            y += pull * Math.sin(2 * Math.PI * place / order.size());
        }
        return Math.hypot(x, y);
    }

    private static WheelProblem random(Random random, int places, int pieces, double givenGMm) {
        List<Candidate> all = new ArrayList<>();
        List<Length> depths = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            all.add(new Candidate(
                    "p" + i, Mass.ofGrams(100 + random.nextGaussian()), Length.ofMm(290 + random.nextGaussian())));
        }
        for (int i = 0; i < places; i++) {
            depths.add(Length.ofMm(1.5 * random.nextGaussian()));
        }
        List<Moment> given = givenGMm == 0 ? List.of() : List.of(new Moment(givenGMm, Angle.ofDegrees(40)));
        return new WheelProblem(all, new Wheel(places, Length.ofMm(60)), 100, Mass.ofGrams(0.1), given, true, depths);
    }
}
