package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Each bound that a job sets is the one that is gone by: on its near side nothing is said, past it its warning, in its own figures. */
class ShapeRulesTest {
    private static final ShapeRules OWN = new ShapeRules(0.125, 0.6, 0.4, 0.8, 0.7, mm(3), mm(0.2), mm(0.15));

    private static List<String> told(ShapeRules rules, Member... members) {
        Pattern pattern = new Pattern("p", new Stock(Section.SQUARE, mm(60), mm(2000)), List.of(members));
        return Turnability.warnings(pattern, UnitSystem.METRIC, Turnability.Hold.CENTRES, rules).stream()
                .map(Warning::what)
                .toList();
    }

    private static void moves(String word, Member near, Member past) {
        assertThat(told(OWN, near)).noneMatch(each -> each.contains(word));
        assertThat(told(OWN, past)).anyMatch(each -> each.contains(word));
        assertThat(told(ShapeRules.USUAL, past)).noneMatch(each -> each.contains(word));
    }

    @Test
    void a_cove() {
        moves(
                "deeper than 40 % of its width",
                new Cove(mm(10), mm(30), mm(22), Details.NONE), new Cove(mm(10), mm(30), mm(21.9), Details.NONE));
    }

    @Test
    void a_vee() {
        moves(
                "deeper than 80 % of its width",
                new Vee(mm(10), mm(30), mm(14), Details.NONE), new Vee(mm(10), mm(30), mm(13.9), Details.NONE));
    }

    @Test
    void a_bead() {
        moves(
                "higher than 70 % of its width",
                new Bead(mm(10), mm(20), mm(34), Details.NONE), new Bead(mm(10), mm(20), mm(34.1), Details.NONE));
    }

    @Test
    void a_groove() {
        moves(
                "narrower than a thin parting tool",
                new Groove(mm(3), mm(30), mm(25), Details.NONE),
                new Groove(mm(2.9), mm(30), mm(25), Details.NONE));
    }

    @Test
    void a_tenon() {
        moves(
                "rattles",
                new Tenon(mm(20), mm(15), Length.ZERO, Optional.of(mm(15.2)), Details.NONE),
                new Tenon(mm(20), mm(15), Length.ZERO, Optional.of(mm(15.25)), Details.NONE));
        moves(
                "thicker than its hole; is that meant?",
                new Tenon(mm(20), mm(15), Length.ZERO, Optional.of(mm(14.9)), Details.NONE),
                new Tenon(mm(20), mm(15), Length.ZERO, Optional.of(mm(14.85)), Details.NONE));
    }

    private static Member[] necked(double reach, double neck, double heavy) {
        return new Member[] {
            new Cylinder(mm(reach), mm(heavy), Details.NONE),
            new Cylinder(mm(1), mm(neck), Details.NONE),
            new Cylinder(mm(reach), mm(heavy), Details.NONE)
        };
    }

    @Test
    void a_neck_far_from_its_end() {
        assertThat(told(OWN, necked(99, 12.5, 16))).noneMatch(each -> each.contains("expect whip"));
        assertThat(told(OWN, necked(99, 12.4, 16)))
                .anyMatch(each -> each.contains("more than 8 times its thickness: expect whip"));
        assertThat(told(ShapeRules.USUAL, necked(99, 12.4, 16))).noneMatch(each -> each.contains("expect whip"));
        assertThat(told(ShapeRules.USUAL, necked(99, 9.9, 16)))
                .anyMatch(each -> each.contains("more than ten times its thickness: expect whip"));
    }

    @Test
    void a_neck_beside_a_heavy_part() {
        assertThat(told(OWN, necked(30, 24, 40)))
                .noneMatch(each -> each.contains("loads it") || each.contains("load it"));
        assertThat(told(OWN, necked(30, 23.9, 40))).anyMatch(each -> each.contains("cuts load it"));
        assertThat(told(ShapeRules.USUAL, necked(30, 23.9, 40))).noneMatch(each -> each.contains("load it"));
    }

    @Test
    void a_share_of_nothing_is_no_rule() {
        assertThatThrownBy(() -> new ShapeRules(0.1, 0.4, 0, 1, 1, mm(1), mm(1), mm(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
