package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.job.edit.WhatDiffers.Difference;
import turnalike.job.kept.JobText;
import turnalike.pattern.MemberKind;
import turnalike.units.UnitSystem;

class WhatDiffersTest {
    private static JobText demo() throws IOException {
        String text = Files.readString(Path.of("src/main/resources/turnalike/demo/fair-wheel.job.json"));
        return JobText.read(text).text().orElseThrow();
    }

    private static JobText after(JobText text, JobEdit edit) {
        return edit.on(text).text().orElseThrow();
    }

    @Test
    void a_text_differs_from_itself_in_nothing_nor_in_other_units() throws IOException {
        assertThat(WhatDiffers.between(demo(), demo())).isEmpty();
        JobText metric = after(demo(), new UnitsChange(UnitSystem.METRIC));
        assertThat(WhatDiffers.between(demo(), metric)).isEmpty();
    }

    @Test
    void each_field_that_differs_is_told_with_both_sizes() throws IOException {
        JobText now = after(demo(), JobEdit.fields(Map.of("count", "12")));
        now = after(now, new MemberEdit(3, new MemberEdit.Sizes(Map.of("crown", "1 3/8"))));
        assertThat(WhatDiffers.between(demo(), now))
                .extracting(Difference::where, Difference::was, Difference::now)
                .contains(tuple("count", "14", "12"), tuple("member 3 (hub bead): crown", "1 1/2", "1 3/8"));
    }

    @Test
    void beside_a_member_that_came_a_changed_one_is_still_known() throws IOException {
        MemberKind vee = MemberKind.find("vee").orElseThrow();
        JobText now = after(demo(), new MemberEdit(3, new MemberEdit.Insert(vee, true)));
        now = after(now, new MemberEdit(3, new MemberEdit.Sizes(Map.of("crown", "1 3/8"))));
        assertThat(WhatDiffers.between(demo(), now))
                .extracting(Difference::where, Difference::was, Difference::now)
                .contains(
                        tuple("member 4 (vee)", "", "in the run"),
                        tuple("member 3 (hub bead): crown", "1 1/2", "1 3/8"))
                .doesNotContain(tuple("member 3 (hub bead)", "in the run", ""));
        assertThat(WhatDiffers.between(now, demo()))
                .extracting(Difference::where, Difference::was, Difference::now)
                .contains(tuple("member 4 (vee)", "in the run", ""));
    }
}
