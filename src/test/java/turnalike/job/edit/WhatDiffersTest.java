package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.job.edit.WhatDiffers.Difference;
import turnalike.job.fields.KeySection;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.pattern.MemberKey;
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
                .extracting(Difference::where, Difference::field, Difference::was, Difference::now)
                .contains(
                        tuple("Order", "Good pieces wanted", "14", "12"),
                        tuple("member 3 (hub bead)", "Diameter at its crown", "1 1/2 in", "1 3/8 in"));
    }

    @Test
    void no_field_of_the_form_is_told_by_its_key() throws IOException {
        JobText named = after(
                demo(),
                new MemberEdit(3, new MemberEdit.Sizes(Map.of(MemberKey.NAME, "fat one", MemberKey.BY_EYE, "true"))));
        assertThat(WhatDiffers.between(demo(), named))
                .containsExactly(
                        new Difference("member 3 (fat one)", "Name", "hub bead", "fat one", true),
                        new Difference("member 3 (fat one)", "Cut by eye, not measured", "", "yes", false));
        for (KeyPaths.At at : KeyPaths.all()) {
            if (at.key().field().section() != KeySection.NONE) {
                assertThat(FieldWords.of(demo()).label(at.path()))
                        .as(at.path())
                        .isEqualTo(at.key().field().label())
                        .isNotEmpty();
            }
        }
    }

    @Test
    void beside_a_member_that_came_a_changed_one_is_still_known() throws IOException {
        MemberKind vee = MemberKind.find("vee").orElseThrow();
        JobText now = after(demo(), new MemberEdit(3, new MemberEdit.Insert(vee, true)));
        now = after(now, new MemberEdit(3, new MemberEdit.Sizes(Map.of("crown", "1 3/8"))));
        assertThat(WhatDiffers.between(demo(), now))
                .extracting(Difference::where, Difference::field, Difference::was, Difference::now)
                .contains(
                        tuple("member 4 (vee)", "", "", "in the run"),
                        tuple("member 3 (hub bead)", "Diameter at its crown", "1 1/2 in", "1 3/8 in"))
                .doesNotContain(tuple("member 3 (hub bead)", "", "in the run", ""));
        assertThat(WhatDiffers.between(now, demo()))
                .extracting(Difference::where, Difference::was, Difference::now)
                .contains(tuple("member 4 (vee)", "in the run", ""));
    }

    @Test
    void of_a_table_the_rows_that_came_are_told_and_of_many_how_many() throws IOException {
        JobText two = after(demo(), new TableEdit(ShopTable.BLANKS, new TableEdit.Add(blanks(2))));
        assertThat(WhatDiffers.between(demo(), two))
                .containsExactly(new Difference("", "Blanks weighed", "", "b1, 561; b2, 562", true));
        JobText nine = after(demo(), new TableEdit(ShopTable.BLANKS, new TableEdit.Add(blanks(9))));
        assertThat(WhatDiffers.between(demo(), nine))
                .containsExactly(new Difference("", "Blanks weighed", "", "9 rows", false));
    }

    private static List<Map<String, String>> blanks(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> Map.of("blank", "b" + i, "mass_g", String.valueOf(560 + i)))
                .toList();
    }
}
