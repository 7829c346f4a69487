package turnalike.pieces.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.pieces.mend.LeastCostRemoval.Removable;
import turnalike.units.Length;
import turnalike.units.Mass;

/** Cuts found by hand: free ones first, one price, bounds met exactly, what cannot be met; and what each plan is turned into. */
class LeastCostRemovalTest {
    private static Removable straight(double gramsPerMm, double cost, double thick, double lower, double upper) {
        return new Removable(new Removal(gramsPerMm, 0), cost, thick, lower, upper);
    }

    private static double[] solve(double grams, Removable... stocks) {
        return LeastCostRemoval.solve(List.of(stocks), grams).orElseThrow();
    }

    @Test
    void what_costs_nothing_goes_where_the_piece_is_thickest_first() {
        Removable thin = straight(2, 1, 0.1, 0, 1);
        Removable thick = straight(2, 1, 0.3, 0, 1);
        // 0.6 g are free on the thick one, 0.2 g on the other.
        assertThat(solve(0.5, thin, thick)).containsExactly(new double[] {0, 0.25}, within(1e-12));
        assertThat(solve(0.7, thin, thick)).containsExactly(new double[] {0.05, 0.3}, within(1e-12));
        assertThat(solve(0.8, thin, thick)).containsExactly(new double[] {0.1, 0.3}, within(1e-12));
        assertThat(LeastCostRemoval.cost(List.of(thin, thick), new double[] {0.2, 0.5}))
                .isCloseTo(0.3, within(1e-12));
    }

    @Test
    void a_cut_begins_at_its_least_and_ends_at_its_most() {
        Removable dear = straight(1, 5, 0, 0.2, 1);
        Removable cheap = straight(1, 1, 0, 0, 0.5);
        assertThat(solve(0.2, dear, cheap)).containsExactly(new double[] {0.2, 0}, within(1e-12));
        assertThat(solve(0.6, dear, cheap)).containsExactly(new double[] {0.2, 0.4}, within(1e-12));
        assertThat(solve(0.9, dear, cheap)).containsExactly(new double[] {0.4, 0.5}, within(1e-9));
        assertThat(solve(1.5, dear, cheap)).containsExactly(new double[] {1, 0.5}, within(1e-12));
        assertThat(LeastCostRemoval.solve(List.of(dear, cheap), 0.19)).isEmpty();
        assertThat(LeastCostRemoval.solve(List.of(dear, cheap), 1.51)).isEmpty();
        assertThat(LeastCostRemoval.solve(List.of(), 1)).isEmpty();
        // Thick past its most, or below its least: free as far as it may be cut.
        assertThat(straight(1, 1, 2, 0, 0.5).free()).isEqualTo(0.5);
        assertThat(straight(1, 1, 0.1, 0.2, 0.5).free()).isEqualTo(0.2);
        assertThat(straight(1, 0, 0, 0, 0.5).free()).isEqualTo(0.5);
    }

    /** Two members of a = 2 and 3, b = 1/2 at one cost: 1/(2 − δ₁) = 1/(3 − δ₂), so δ₂ = δ₁ + 1. */
    @Test
    void two_members_share_the_price_of_the_next_gram() {
        Removable one = new Removable(new Removal(2, 0.5), 1, 0, 0, 1.5);
        Removable other = new Removable(new Removal(3, 0.5), 1, 0, 0, 2);
        double grams = new Removal(2, 0.5).grams(0.4) + new Removal(3, 0.5).grams(1.4);
        assertThat(solve(grams, one, other)).containsExactly(new double[] {0.4, 1.4}, within(1e-9));
        assertThat(one.atPrice(1 / 1.6)).isCloseTo(0.4, within(1e-12));
        assertThat(one.atPrice(0.5)).isZero();
        assertThat(one.atPrice(0.4)).isZero();
        assertThat(one.atPrice(100)).isEqualTo(1.5);
    }

    private static MendPlan plan(double massG) {
        Mendable member = new Mendable(
                1, "bead", Length.ZERO, Length.ofMm(5), new Removal(4, 0), CutRange.within(Length.ofMm(0.5)), 2);
        return Mend.plan(new MendOrder(
                "7",
                Mass.ofGrams(massG),
                Mass.ofGrams(100),
                Mass.ofGrams(0.1),
                Length.ofMm(0.5),
                Length.ZERO,
                List.of(member)));
    }

    @Test
    void each_plan_is_turned_into_what_its_case_says() {
        MendPlan.Cases<String> told = new MendPlan.Cases<>() {
            @Override
            public String leave(MendPlan.Leave leave) {
                return "leave " + leave.off().grams();
            }

            @Override
            public String cuts(MendPlan.Cuts cuts) {
                return "cuts " + cuts.cuts().size();
            }

            @Override
            public String light(MendPlan.Light light) {
                return "light " + light.lacking().grams();
            }

            @Override
            public String makeAnother(MendPlan.MakeAnother another) {
                return "another " + another.tooMuch().grams();
            }
        };
        assertThat(plan(100).match(told)).isEqualTo("leave 0.0");
        assertThat(plan(101).match(told)).isEqualTo("cuts 1");
        assertThat(plan(99).match(told)).isEqualTo("light 1.0");
        assertThat(plan(103).match(told)).isEqualTo("another 3.0");
    }

    @Test
    void the_working_says_what_is_least_and_asks_to_weigh_again() {
        assertThat(Mend.working().toString())
                .contains(
                        "least sum of weight x take-off / diameter tolerance that meets the mass",
                        "weigh again after half");
    }
}
