package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What is said of a neck follows from what bears the piece. */
class HeldNecksTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** A neck of 9 mm from 90 to 100 mm of 150, a knob of 40 mm beyond it. */
    private static List<String> said(Turnability.Hold hold) {
        Pattern pattern = new Pattern(
                "knob",
                new Stock(Section.ROUND, mm(45), mm(150)),
                List.of(
                        new Cylinder(mm(90), mm(20), Details.NONE),
                        new Cylinder(mm(10), mm(9), Details.NONE),
                        new Cylinder(mm(50), mm(40), Details.NONE)));
        return Turnability.warnings(pattern, UnitSystem.METRIC, hold, ShapeRules.USUAL).stream()
                .map(Warning::what)
                .toList();
    }

    @Test
    void held_at_its_start_and_free_the_neck_is_as_far_out_as_its_far_side() {
        assertThat(said(new Turnability.Hold(true, false, Optional.of(true), false)))
                .anySatisfy(each -> assertThat(each)
                        .contains("100 mm", "from the nearer support", "with nothing left to cut beyond it")
                        .doesNotContain("last of its member", "steady"))
                .anySatisfy(each -> assertThat(each)
                        .contains(
                                "carries a part 40 mm",
                                "thick beyond it",
                                "finish the heavy part before the neck is cut"));
    }

    @Test
    void borne_at_both_ends_it_stands_nearer_its_support() {
        assertThat(said(new Turnability.Hold(true, true, Optional.of(true), true)))
                .noneMatch(each -> each.contains("expect whip"));
        assertThat(said(Turnability.Hold.CENTRES)).noneMatch(each -> each.contains("expect whip"));
    }

    @Test
    void held_by_its_thick_end_the_neck_carries_the_thin_one_alone() {
        assertThat(said(new Turnability.Hold(false, true, Optional.of(false), false)))
                .noneMatch(each -> each.contains("carries a part 40 mm"));
    }

    @Test
    void a_bead_higher_than_it_is_wide_is_told() {
        assertThat(bead(1, 5))
                .anyMatch(each -> each.contains("stands 5 mm") && each.contains("higher than it is wide"));
        assertThat(bead(5, 5)).noneMatch(each -> each.contains("higher than it is wide"));
    }

    private static List<String> bead(double widthMm, double riseMm) {
        Pattern pattern = new Pattern(
                "bead",
                new Stock(Section.ROUND, mm(45), mm(100)),
                List.of(
                        new Cylinder(mm(30), mm(20), Details.NONE),
                        new Bead(mm(widthMm), mm(20), mm(20 + 2 * riseMm), Details.NONE),
                        new Cylinder(mm(30), mm(20), Details.NONE)));
        return Turnability.warnings(pattern, UnitSystem.METRIC).stream()
                .map(Warning::what)
                .toList();
    }
}
