package turnalike.stock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;

/** The same least cost from a solver of another kind, OR-Tools CP-SAT, on questions too large to try every way. */
class BoardSearchTest {
    private static final double SECONDS = 60;

    @Test
    void boards_of_several_lengths_and_prices_cost_as_little_as_cp_sat_finds() {
        Seeds.each(12, random -> {
            Question question = random(random);
            BoardSearch.Outcome found = BoardSearch.solve(question, Long.MAX_VALUE, Effort.ofAsks(3_000_000), "boards");
            CpSatPacking.Found reference = CpSatPacking.solve(question, SECONDS, 1);
            assertThat(reference.proven()).isTrue();
            assertThat(found.proven()).isTrue();
            assertThat(found.found().map(BoardSearch.Found::cost).orElse(-1L)).isEqualTo(reference.cost());
        });
    }

    /** Sixteen pieces of which three or four fill a stretch, so that a first fit seldom does. */
    @Test
    void stretches_all_alike_are_as_few_as_cp_sat_finds() {
        Seeds.each(12, random -> {
            int[] lengths = new int[16];
            for (int i = 0; i < lengths.length; i++) {
                lengths[i] = 200 + random.nextInt(320);
            }
            Question question = Packings.question(1_000, lengths);
            BoardSearch.Outcome found = BoardSearch.solve(question, Long.MAX_VALUE, Effort.ofAsks(3_000_000), "boards");
            // With no more boards than ours, or, were ours wrong, with none at all: that is proven in half the time.
            int boards = (int) found.found().orElseThrow().cost();
            CpSatPacking.Found reference = CpSatPacking.solve(question, SECONDS, 1, boards);
            assertThat(reference.proven()).isTrue();
            assertThat(found.proven()).isTrue();
            assertThat(found.bound()).isEqualTo(reference.cost());
            assertThat(found.found().map(BoardSearch.Found::cost)).hasValue(reference.cost());
        });
    }

    @Test
    void a_search_that_is_ended_early_says_what_it_knows() {
        Random random = new Random(3);
        int[] lengths = random.ints(80, 200, 520).toArray();
        Question question = Packings.question(1_000, lengths);
        BoardSearch.Outcome cut = BoardSearch.solve(question, Long.MAX_VALUE, Effort.ofAsks(40), "boards");
        BoardSearch.Outcome whole = BoardSearch.solve(question, Long.MAX_VALUE, Effort.ofAsks(3_000_000), "boards");
        assertThat(cut.proven()).isFalse();
        assertThat(cut.bound()).isLessThanOrEqualTo(whole.bound());
        assertThat(cut.found().orElseThrow().cost())
                .isGreaterThanOrEqualTo(whole.found().orElseThrow().cost());
    }

    /** More types than are searched at once, so that most are ruled out by their price: nothing dear is taken for proven. */
    @Test
    void many_types_of_boards_cost_as_little_as_cp_sat_finds() {
        Seeds.each(6, random -> {
            Question question = many(random);
            assertThat(question.types()).hasSizeGreaterThan(ManyTypes.FEW);
            BoardSearch.Outcome found = BoardSearch.solve(question, Long.MAX_VALUE, Effort.ofAsks(3_000_000), "boards");
            CpSatPacking.Found reference = CpSatPacking.solve(question, SECONDS, 2);
            long cost = found.found().orElseThrow().cost();
            assertThat(reference.proven()).isTrue();
            assertThat(found.bound()).isLessThanOrEqualTo(reference.cost());
            assertThat(cost).isGreaterThanOrEqualTo(reference.cost());
            assertThat(found.proven()).isTrue();
            assertThat(cost).isEqualTo(reference.cost());
        });
    }

    private static Question many(Random random) {
        int kinds = 3;
        long[] weights = new long[kinds];
        int[] demand = new int[kinds];
        BitSet all = new BitSet();
        for (int kind = 0; kind < kinds; kind++) {
            weights[kind] = 150L + random.nextInt(300);
            demand[kind] = 2 + random.nextInt(4);
            all.set(kind);
        }
        int count = 75;
        List<Question.Stretch> stretches = new ArrayList<>();
        List<Question.Type> types = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int capacity = 300 + random.nextInt(1_500);
            stretches.add(new Question.Stretch(all, capacity));
            int[] rip = new int[count];
            rip[i] = 1 + random.nextInt(2);
            long cost = Math.round(capacity * rip[i] * (0.05 + 0.02 * random.nextDouble()));
            types.add(new Question.Type(cost, 1, List.of(rip)));
        }
        return new Question(weights, demand, stretches, types);
    }

    private static Question random(Random random) {
        int kinds = 3 + random.nextInt(4);
        long[] weights = new long[kinds];
        int[] demand = new int[kinds];
        BitSet all = new BitSet();
        for (int kind = 0; kind < kinds; kind++) {
            weights[kind] = 150L + random.nextInt(400);
            demand[kind] = 1 + random.nextInt(4);
            all.set(kind);
        }
        List<Question.Stretch> stretches = new ArrayList<>();
        List<Question.Type> types = new ArrayList<>();
        int lengths = 2 + random.nextInt(3);
        for (int i = 0; i < lengths; i++) {
            stretches.add(new Question.Stretch(all, 500L + random.nextInt(1_000)));
        }
        for (int i = 0; i < lengths; i++) {
            int[] rip = new int[lengths];
            rip[i] = 1 + random.nextInt(3);
            rip[random.nextInt(lengths)]++;
            types.add(new Question.Type(3L + random.nextInt(20), 1 + random.nextInt(4), List.of(rip)));
        }
        return new Question(weights, demand, stretches, types);
    }
}
