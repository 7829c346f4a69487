package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.read.JobReader;

/** What a plan says of a blank too small, of sanding and of wrenches; written for an invented stool's rung. */
class CuttingWarningsTest {
    private static Plan plan(String stock, String ring, String allowances) {
        String text = """
                {"format": "turnalike-job", "version": 1, "title": "Rung (invented)", "units": "in",
                 "pattern": {"stock": {"section": "square", "size": "%s", "length": "12"},
                   "members": [{"kind": "tenon", "length": "1", "diameter": "1/2"},
                               {"kind": "cylinder", "name": "3 mm quirk", "length": "8", "diameter": "%s"},
                               {"kind": "tenon", "length": "1", "diameter": "1/2"}]},
                 "wood": {"density_kg_m3": 700},
                 "allowances": {%s}}
                """.formatted(stock, ring, allowances);
        Job.Read read = JobReader.read(text);
        assertThat(read.problems()).isEmpty();
        return Plan.of(read.job().orElseThrow(), Effort.ofAsks(1000));
    }

    private static List<String> said(Plan plan) {
        return plan.warnings().stream()
                .map(each -> each.where() + ": " + each.what())
                .toList();
    }

    @Test
    void a_round_as_large_as_the_flats_does_not_clean_up_and_no_caliper_is_set_to_it() {
        Plan full = plan("2 3/4", "2 3/4", "\"sizing\": \"1/16\"");
        assertThat(said(full))
                .filteredOn(each -> each.contains("clean up"))
                .singleElement()
                .asString()
                .contains(
                        "member 2 (3 mm quirk): 2 3/4 in",
                        "does not clean up from a blank of 2 3/4 in",
                        "2 23/32 in (69.06 mm) at most");
        // 2 3/4 in less twice 1/64 in.
        assertThat(full.settings().calipers())
                .extracting(each -> each.opening().mm())
                .allMatch(mm -> mm < (2 + 23.0 / 32) * 25.4 + 1e-9);
        assertThat(full.settings().calipers().get(1).leastLeft().mm()).isZero();
        Plan just = plan("2 3/4", "2 23/32", "\"sizing\": \"1/16\"");
        assertThat(said(just)).noneMatch(each -> each.contains("clean up"));
        assertThat(just.settings().calipers())
                .extracting(each -> each.opening().mm())
                .allMatch(mm -> mm < (2 + 23.0 / 32) * 25.4 + 1e-9);
    }

    @Test
    void sanding_that_takes_more_than_sizing_leaves_is_told() {
        assertThat(said(plan("1 1/2", "1", "\"sizing\": \"1/32\", \"sanding\": \"1/16\"")))
                .anyMatch(each -> each.startsWith("allowances: sanding takes 1/16 in"));
        assertThat(said(plan("1 1/2", "1", "\"sizing\": \"1/32\", \"sanding\": \"1/32\"")))
                .noneMatch(each -> each.contains("sanding takes"));
    }

    /** A half-inch wrench opens to 0.504 in at least: 1/64 in over a half-inch tenon is past that, nothing is not. */
    @Test
    void calipers_that_go_past_the_wrench_are_told() {
        assertThat(said(plan("1 1/2", "1", "")))
                .filteredOn(each -> each.contains("go past a 1/2 in wrench, which opens to"))
                .hasSize(2)
                .allMatch(each -> each.contains("leave a sizing allowance"));
        assertThat(said(plan("1 1/2", "1", "\"sizing\": \"1/64\""))).noneMatch(each -> each.contains("wrench"));
    }

    /** An 8 mm tenon has an 8 mm wrench, which the order of cuts names: that 5/16 in opens a hair wider is nobody's business. */
    @Test
    void where_the_nearest_wrench_serves_the_next_one_is_not_told() {
        String text = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"stock": {"section": "square", "size": 18, "length": 200},
                   "members": [{"kind": "cylinder", "length": 150, "diameter": 12}, {"kind": "tenon", "length": 25, "diameter": 8}]},
                 "wood": {"density_kg_m3": 700}}
                """;
        Plan plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(1000));
        assertThat(plan.settings().tenons().get(0).wrenches())
                .extracting(each -> each.name())
                .containsExactly("8 mm", "5/16 in");
        assertThat(said(plan)).noneMatch(each -> each.contains("wrench"));
    }

    @Test
    void a_title_that_begins_with_a_figure_does_not_run_into_the_number() {
        Plan plan = plan("1 1/2", "1", "");
        assertThat(plan.job().pattern().placed().get(1).caption()).isEqualTo("2: 3 mm quirk");
        assertThat(plan.job().pattern().placed().get(0).caption()).isEqualTo("1 tenon");
        assertThat(plan.marks().get(1).label()).isEqualTo("1 tenon | 2: 3 mm quirk");
        assertThat(plan.turning().cuts().toString()).doesNotContain("2 3 mm quirk");
    }
}
