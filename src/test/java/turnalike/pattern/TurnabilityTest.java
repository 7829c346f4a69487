package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static turnalike.pattern.Samples.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Where each warning begins, what it says, and of whom: on the near side of a bound nothing, just past it a warning. */
class TurnabilityTest {
    private static Pattern pattern(Member... members) {
        return new Pattern("p", new Stock(Section.SQUARE, mm(60), mm(2000)), List.of(members));
    }

    private static List<Warning> warnings(Member... members) {
        return Turnability.warnings(pattern(members), UnitSystem.METRIC);
    }

    /** The warnings with that word in them, as {@code member: words}. */
    private static List<String> told(String word, Member... members) {
        return warnings(members).stream()
                .filter(warning -> warning.what().contains(word))
                .map(warning -> warning.where() + ": " + warning.what())
                .toList();
    }

    private static Cylinder cylinder(double length, double diameter) {
        return new Cylinder(mm(length), mm(diameter), Details.NONE);
    }

    private static Cove cove(double length, double rim, double bottom) {
        return new Cove(mm(length), mm(rim), mm(bottom), Details.NONE);
    }

    private static Tenon tenon(double diameter, double chamfer) {
        return new Tenon(mm(20), mm(diameter), mm(chamfer), Details.NONE);
    }

    private static Tenon tenon(double diameter, Optional<Length> hole) {
        return new Tenon(mm(20), mm(diameter), Length.ZERO, hole, Details.NONE);
    }

    @Test
    void a_cove_is_too_deep_past_half_its_width() {
        assertThat(told("gouge", cove(10, 30, 20))).isEmpty();
        assertThat(told("gouge", cove(10, 30, 19.999999)))
                .singleElement()
                .asString()
                .startsWith("member 1 (cove): is 5 mm (13/64 in) deep but only 10 mm (25/64 in) wide");
        assertThat(told("gouge", cove(10, 34, 20))).singleElement().asString().contains("is 7 mm (9/32 in) deep");
    }

    @Test
    void a_vee_is_too_deep_past_its_width() {
        assertThat(told("skew", new Vee(mm(4), mm(30), mm(22), Details.NONE))).isEmpty();
        assertThat(told("skew", new Vee(mm(4), mm(30), mm(21.999999), Details.NONE)))
                .singleElement()
                .asString()
                .startsWith("member 1 (vee): is 4 mm (5/32 in) deep but only 4 mm (5/32 in) wide");
        assertThat(told("skew", new Vee(mm(4), mm(36), mm(22), Details.NONE)))
                .singleElement()
                .asString()
                .contains("is 7 mm (9/32 in) deep");
    }

    @Test
    void a_groove_is_too_narrow_below_a_thin_parting_tool() {
        assertThat(told("parting tool", new Groove(mm(1.5), mm(30), mm(22), Details.NONE)))
                .isEmpty();
        assertThat(told("parting tool", new Groove(mm(1.49), mm(30), mm(22), Details.NONE)))
                .containsExactly(
                        "member 1 (groove): is 1.49 mm (1/16 in) wide, narrower than a thin parting tool; widen it, or grind a tool for it");
    }

    @Test
    void a_neck_is_slender_below_a_tenth_of_its_distance_to_the_nearer_end() {
        assertThat(told("whip", cylinder(210, 40), cove(20, 40, 22), cylinder(400, 40)))
                .isEmpty();
        assertThat(told("whip", cylinder(210, 40), cove(20, 40, 21.9999), cylinder(400, 40)))
                .singleElement()
                .asString()
                .startsWith(
                        "member 2 (cove): the neck of 22 mm (55/64 in) stands 220 mm (8 21/32 in) from the nearer end,");
        assertThat(told("whip", cylinder(400, 40), cove(20, 40, 21.9999), cylinder(210, 40)))
                .singleElement()
                .asString()
                .startsWith(
                        "member 2 (cove): the neck of 22 mm (55/64 in) stands 220 mm (8 21/32 in) from the nearer end,");
    }

    /** A level neck gives most where it is farthest from both ends: in the middle of the piece, or at its own end next to it. */
    @Test
    void a_level_neck_is_judged_at_its_point_nearest_the_middle() {
        String whip = "the neck of 14 mm (35/64 in) stands %s from the nearer end";
        assertThat(told("whip", cylinder(100, 30), cylinder(300, 14), cylinder(100, 30)))
                .singleElement()
                .asString()
                .contains(whip.formatted("250 mm (9 27/32 in)"))
                .startsWith("member 2");
        assertThat(told("whip", cylinder(100, 30), cylinder(100, 14), cylinder(300, 30)))
                .singleElement()
                .asString()
                .contains(whip.formatted("200 mm (7 7/8 in)"))
                .startsWith("member 2");
        assertThat(told("whip", cylinder(300, 30), cylinder(100, 14), cylinder(100, 30)))
                .singleElement()
                .asString()
                .contains(whip.formatted("200 mm (7 7/8 in)"));
    }

    /** The bottom of the vee and, past its rim, the foot of the bead: both are as thin, and both stand at the vee. */
    @Test
    void two_necks_told_in_the_same_words_are_told_once() {
        List<String> outboard = told(
                "outboard",
                cylinder(300, 60),
                new Vee(mm(6), mm(30), mm(20), Details.NONE),
                new Bead(mm(30), mm(20), mm(36), Details.NONE),
                cylinder(20, 24));
        assertThat(outboard).doesNotHaveDuplicates().isNotEmpty();
    }

    @Test
    void more_than_three_slender_necks_are_told_of_in_one_line() {
        Member rise = cylinder(20, 40);
        List<Member> three = List.of(
                cylinder(300, 40), cove(20, 40, 20), rise, cove(20, 40, 18), rise, cove(20, 40, 20), cylinder(300, 40));
        assertThat(told("whip", three.toArray(Member[]::new))).hasSize(3);
        List<Member> four = new ArrayList<>(three);
        four.addAll(3, List.of(cove(20, 40, 19), rise));
        assertThat(told("whip", four.toArray(Member[]::new)))
                .singleElement()
                .asString()
                .startsWith(
                        "members 2, 4, 6, 8: their necks, the thinnest 18 mm (45/64 in), stand up to 350 mm (13 25/32 in) from the nearer end");
    }

    @Test
    void a_neck_of_several_members_is_told_of_once_and_an_end_is_none() {
        assertThat(told("whip", cylinder(100, 30), cylinder(100, 12), cylinder(100, 12), cylinder(200, 30)))
                .hasSize(1);
        assertThat(told("neck", new Taper(mm(400), mm(30), mm(4), Details.NONE)))
                .isEmpty();
        assertThat(told("neck", cylinder(20, 4), cylinder(400, 50))).isEmpty();
        assertThat(told("neck", cylinder(400, 50), cylinder(20, 4))).isEmpty();
        assertThat(told("whip", cylinder(200, 19), cylinder(200, 19))).hasSize(1);
        // Two necks, one warning each, in order.
        assertThat(told(
                        "whip",
                        cylinder(210, 40),
                        cove(20, 40, 21),
                        cylinder(100, 40),
                        cove(20, 40, 21),
                        cylinder(210, 40)))
                .extracting(text -> text.substring(0, 15))
                .containsExactly("member 2 (cove)", "member 4 (cove)");
    }

    /** A sweep that runs down into a neck is as thin as it where they meet: the neck is named, and by one figure, which a rule shows. */
    @Test
    void of_two_as_thin_where_they_meet_the_one_thin_all_along_is_named() {
        Taper sweep = new Taper(mm(60), mm(40), mm(22.225), Details.NONE);
        assertThat(told("whip", cylinder(190, 40), sweep, cylinder(20, 22.225), cylinder(230, 40)))
                .singleElement()
                .asString()
                .startsWith("member 3 (cylinder): the neck of 22.2 mm (7/8 in) stands ");
    }

    /** Two fifths: a neck of 12 carries 30 and no more. */
    @Test
    void a_neck_is_overloaded_below_two_fifths_of_what_stands_inboard_of_it() {
        Cove neck = cove(20, 20, 12);
        assertThat(told("outboard", cylinder(20, 20), neck, cylinder(100, 30), cylinder(100, 25)))
                .isEmpty();
        assertThat(told("outboard", cylinder(20, 20), neck, cylinder(100, 30.1), cylinder(100, 25)))
                .singleElement()
                .asString()
                .startsWith(
                        "member 2 (cove): the neck of 12 mm (15/32 in) stands outboard of a part 30.1 mm (1 3/16 in) thick");
        assertThat(told("outboard", cylinder(100, 25), cylinder(100, 30.1), neck, cylinder(20, 20)))
                .singleElement()
                .asString()
                .startsWith(
                        "member 3 (cove): the neck of 12 mm (15/32 in) stands outboard of a part 30.1 mm (1 3/16 in) thick");
    }

    /** Its shoulders are cut first of all; what is left square sees no tool after. */
    @Test
    void a_square_loads_no_neck() {
        Cove neck = cove(20, 20, 12);
        Square square = new Square(mm(100), mm(50), Details.NONE);
        assertThat(told("outboard", cylinder(20, 20), neck, cylinder(80, 28), square))
                .isEmpty();
        assertThat(told("outboard", cylinder(20, 20), neck, cylinder(80, 31), square))
                .singleElement()
                .asString()
                .contains("a part 31 mm");
    }

    /** Where a thick rim stands against a thin end, the neck is the thin one's. */
    @Test
    void a_neck_at_a_joint_is_told_of_the_thinner_member() {
        Ogee thin = new Ogee(mm(40), mm(11), mm(30), Details.NONE);
        assertThat(told("outboard", cylinder(200, 40), cove(10, 28, 26), thin, cylinder(10, 20)))
                .singleElement()
                .asString()
                .startsWith("member 3 (ogee): the neck of 11 mm");
    }

    @Test
    void what_stands_outboard_of_a_neck_does_not_load_it() {
        Cove neck = cove(20, 20, 12);
        assertThat(told("outboard", cylinder(20, 50), neck, cylinder(200, 28))).isEmpty();
        assertThat(told("outboard", cylinder(200, 28), neck, cylinder(20, 50))).isEmpty();
    }

    @Test
    void a_tenon_thicker_than_its_neighbour_has_no_shoulder() {
        assertThat(told("no shoulder", tenon(16, 0), cylinder(50, 12)))
                .singleElement()
                .asString()
                .startsWith(
                        "member 1 (tenon): is thicker (16 mm (5/8 in)) than member 2 (cylinder) beside it (12 mm (15/32 in) there)");
        assertThat(told("no shoulder", cylinder(50, 12), tenon(16, 0)))
                .singleElement()
                .asString()
                .startsWith("member 2 (tenon): is thicker (16 mm (5/8 in)) than member 1 (cylinder) beside it");
        assertThat(told("no shoulder", tenon(12, 0), cylinder(50, 12))).isEmpty();
        // A stepped tenon: the step goes into a hole as well.
        assertThat(told("no shoulder", tenon(16, 0), tenon(12, 0), cylinder(50, 20)))
                .isEmpty();
        // The neighbour counts where they meet.
        assertThat(told("no shoulder", tenon(16, 0), new Taper(mm(50), mm(20), mm(10), Details.NONE)))
                .isEmpty();
        assertThat(told("no shoulder", tenon(16, 0), new Taper(mm(50), mm(10), mm(20), Details.NONE)))
                .hasSize(1);
    }

    @Test
    void a_tenon_inside_the_run_fits_no_hole_and_keeps_its_edge() {
        assertThat(told("inside the run", cylinder(50, 20), tenon(12, 0), cylinder(50, 20)))
                .containsExactly(
                        "member 2 (tenon): stands inside the run, where no hole can take it: move it to an end or make it a cylinder");
        assertThat(told("inside the run", cylinder(50, 20), tenon(12, 1), cylinder(50, 20)))
                .singleElement()
                .asString()
                .endsWith("; its chamfer is left off: only a free end has one");
        assertThat(told("inside the run", tenon(12, 1), cylinder(50, 20), tenon(12, 1)))
                .isEmpty();
    }

    @Test
    void a_tenon_may_be_half_a_millimetre_loose_in_its_hole() {
        assertThat(told("rattles", tenon(12, Optional.of(mm(12.5))), cylinder(50, 20)))
                .isEmpty();
        assertThat(told("rattles", tenon(12, Optional.of(mm(12.51))), cylinder(50, 20)))
                .singleElement()
                .asString()
                .startsWith("member 1 (tenon): is 0.51 mm (0.02 in) thinner than its hole");
    }

    @Test
    void a_hole_that_is_not_given_is_asked_for_only_beside_one_that_is() {
        Tenon given = tenon(12, Optional.of(mm(12)));
        Tenon open = tenon(14, Optional.empty());
        assertThat(told("no hole given", given, cylinder(50, 20), open))
                .containsExactly("member 3 (tenon): has no hole given; one of the tenon's own size is taken for it");
        assertThat(told("no hole given", open, cylinder(50, 20), open)).isEmpty();
        assertThat(told("no hole given", given, cylinder(50, 20), given)).isEmpty();
    }

    @Test
    void a_squares_corners_are_struck_by_whatever_is_rolled_beside_it() {
        Square square = new Square(mm(60), mm(40), Details.NONE);
        HalfBead half = new HalfBead(mm(10), mm(30), mm(20), Details.NONE);
        Bead bead = new Bead(mm(20), mm(20), mm(30), Details.NONE);
        assertThat(told("arrises", bead, square, half))
                .extracting(text -> text.substring(0, text.indexOf(':', 20)))
                .containsExactly(
                        "member 2 (square): its arrises meet member 1 (bead)",
                        "member 2 (square): its arrises meet member 3 (half-bead)");
        assertThat(told("arrises", cylinder(10, 20), square, cove(10, 30, 25))).isEmpty();
    }

    @Test
    void a_warning_reads_as_a_sentence() {
        assertThat(new Warning("member 2 (cove)", "is deep").sentence()).isEqualTo("Member 2 (cove): is deep.");
    }

    @Test
    void where_the_piece_only_grows_thinner_or_rises_to_a_crown_is_no_neck() {
        Taper first = new Taper(mm(200), mm(30), mm(19), Details.NONE);
        Taper second = new Taper(mm(200), mm(19), mm(10), Details.NONE);
        assertThat(told("whip", first, second)).isEmpty();
        assertThat(told("whip", second.mirrored(), first.mirrored())).isEmpty();
        assertThat(told(
                        "whip",
                        new Taper(mm(300), mm(10), mm(20), Details.NONE),
                        new Taper(mm(300), mm(20), mm(10), Details.NONE)))
                .isEmpty();
    }

    /** A level neck that ends at the shoulder of the heavy part: there the part is thickest, and it thins from there. */
    @Test
    void a_heavy_part_loads_the_neck_it_stands_beside_though_it_thins_away_from_it() {
        Taper heavy = new Taper(mm(400), mm(40), mm(20), Details.NONE);
        assertThat(told("outboard", cylinder(20, 20), cylinder(30, 12), heavy))
                .singleElement()
                .asString()
                .startsWith("member 2 (cylinder): the neck of 12 mm (15/32 in) stands outboard of a part 40 mm");
        assertThat(told("outboard", heavy.mirrored(), cylinder(30, 12), cylinder(20, 20)))
                .singleElement()
                .asString()
                .contains("outboard of a part 40 mm (1 37/64 in) thick");
        // The shoulder on the outboard side is no load.
        assertThat(told("outboard", cylinder(20, 40), cylinder(30, 12), cylinder(400, 25)))
                .isEmpty();
        assertThat(told("outboard", cylinder(400, 25), cylinder(30, 12), cylinder(20, 40)))
                .isEmpty();
    }
}
