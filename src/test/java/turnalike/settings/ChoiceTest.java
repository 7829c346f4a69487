package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static turnalike.settings.DividersTest.problem;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Which of two choices is the better, and what a problem can be. */
class ChoiceTest {
    private static final DividerProblem FOUR = problem(0, 20, 40, 60, 130);
    private static final Spans SPANS = FOUR.spans(FOUR.mostSteps(), FOUR.forbidden());

    /** So many openings with which so many marks are struck, each from the end. */
    private static Choice choice(int settings, int marks, double longestMm) {
        Strikes strikes = Strikes.none(SPANS, new int[0]);
        for (int mark = 1; mark <= marks; mark++) {
            strikes.strike(mark, 0, 0);
        }
        return Choice.of(new int[settings], new int[] {3, 1}, strikes, longestMm);
    }

    @Test
    void fewer_settings_then_fewer_steps_then_the_shorter_longest_step_is_better() {
        Choice one = choice(2, 2, 50);
        assertThat(one.sum()).isEqualTo(2);
        assertThat(one.longestMm()).isEqualTo(50);
        assertThat(one.settings()).isEqualTo(2);
        assertThat(one.stick()).containsExactly(1, 3);
        assertThat(one.strikes()).isPresent();
        for (Choice worse : List.of(choice(3, 1, 10), choice(2, 3, 10), choice(2, 2, 50.1))) {
            assertThat(one.betterThan(worse)).isTrue();
            assertThat(worse.betterThan(one)).isFalse();
        }
        assertThat(one.betterThan(choice(2, 2, 50))).as("as good").isFalse();
        assertThat(one.betterThan(choice(2, 2, 50 + Spans.SLACK_MM / 2)))
                .as("told apart by rounding alone")
                .isFalse();
    }

    @Test
    void a_wish_or_a_square_that_is_no_inner_mark_is_refused() {
        for (int mark : new int[] {-1, 0, 4, 5}) {
            assertThatThrownBy(() -> FOUR.withOnTheStick(Set.of(mark)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("only inner marks 1 to 3 can be on the stick, was " + mark);
        }
        assertThat(FOUR.withOnTheStick(Set.of(1, 3)).onTheStick()).containsExactlyInAnyOrder(1, 3);
        for (int square : new int[] {-1, 4}) {
            assertThatThrownBy(() -> FOUR.withSquares(Set.of(square)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a square begins at a mark 0 to 3, was " + square);
        }
        assertThatThrownBy(() -> FOUR.withLargest(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_square_has_its_shoulders_where_it_begins_and_ends() {
        assertThat(FOUR.shoulders()).isEmpty();
        assertThat(FOUR.withSquares(Set.of(1)).shoulders()).containsExactly(1, 2);
        assertThat(FOUR.withSquares(Set.of(0, 3)).shoulders()).containsExactly(1, 3);
    }

    @Test
    void dividers_open_to_what_is_usual_in_the_jobs_own_units() {
        assertThat(DividerProblem.usualLargest(UnitSystem.INCH)).isEqualTo(Length.ofInches(8));
        assertThat(DividerProblem.usualLargest(UnitSystem.METRIC)).isEqualTo(Length.ofMm(200));
    }
}
