package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.effort.Ending;
import turnalike.outline.Section;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.pattern.Tool;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.settings.GivenMarks;
import turnalike.settings.MarkError;
import turnalike.units.Length;

/** What the layout's cuts say and touch, from plans written down by hand for a run with marks at 0, 30, 100, 120, 200 and 260 mm. */
class LayoutCutsTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Cylinder rod(double lengthMm, double diameterMm) {
        return new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE);
    }

    private static MarkError error(int mark, boolean fromTheStick) {
        return new MarkError(mark, 1, mm(0), mm(0.25), mm(0.25), fromTheStick);
    }

    private static List<Cut> cuts(List<Integer> onTheStick, DividerSetting... settings) {
        Pattern pattern = new Pattern(
                "any",
                new Stock(Section.ROUND, mm(45), mm(260)),
                List.of(rod(30, 40), rod(70, 30), rod(20, 40), rod(80, 30), rod(60, 40)));
        TurningProblem usual = Works.of(pattern, Optional.empty(), Lathe.USUAL);
        assertThat(usual.marks())
                .extracting(Mark::place)
                .containsExactly(mm(0), mm(30), mm(100), mm(120), mm(200), mm(260));
        List<MarkError> errors = usual.dividers().errors().stream()
                .map(each -> error(each.mark(), onTheStick.contains(each.mark())))
                .toList();
        DividerPlan plan = new DividerPlan(
                List.of(settings), GivenMarks.NONE, errors, 0, false, false, 0, Ending.STEPS, List.of());
        return LayoutCuts.of(new TurningProblem(
                usual.pattern(),
                usual.marks(),
                plan,
                usual.calipers(),
                usual.sizing(),
                usual.diameterTolerance(),
                usual.density(),
                usual.stiffness(),
                usual.rupture(),
                usual.lathe(),
                usual.slopes(),
                usual.units()));
    }

    @Test
    void the_sticks_marks_are_struck_first_each_named_and_from_the_first_to_the_last() {
        List<Cut> cuts = cuts(List.of(2, 4), new DividerSetting(mm(30), List.of(new DividerStep(0, 1, 1)), false));
        assertThat(cuts).hasSize(2);
        Cut stick = cuts.get(0);
        assertThat(stick.phase()).isEqualTo(Phase.LAYOUT);
        assertThat(stick.tool()).isEqualTo(Tool.STICK);
        assertThat(stick.what()).isEqualTo("lay the stick on the rest and strike marks 2, 4 from it");
        assertThat(stick.setting()).isEmpty();
        assertThat(stick.places()).containsExactly(mm(100), mm(200));
        assertThat(stick.from()).isEqualTo(mm(100));
        assertThat(stick.to()).isEqualTo(mm(200));
        assertThat(stick.members()).isEmpty();
        assertThat(cuts.get(1).tool()).isEqualTo(Tool.DIVIDERS);
    }

    @Test
    void without_marks_on_the_stick_it_is_not_laid_on_again() {
        assertThat(cuts(List.of(), new DividerSetting(mm(30), List.of(new DividerStep(0, 1, 1)), false)))
                .extracting(Cut::tool)
                .containsExactly(Tool.DIVIDERS);
        assertThat(cuts(List.of())).isEmpty();
    }

    @Test
    void each_setting_is_used_round_by_round_and_says_from_which_mark_to_which() {
        DividerSetting small = new DividerSetting(mm(20), List.of(new DividerStep(2, 3, 2)), false);
        DividerSetting large = new DividerSetting(
                mm(60), List.of(new DividerStep(5, 4, 1), new DividerStep(0, 1, 1), new DividerStep(1, 2, 2)), false);
        List<Cut> cuts = cuts(List.of(), small, large);
        assertThat(cuts)
                .extracting(Cut::what)
                .containsExactly("round 1: strike 5 → 4, 0 → 1", "round 2: strike 2 → 3", "round 2: strike 1 → 2");
        assertThat(cuts.stream().map(cut -> cut.setting().orElseThrow())).containsExactly(mm(60), mm(20), mm(60));
        Cut first = cuts.get(0);
        assertThat(first.places()).containsExactly(mm(30), mm(200));
        assertThat(first.from()).isEqualTo(mm(0));
        assertThat(first.to()).isEqualTo(mm(260));
        assertThat(first.strides()).containsExactly(new Cut.Stride(mm(260), mm(200)), new Cut.Stride(mm(0), mm(30)));
        assertThat(cuts.get(1).places()).containsExactly(mm(120));
        assertThat(cuts.get(1).from()).isEqualTo(mm(100));
        assertThat(cuts.get(1).to()).isEqualTo(mm(120));
        assertThat(cuts).allSatisfy(cut -> assertThat(cut.caution())
                .isEqualTo("only the leg on the waste side touches turning wood, point trailing"));
    }
}
