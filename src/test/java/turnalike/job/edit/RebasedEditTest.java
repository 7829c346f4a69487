package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.job.CheckPlace;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class RebasedEditTest {
    private static final MemberKind VEE = MemberKind.find("vee").orElseThrow();

    private static final JobText SEEN = JobFieldsTest.demo();

    private static JobText made(JobEdit edit, JobText text) {
        JobText.Read read = edit.on(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static MemberEdit sizes(int number, String key, String value) {
        return new MemberEdit(number, new MemberEdit.Sizes(Map.of(key, value)));
    }

    private static JobText both(JobEdit theirs, JobEdit mine) {
        JobText now = made(theirs, SEEN);
        RebasedEdit carried = RebasedEdit.over(mine, SEEN, now);
        assertThat(carried.problems()).isEmpty();
        return made(carried.edit().orElseThrow(), now);
    }

    @Test
    void edits_of_two_members_are_both_kept() {
        JobText text = both(sizes(3, "crown", "1 3/8"), sizes(7, "crown", "1 3/16"));
        assertThat(TypedFields.member(text, 3)).containsEntry("crown", "1 3/8");
        assertThat(TypedFields.member(text, 7)).containsEntry("crown", "1 3/16");
    }

    @Test
    void edits_of_two_sizes_of_one_member_are_both_kept() {
        JobText text = both(sizes(3, "crown", "1 3/8"), sizes(3, "root", "1"));
        assertThat(TypedFields.member(text, 3)).containsEntry("crown", "1 3/8").containsEntry("root", "1");
    }

    @Test
    void a_member_is_found_where_it_stands_now() {
        for (JobEdit theirs : new JobEdit[] {
            new MemberEdit(2, new MemberEdit.Insert(VEE, true)),
            new MemberEdit(2, new MemberEdit.Remove()),
            new MemberEdit(1, new MemberEdit.Copy()),
            new MemberEdit(2, new MemberEdit.Move(6))
        }) {
            JobText text = both(theirs, sizes(6, "from", "1"));
            assertThat(text.job().pattern().members().stream()
                            .filter(member -> member.title().equals("long taper"))
                            .map(member -> member.diameters().get(0).size()))
                    .containsExactly(Length.ofInches(1));
        }
    }

    @Test
    void a_size_both_changed_is_told_and_not_overwritten() {
        JobText now = made(sizes(3, "crown", "1 3/8"), SEEN);
        RebasedEdit carried = RebasedEdit.over(sizes(3, "crown", "1 7/16"), SEEN, now);
        assertThat(carried.edit()).isEmpty();
        assertThat(carried.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("member 3 (hub bead): crown");
            assertThat(problem.what()).contains("1 3/8");
        });
    }

    @Test
    void the_same_change_by_both_is_no_conflict() {
        JobText now = made(sizes(3, "crown", "1 3/8"), SEEN);
        assertThat(RebasedEdit.over(sizes(3, "crown", "1 3/8"), SEEN, now).problems())
                .isEmpty();
    }

    @Test
    void removing_what_somebody_just_changed_is_told() {
        JobText now = made(sizes(3, "crown", "1 3/8"), SEEN);
        assertThat(RebasedEdit.over(new MemberEdit(3, new MemberEdit.Remove()), SEEN, now)
                        .problems())
                .hasSize(1);
    }

    @Test
    void editing_what_somebody_just_removed_is_told() {
        JobText now = made(new MemberEdit(3, new MemberEdit.Remove()), SEEN);
        assertThat(RebasedEdit.over(sizes(3, "crown", "1 3/8"), SEEN, now).problems())
                .hasSize(1);
    }

    @Test
    void what_was_typed_in_inches_stays_inches_when_the_job_goes_metric() {
        JobText text = both(new UnitsChange(UnitSystem.METRIC), sizes(3, "crown", "1 3/8"));
        assertThat(text.job().pattern().members().get(2).diameters().stream().map(Member.Diameter::size))
                .contains(Length.ofInches(1.375));
        JobText moved = both(new UnitsChange(UnitSystem.METRIC), new MemberEdit(3, new MemberEdit.Boundary("7/8")));
        assertThat(moved.job().pattern().members().get(2).length().mm())
                .isCloseTo(22.225, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void a_list_typed_in_inches_stays_inches_when_the_job_goes_metric() {
        Map<String, String> typed = Map.of("settings.pin", "1 1/4; 38 mm", "checks", "neck ; 3 1/4");
        JobText text = both(new UnitsChange(UnitSystem.METRIC), JobEdit.fields(typed));
        assertThat(text.job().wishes().pinned()).containsExactly(Length.ofInches(1.25), Length.ofMm(38));
        assertThat(text.job().checks()).containsExactly(new CheckPlace("neck", Length.ofInches(3.25)));
    }

    @Test
    void fields_of_the_job_are_merged_one_by_one() {
        JobText now = made(JobEdit.fields(Map.of("count", "20")), SEEN);
        RebasedEdit title = RebasedEdit.over(JobEdit.fields(Map.of("title", "Mine", "count", "14")), SEEN, now);
        JobText merged = made(title.edit().orElseThrow(), now);
        assertThat(merged.job().title()).isEqualTo("Mine");
        assertThat(merged.job().count()).isEqualTo(20);
        assertThat(RebasedEdit.over(JobEdit.fields(Map.of("count", "15")), SEEN, now)
                        .problems())
                .hasSize(1);
    }

    /** Whatever two people do, nothing of the one's is lost in silence: the other's edit is there, or it was told. */
    @Test
    void no_edit_is_ever_lost_in_silence() {
        Random dice = new Random(20261125);
        IntStream.range(0, 300).forEach(round -> {
            MemberEdit theirs = sizes(3 + 4 * dice.nextInt(2), "crown", "1 %d/16".formatted(5 + dice.nextInt(2)));
            int number = 1 + dice.nextInt(13);
            MemberEdit.Deed deed =
                    switch (dice.nextInt(6)) {
                        case 0 -> new MemberEdit.Remove();
                        case 1 -> new MemberEdit.Copy();
                        case 2 -> new MemberEdit.Mirror();
                        case 3 -> new MemberEdit.Move(dice.nextInt(7) - 3);
                        case 4 -> new MemberEdit.Insert(VEE, dice.nextBoolean());
                        default -> new MemberEdit.Sizes(Map.of("name", "mine"));
                    };
            JobText now = made(theirs, SEEN);
            RebasedEdit carried = RebasedEdit.over(new MemberEdit(number, deed), SEEN, now);
            // A copy may not fit the stock: then it is told too.
            carried.edit().flatMap(edit -> edit.on(now).text()).ifPresent(text -> assertThat(text.text())
                    .as("round %d: %s of %d", round, deed, number)
                    .contains("\"crown\": \""
                            + TypedFields.member(now, theirs.number()).get("crown") + "\""));
        });
    }
}
