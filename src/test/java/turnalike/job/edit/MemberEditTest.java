package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import turnalike.job.kept.JobText;
import turnalike.outline.Outline;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class MemberEditTest {
    private static final String SPINDLE = """
            {"format": "turnalike-job", "version": 1, "title": "T", "units": "in",
             "pattern": {"stock": {"section": "square", "size": "2", "length": "10"},
              "members": [
               {"kind": "tenon", "length": "1", "diameter": "3/4"},
               {"kind": "taper", "length": "4", "from": "1 1/2", "to": "1"},
               {"kind": "bead", "length": "1/2", "root": "1", "crown": "1 1/4"}]},
             "wood": {"species": "White ash"}}
            """;

    private static JobText text(String json) {
        JobText.Read read = JobText.read(json);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static MemberKind kind(String word) {
        return MemberKind.find(word).orElseThrow();
    }

    private static JobText after(JobText text, int number, MemberEdit.Deed deed) {
        JobText.Read read = new MemberEdit(number, deed).on(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static List<String> kinds(JobText text) {
        return text.job().pattern().members().stream()
                .map(member -> member.kind().word())
                .toList();
    }

    @Test
    void the_member_by_which_a_row_s_lengths_differ_stays_named_when_the_run_changes() {
        JobText stair = text(SPINDLE.replace("\"wood\"", """
                "frame": {"kind": "row", "lengths": [{"stretch": 1, "length": "4", "count": 2},
                  {"stretch": 1, "length": "5", "count": 3}]},
                "wood\""""));
        assertThat(stretches(after(stair, 1, new MemberEdit.Insert(kind("fillet"), false))))
                .containsOnly("taper");
        assertThat(stretches(after(stair, 2, new MemberEdit.Insert(kind("fillet"), true))))
                .containsOnly("taper");
        assertThat(stretches(after(stair, 1, new MemberEdit.Copy()))).containsOnly("taper");
        assertThat(stretches(after(stair, 1, new MemberEdit.Remove()))).containsOnly("taper");
        assertThat(stretches(after(stair, 1, new MemberEdit.Move(2)))).containsOnly("taper");
        assertThat(stretches(after(stair, 3, new MemberEdit.Move(-2)))).containsOnly("taper");
        assertThat(stretches(after(stair, 2, new MemberEdit.Move(-1)))).containsOnly("taper");
        JobText.Read mirrored = new RunMirrored().on(after(stair, 3, new MemberEdit.Copy()));
        assertThat(stretches(mirrored.text().orElseThrow())).containsOnly("taper");
        assertThat(new MemberEdit(2, new MemberEdit.Remove()).on(stair).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.what()).contains("by which the row's lengths differ"));
    }

    private static List<String> stretches(JobText text) {
        return text.job().frame().orElseThrow().lengths().stream()
                .map(each -> text.job().pattern().members().get(each.stretch()).title())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void every_kind_can_be_inserted_beside_every_member_of_a_full_blank(MemberKind kind) {
        for (UnitSystem units : UnitSystem.values()) {
            for (boolean after : new boolean[] {false, true}) {
                JobText made = after(NewJob.in(units), 1, new MemberEdit.Insert(kind, after));
                assertThat(kinds(made)).hasSize(2).contains(kind.word());
                assertThat(made.job().pattern().length().mm())
                        .isCloseTo(
                                NewJob.in(units).job().pattern().length().mm(),
                                org.assertj.core.data.Offset.offset(1e-4));
            }
        }
    }

    @Test
    void a_new_member_stands_on_the_side_that_was_asked_for_and_leads_from_one_neighbour_to_the_other() {
        JobText before = after(text(SPINDLE), 2, new MemberEdit.Insert(kind("taper"), false));
        assertThat(kinds(before)).containsExactly("tenon", "taper", "taper", "bead");
        assertThat(ends(before, 2)).containsExactly("3/4 in", "1 1/2 in");
        assertThat(ends(before, 3)).containsExactly("1 1/2 in", "1 in");
        JobText after = after(text(SPINDLE), 1, new MemberEdit.Insert(kind("cove"), true));
        assertThat(kinds(after)).containsExactly("tenon", "cove", "taper", "bead");
        JobText first = after(text(SPINDLE), 1, new MemberEdit.Insert(kind("cove"), false));
        assertThat(kinds(first)).containsExactly("cove", "tenon", "taper", "bead");
        assertThat(ends(first, 1)).containsExactly("3/4 in", "3/4 in");
        JobText last = after(text(SPINDLE), 3, new MemberEdit.Insert(kind("taper"), true));
        assertThat(kinds(last)).containsExactly("tenon", "taper", "bead", "taper");
        assertThat(ends(last, 4)).containsExactly("1 in", "1 in");
    }

    private static List<String> ends(JobText text, int number) {
        Outline outline = text.job().pattern().placed().get(number - 1).outline();
        return List.of(
                outline.startRadius().times(2).format(UnitSystem.INCH),
                outline.endRadius().times(2).format(UnitSystem.INCH));
    }

    @Test
    void the_words_of_an_insertion_say_the_side() {
        assertThat(new MemberEdit(3, new MemberEdit.Insert(kind("cove"), false)).what(text(SPINDLE)))
                .isEqualTo("insert a cove before bead 3");
        assertThat(new MemberEdit(3, new MemberEdit.Insert(kind("cove"), true)).what(text(SPINDLE)))
                .isEqualTo("insert a cove after bead 3");
    }

    /** Half of 5/16 is 5/32, which a turner would call 3/16; the older member keeps the 1/8 that is left. In millimetres: halves. */
    @Test
    void on_a_full_blank_a_neighbour_gives_half_of_its_length_to_the_nearest_sixteenth_or_half_millimetre() {
        assertThat(lengthsAfterInsertion("in", "5/16")).containsExactly("1/8", "3/16");
        assertThat(lengthsAfterInsertion("mm", "8.4")).containsExactly("4.4", "4");
    }

    @Test
    void the_longest_member_gives_the_length_wherever_the_new_one_stands() {
        JobText blank = NewJob.in(UnitSystem.INCH);
        JobText tenon = after(blank, 1, new MemberEdit.Insert(kind("tenon"), false));
        JobText made = tenon;
        for (int i = 0; i < 12; i++) {
            made = after(made, 1, new MemberEdit.Insert(kind("bead"), true));
        }
        assertThat(lengths(made).subList(0, 13)).containsOnly("3/4");
        assertThat(made.job().pattern().length().format(UnitSystem.INCH)).isEqualTo("16 in");
        assertThat(kinds(made)).startsWith("tenon", "bead").endsWith("square");
        JobText copied = after(made, 1, new MemberEdit.Copy());
        assertThat(lengths(copied)).startsWith("3/4", "3/4").endsWith("5 1/2");
    }

    private static List<String> lengths(JobText text) {
        UnitSystem units = text.job().units();
        return text.job().pattern().members().stream()
                .map(member -> member.length().format(units).replaceAll(" (in|mm)$", ""))
                .toList();
    }

    @Test
    void a_plain_member_is_parted_at_the_place_that_was_touched() {
        MemberEdit.InsertAt bead = new MemberEdit.InsertAt(kind("bead"), Length.ofInches(4));
        JobText made = after(NewJob.in(UnitSystem.INCH), 1, bead);
        assertThat(kinds(made)).containsExactly("square", "bead", "square");
        assertThat(lengths(made)).containsExactly("3 5/8", "3/4", "11 5/8");
    }

    @Test
    void a_taper_is_parted_along_its_own_line_and_nothing_else_moves() {
        JobText before = text(SPINDLE);
        PlacedMember taper = before.job().pattern().placed().get(1);
        Length middle = taper.start().plus(taper.member().length().times(0.5));
        JobText made = after(before, 2, new MemberEdit.InsertAt(kind("vee"), middle));
        assertThat(kinds(made)).containsExactly("tenon", "taper", "vee", "taper", "bead");
        assertThat(made.job().pattern().length().mm())
                .isCloseTo(before.job().pattern().length().mm(), org.assertj.core.data.Offset.offset(1e-6));
        for (double share : new double[] {0.05, 0.3, 0.7, 0.95}) {
            Length place = taper.start().plus(taper.member().length().times(share));
            assertThat(made.job().pattern().outline().radiusAt(place).mm())
                    .isCloseTo(
                            before.job().pattern().outline().radiusAt(place).mm(),
                            org.assertj.core.data.Offset.offset(1e-4));
        }
    }

    @Test
    void beside_a_shaped_member_the_new_one_stands_at_the_nearer_end() {
        PlacedMember bead = text(SPINDLE).job().pattern().placed().get(2);
        Length near = bead.start().plus(bead.member().length().times(0.2));
        Length far = bead.start().plus(bead.member().length().times(0.8));
        assertThat(kinds(after(text(SPINDLE), 3, new MemberEdit.InsertAt(kind("vee"), near))))
                .containsExactly("tenon", "taper", "vee", "bead");
        assertThat(kinds(after(text(SPINDLE), 3, new MemberEdit.InsertAt(kind("vee"), far))))
                .containsExactly("tenon", "taper", "bead", "vee");
    }

    private static List<String> lengthsAfterInsertion(String units, String length) {
        JobText full = text("""
                {"format": "turnalike-job", "version": 1, "title": "T", "units": "%s",
                 "pattern": {"stock": {"section": "round", "size": "2", "length": "%s"},
                  "members": [{"kind": "cylinder", "length": "%s", "diameter": "1"}]},
                 "wood": {"species": "White ash"}}
                """.formatted(units, length, length));
        JobText made = after(full, 1, new MemberEdit.Insert(kind("bead"), true));
        UnitSystem system = UnitSystem.find(units).orElseThrow();
        return made.job().pattern().members().stream()
                .map(member -> member.length().format(system).replaceAll(" (in|mm)$", ""))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("turnalike.pattern.MemberKind#all")
    void every_member_can_be_made_every_kind_and_keeps_its_length(MemberKind kind) {
        for (int number = 1; number <= 3; number++) {
            JobText made = after(text(SPINDLE), number, new MemberEdit.Turn(kind));
            Member member = made.job().pattern().members().get(number - 1);
            assertThat(member.kind()).isEqualTo(kind);
            assertThat(member.length().mm())
                    .isCloseTo(
                            text(SPINDLE)
                                    .job()
                                    .pattern()
                                    .members()
                                    .get(number - 1)
                                    .length()
                                    .mm(),
                            org.assertj.core.data.Offset.offset(1e-4));
        }
    }

    @Test
    void moving_copying_and_removing_change_the_order_alone() {
        assertThat(kinds(after(text(SPINDLE), 1, new MemberEdit.Move(1)))).containsExactly("taper", "tenon", "bead");
        assertThat(kinds(after(text(SPINDLE), 3, new MemberEdit.Move(-9)))).containsExactly("bead", "tenon", "taper");
        assertThat(kinds(after(text(SPINDLE), 2, new MemberEdit.Copy())))
                .containsExactly("tenon", "taper", "taper", "bead");
        assertThat(kinds(after(text(SPINDLE), 2, new MemberEdit.Remove()))).containsExactly("tenon", "bead");
        assertThat(kinds(after(text(SPINDLE), 1, new MemberEdit.Move(9)))).containsExactly("taper", "bead", "tenon");
        assertThat(kinds(after(text(SPINDLE), 3, new MemberEdit.Remove()))).containsExactly("tenon", "taper");
    }

    @Test
    void mirroring_a_taper_twice_gives_the_text_back() {
        JobText once = after(text(SPINDLE), 2, new MemberEdit.Mirror());
        assertThat(once.text()).contains("\"from\": \"1\", \"to\": \"1 1/2\"");
        JobText twice = after(once, 2, new MemberEdit.Mirror());
        assertThat(new MemberEdit(2, new MemberEdit.Mirror()).isNothing(twice, text(SPINDLE)))
                .isTrue();
    }

    @Test
    void a_moved_boundary_leaves_everything_beyond_in_its_place() {
        JobText made = after(text(SPINDLE), 2, new MemberEdit.Boundary("4 1/8"));
        assertThat(made.job().pattern().members().get(1).length()).isEqualTo(Length.ofInches(4.125));
        assertThat(made.job().pattern().length())
                .isEqualTo(text(SPINDLE).job().pattern().length());
        assertThat(made.text()).contains("\"length\": \"3/8\"");
    }

    @Test
    void the_far_end_moved_lengthens_the_last_member_alone() {
        JobText made = after(text(SPINDLE), 3, new MemberEdit.Boundary("3/4"));
        assertThat(made.job().pattern().members().get(2).length()).isEqualTo(Length.ofInches(0.75));
        assertThat(made.job().pattern().length().format(UnitSystem.INCH)).isEqualTo("5 3/4 in");
        JobText.Read refused = new MemberEdit(3, new MemberEdit.Boundary("1 2/2")).on(text(SPINDLE));
        assertThat(refused.problems()).singleElement().satisfies(problem -> assertThat(problem.where())
                .isEqualTo("member 3 (bead): length"));
    }

    @Test
    void a_boundary_moved_past_the_next_member_is_refused() {
        JobText.Read read = new MemberEdit(2, new MemberEdit.Boundary("4 1/2")).on(text(SPINDLE));
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("member 3 (bead)");
            assertThat(problem.what()).contains("no length left");
        });
    }

    @Test
    void a_size_that_cannot_be_is_told_at_its_field_and_nothing_is_made() {
        JobText.Read read = new MemberEdit(3, new MemberEdit.Sizes(Map.of("crown", "3/4"))).on(text(SPINDLE));
        assertThat(read.text()).isEmpty();
        assertThat(read.problems()).singleElement().satisfies(problem -> assertThat(problem.where())
                .isEqualTo("member 3 (bead): crown"));
    }

    @Test
    void what_is_typed_is_kept_to_the_letter_and_the_rest_stays_as_it_was_spelled() {
        JobText made = after(
                text(SPINDLE), 3, new MemberEdit.Sizes(Map.of("crown", " 32.5 mm ", "name", "ring", "by_eye", "true")));
        assertThat(made.text())
                .contains("{\"kind\": \"bead\", \"length\": \"1/2\", \"root\": \"1\", \"crown\": \"32.5 mm\"")
                .contains("\"name\": \"ring\"")
                .contains("\"by_eye\": true")
                .contains("\"from\": \"1 1/2\"");
    }

    @Test
    void fields_that_say_what_they_said_are_no_change() {
        JobEdit sent = new MemberEdit(
                3, new MemberEdit.Sizes(Map.of("crown", "1 1/4", "name", "", "by_eye", "", "root", "7/8")));
        assertThat(sent.narrowed(text(SPINDLE)))
                .isEqualTo(new MemberEdit(3, new MemberEdit.Sizes(Map.of("root", "7/8"))));
    }

    @Test
    void a_member_that_is_gone_is_said_to_be_gone() {
        JobText.Read read = new MemberEdit(4, new MemberEdit.Remove()).on(text(SPINDLE));
        assertThat(read.problems()).singleElement().satisfies(problem -> assertThat(problem.what())
                .contains("the run has 3"));
    }

    @Test
    void the_last_member_cannot_be_removed() {
        JobText.Read read = new MemberEdit(1, new MemberEdit.Remove()).on(NewJob.in(UnitSystem.METRIC));
        assertThat(read.problems()).singleElement().satisfies(problem -> assertThat(problem.what())
                .contains("only member"));
    }
}
