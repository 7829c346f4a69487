package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.job.Plan;
import turnalike.job.kept.JobText;

class PlanCacheTest {
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

    @Test
    void settings_that_were_searched_for_serve_every_text_with_the_same_marks() {
        PlanCache plans = new PlanCache();
        Plan quick = plans.now(twelve(32, 12.3));
        assertThat(plans.isFinal(quick)).isFalse();
        Plan patient = plans.patient(twelve(32, 12.3));
        assertThat(plans.isFinal(patient)).isTrue();
        assertThat(plans.now(twelve(32, 12.3)).settings()).isEqualTo(patient.settings());

        Plan thicker = plans.now(twelve(33, 12.3));
        assertThat(plans.isFinal(thicker)).isTrue();
        assertThat(thicker.settings().dividers()).isEqualTo(patient.settings().dividers());
        assertThat(thicker.settings().calipers())
                .isNotEqualTo(patient.settings().calipers());
        assertThat(plans.isFinal(plans.now(twelve(32, 12.9)))).isFalse();
    }

    @Test
    void what_is_begun_ahead_is_worked_out_once() {
        PlanCache plans = new PlanCache();
        JobText text = twelve(32, 12.3);
        Plan quick = plans.now(text);
        assertThat(plans.ahead(text).join()).isSameAs(quick);
    }
}
