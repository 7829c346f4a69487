package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import turnalike.job.Plan;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.nudge.Nudges;
import turnalike.web.kit.PageWork;

class PlanCacheTest {
    private static final JobId ONE = JobId.of(new int[] {1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
    private static final JobId ANOTHER = JobId.of(new int[] {2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});

    /** An invented run of twelve, not proven at once. */
    private static JobText twelve(double crown, double firstLength) {
        double[] lengths = {firstLength, 7, 19, 11, 23, 5, 31, 13, 17, 9, 29, 15};
        List<String> members = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            members.add(
                    i % 2 == 0
                            ? "{\"kind\": \"bead\", \"length\": %s, \"root\": 24, \"crown\": %s}"
                                    .formatted(lengths[i], crown)
                            : "{\"kind\": \"fillet\", \"length\": %s, \"diameter\": 26}".formatted(lengths[i]));
        }
        JobText.Read read = JobText.read("""
                {"format": "turnalike-job", "version": 1, "title": "Twelve", "units": "mm",
                 "pattern": {"stock": {"section": "square", "size": 40, "length": 300}, "members": [%s]},
                 "wood": {"density_kg_m3": 700}, "count": 4}
                """.formatted(String.join(", ", members)));
        return read.text().orElseThrow(() -> new AssertionError(read.problems()));
    }

    /** An invented turning of 58 marks without repeats: its proof takes hours, so that only its time or an edit ends the search. */
    private static JobText rings(int shortest) {
        List<String> members = new ArrayList<>();
        for (int i = 0; i < 57; i++) {
            members.add("{\"kind\": \"cylinder\", \"length\": %d.%d, \"diameter\": %d}"
                    .formatted(shortest + i * i % 23, i * 7 % 10, 30 + i % 2));
        }
        JobText.Read read = JobText.read("""
                {"format": "turnalike-job", "version": 1, "title": "Rings", "units": "mm", "settings": {"largest": 1500},
                 "pattern": {"stock": {"section": "square", "size": 40, "length": 1500}, "members": [%s]},
                 "wood": {"density_kg_m3": 700}, "count": 4}
                """.formatted(String.join(", ", members)));
        return read.text().orElseThrow(() -> new AssertionError(read.problems()));
    }

    @Test
    void settings_that_were_searched_for_serve_every_text_with_the_same_marks() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        Plan quick = plans.now(ONE, twelve(32, 12.3));
        assertThat(plans.isFinal(quick)).isFalse();
        Plan patient = plans.patient(ONE, twelve(32, 12.3));
        assertThat(plans.isFinal(patient)).isTrue();
        assertThat(plans.now(ONE, twelve(32, 12.3)).settings()).isEqualTo(patient.settings());

        Plan thicker = plans.now(ONE, twelve(33, 12.3));
        assertThat(plans.isFinal(thicker)).isTrue();
        assertThat(thicker.settings().dividers()).isEqualTo(patient.settings().dividers());
        assertThat(thicker.settings().calipers())
                .isNotEqualTo(patient.settings().calipers());
        assertThat(plans.isFinal(plans.now(ONE, twelve(32, 12.9)))).isFalse();
    }

    @Test
    void what_is_begun_ahead_is_worked_out_once() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobText text = twelve(32, 12.3);
        Plan quick = plans.now(ONE, text);
        assertThat(plans.ahead(ONE, text).join()).isSameAs(quick);
    }

    @Test
    void what_was_looked_at_on_the_way_serves_when_it_is_kept_unless_a_search_found_better_since() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        plans.now(ONE, twelve(32, 12.3));
        Plan seen = plans.glimpse(twelve(33, 12.3));
        assertThat(plans.now(ONE, twelve(33, 12.3))).isSameAs(seen);

        Plan early = plans.glimpse(twelve(34, 12.3));
        plans.patient(ONE, twelve(33, 12.3));
        assertThat(plans.isFinal(early)).isFalse();
        assertThat(plans.isFinal(plans.now(ONE, twelve(34, 12.3)))).isTrue();
    }

    @Test
    void one_jobs_page_does_not_end_the_search_for_another() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        CompletableFuture<Plan> one = CompletableFuture.supplyAsync(() -> plans.patient(ONE, twelve(32, 12.3)));
        CompletableFuture<Plan> another = CompletableFuture.supplyAsync(() -> plans.patient(ANOTHER, twelve(32, 12.9)));
        JobId third = JobId.of(new int[12]);
        while (!one.isDone() || !another.isDone()) {
            plans.now(third, twelve(32, 13.7));
        }
        assertThat(plans.isFinal(one.join())).isTrue();
        assertThat(plans.isFinal(another.join())).isTrue();
    }

    @Test
    void the_next_edit_of_a_job_ends_its_own_search() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobText text = rings(5);
        JobText edited = rings(6);
        plans.now(ONE, text);
        plans.now(ONE, edited);
        CompletableFuture<Plan> old = CompletableFuture.supplyAsync(() -> plans.patient(ONE, text));
        while (!old.isDone()) {
            plans.now(ONE, edited);
        }
        assertThat(plans.isFinal(old.join())).isFalse();
    }

    /** Another window on the same job, a reload. */
    @Test
    void looking_at_the_same_text_again_does_not_end_its_search() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        CompletableFuture<Plan> search = CompletableFuture.supplyAsync(() -> plans.patient(ONE, twelve(32, 12.3)));
        while (!search.isDone()) {
            plans.now(ONE, twelve(32, 12.3));
        }
        assertThat(plans.isFinal(search.join())).isTrue();
    }

    /** The other text is the latest for moments only: whether the search is just then looking must not matter. */
    @Test
    void a_search_that_an_edit_ended_stays_ended_when_the_edit_is_taken_back() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobText text = rings(5);
        JobText other = rings(6);
        // Made before: a plan that is being made waits for a thread of those that the search holds one of, on two
        // cores the only one.
        plans.now(ONE, text);
        plans.now(ONE, other);
        CompletableFuture<Plan> search = CompletableFuture.supplyAsync(() -> plans.patient(ONE, text));
        while (!search.isDone()) {
            plans.now(ONE, other);
            for (int i = 0; i < 50; i++) {
                plans.now(ONE, text);
            }
        }
        assertThat(plans.isFinal(search.join())).isFalse();
    }

    @Test
    void a_search_goes_on_when_its_job_is_forgotten_for_others_and_seen_again() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobText text = twelve(32, 12.3);
        CompletableFuture<Plan> search = CompletableFuture.supplyAsync(() -> plans.patient(ONE, text));
        while (!search.isDone()) {
            for (int other = 0; other < 100; other++) {
                plans.now(JobId.of(new int[] {3, other % 10, other / 10, 0, 0, 0, 0, 0, 0, 0, 0, 0}), text);
            }
            plans.now(ONE, text);
        }
        assertThat(plans.isFinal(search.join())).isTrue();
    }

    @Test
    void what_a_search_found_leaves_the_plans_of_other_marks_as_they_are() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        Plan other = plans.now(ANOTHER, twelve(32, 12.9));
        Plan sameMarks = plans.now(ANOTHER, twelve(33, 12.3));
        plans.patient(ONE, twelve(32, 12.3));
        assertThat(plans.now(ANOTHER, twelve(32, 12.9))).isSameAs(other);
        assertThat(plans.now(ANOTHER, twelve(33, 12.3))).isNotSameAs(sameMarks);
    }

    /** Invented; half a millimetre makes the two ends' distances one. */
    private static JobText nearlyEven(double last) {
        return JobText.read("""
                        {"format": "turnalike-job", "version": 1, "title": "Nearly even", "units": "mm",
                         "tolerances": {"mark": 0.5},
                         "pattern": {"stock": {"section": "round", "size": 40, "length": 130}, "members": [
                          {"kind": "cylinder", "length": 20, "diameter": 30},
                          {"kind": "cylinder", "length": 80, "diameter": 25},
                          {"kind": "cylinder", "length": %s, "diameter": 30}]},
                         "wood": {"density_kg_m3": 700}}
                        """.formatted(last)).text().orElseThrow();
    }

    @Test
    void nudges_are_sought_once_for_a_text_and_its_settings() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobText text = nearlyEven(20.5);
        Plan plan = plans.patient(ONE, text);
        Nudges found = plans.nudges(ONE, text, plan);
        assertThat(found.nudges()).isNotEmpty();
        assertThat(plans.nudges(ONE, nearlyEven(20.5), plan)).isSameAs(found);
        JobText moved = nearlyEven(20);
        Plan even = plans.patient(ONE, moved);
        assertThat(plans.nudges(ONE, moved, even).nudges()).isEmpty();
        assertThat(plans.nudges(ONE, text, even))
                .as("counted from other settings")
                .isNotSameAs(found);
    }
}
