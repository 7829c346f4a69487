package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.job.InventedLeg;
import turnalike.job.Job;
import turnalike.job.read.JobReader;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Swell;
import turnalike.pattern.Tenon;
import turnalike.pattern.Tool;
import turnalike.pattern.Vee;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;
import turnalike.wood.Stiffness;

/** What each cut says and warns of, where it goes, which members wait, and the stages in between. */
class CutsTest {
    private final Turning baluster = Turning.of(Works.stiff(Works.baluster()));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Cylinder rod(double lengthMm, double diameterMm) {
        return new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE);
    }

    private static Pattern pattern(Section section, double sizeMm, double lengthMm, Member... members) {
        return new Pattern("any", new Stock(section, mm(sizeMm), mm(lengthMm)), List.of(members));
    }

    private static List<Cut> phase(Turning turning, Phase phase) {
        return turning.cuts().stream().filter(cut -> cut.phase() == phase).toList();
    }

    private static Set<Integer> slender(Member... members) {
        return SlenderMembers.of(Works.stiff(pattern(Section.ROUND, 60, 2000, members)));
    }

    /** A parting tool of 3 mm would take the walls of a vee 4 mm wide, and does not go between beads 2.4 mm apart. */
    @Test
    void nothing_is_parted_down_between_walls_nearer_than_the_parting_tool_is_wide() {
        Turning turning = Turning.of(Works.stiff(pattern(
                Section.ROUND,
                40,
                260,
                rod(100, 30),
                new Vee(mm(4), mm(30), mm(22), Details.NONE),
                rod(30, 30),
                new Bead(mm(12), mm(24), mm(32), Details.NONE),
                new Fillet(mm(2.4), mm(20), Details.NONE),
                new Bead(mm(12), mm(24), mm(32), Details.NONE),
                new Fillet(mm(6), mm(20), Details.NONE),
                new Bead(mm(12), mm(24), mm(32), Details.NONE),
                rod(50, 30))));
        List<String> parted =
                turning.cuts().stream().filter(Cut::sizes).map(Cut::what).toList();
        assertThat(parted).noneMatch(each -> each.contains("vee at")).noneMatch(each -> each.contains("5 fillet"));
        assertThat(turning.cuts())
                .extracting(Cut::what)
                .contains("5 fillet: cut the flat between its lines, with a tool no wider than 2.4 mm")
                .contains("7 fillet: cut the flat between its lines")
                .anyMatch(each -> each.startsWith("2 vee: long point in the middle"));
    }

    /** A roughing gouge is two or three times as wide as a finial's blank. */
    @Test
    void a_thin_blank_is_roughed_with_a_spindle_gouge() {
        for (Section section : Section.values()) {
            assertThat(roughedWith(section, 9, ShopRules.USUAL)).containsExactly(Tool.SPINDLE_GOUGE);
            assertThat(roughedWith(section, 19.05, ShopRules.USUAL)).containsExactly(Tool.SPINDLE_GOUGE);
            assertThat(roughedWith(section, 20, ShopRules.USUAL)).containsExactly(Tool.ROUGHING_GOUGE);
            assertThat(roughedWith(section, 20, roughingFrom(25.4))).containsExactly(Tool.SPINDLE_GOUGE);
        }
    }

    private static List<Tool> roughedWith(Section section, double sizeMm, ShopRules rules) {
        Turning turning = Turning.of(Works.of(
                pattern(section, sizeMm, 80, rod(60, sizeMm / 2)),
                Optional.of(Stiffness.given(11_000)),
                Lathe.USUAL.withRules(rules)));
        return phase(turning, Phase.ROUND).stream().map(Cut::tool).toList();
    }

    private static ShopRules roughingFrom(double mm) {
        Job.Read read = JobReader.read(
                InventedLeg.text("\"turning\": {\"rules\": {\"roughing_gouge\": %s}},".formatted(mm), ""));
        return read.job().orElseThrow().lathe().rules();
    }

    @Test
    void every_cut_near_the_whirling_corners_or_that_can_catch_warns_of_it() {
        assertThat(phase(baluster, Phase.SHOULDERS)).hasSize(4).allSatisfy(cut -> {
            assertThat(cut.tool()).isEqualTo(Tool.SKEW);
            assertThat(cut.caution()).contains("the corners are a blur: hands behind the rest");
        });
        assertThat(phase(baluster, Phase.SHOULDERS).get(0).what())
                .contains(
                        "on the bench, before mounting, strike this line and those of the other shoulders round all four faces"
                                + " from the stick with square and knife",
                        "first of all cuts",
                        "until the shoulder of 2 square at 25 mm is clean all round");
        assertThat(phase(baluster, Phase.SHOULDERS).get(1).members()).containsExactly(1);
        assertThat(phase(baluster, Phase.SHOULDERS).get(2).members()).containsExactly(10);
        assertThat(phase(baluster, Phase.ROUND)).allSatisfy(cut -> {
            assertThat(cut.what()).startsWith("bring the square to one even cylinder");
            assertThat(cut.caution()).contains("slow while out of round", "stop to set the calipers");
            assertThat(cut.setting()).contains(mm(48.8));
        });
        assertThat(phase(baluster, Phase.LAYOUT)).isNotEmpty();
        assertThat(phase(baluster, Phase.SIZING)).isNotEmpty().allSatisfy(cut -> assertThat(cut.caution())
                .contains("light hand on the calipers"));
        assertThat(phase(baluster, Phase.TENONS)).hasSize(2).allSatisfy(cut -> assertThat(cut.caution())
                .contains("stop the lathe before you try the wrench"));
        assertThat(phase(baluster, Phase.SANDING)).singleElement().satisfies(cut -> {
            assertThat(cut.caution()).contains("take the rest away first, keep cloth off the lathe");
            assertThat(cut.what()).contains("leave the tenons and squares alone");
            assertThat(cut.members()).containsExactly(2, 3, 4, 5, 6, 7, 8, 9);
            assertThat(cut.from()).isEqualTo(mm(85));
            assertThat(cut.to()).isEqualTo(mm(535));
        });
        assertThat(phase(baluster, Phase.PARTING)).singleElement().satisfies(cut -> {
            assertThat(cut.caution()).contains("never part right through between centres");
            assertThat(cut.members()).containsExactly(11);
            assertThat(cut.places()).containsExactly(mm(600));
        });
    }

    @Test
    void rounding_leaves_the_squares_out() {
        assertThat(phase(baluster, Phase.ROUND).stream().map(Cut::from)).containsExactly(mm(0), mm(85), mm(575));
        assertThat(phase(baluster, Phase.ROUND).stream().map(Cut::to)).containsExactly(mm(25), mm(535), mm(600));
        Turning round = Turning.of(Works.stiff(pattern(Section.ROUND, 45, 220, rod(200, 40))));
        assertThat(phase(round, Phase.ROUND)).singleElement().satisfies(cut -> {
            assertThat(cut.what()).isEqualTo("true up one even cylinder");
            assertThat(cut.caution()).startsWith("turn it by hand once").doesNotContain("out of round");
        });
        assertThat(phase(round, Phase.SHOULDERS)).isEmpty();
    }

    /** A parting tool splits the corners of a square off, and none is parted down between centres. */
    @Test
    void a_square_end_is_sawn_off_on_the_bench() {
        Turning leg = Turning.of(
                Works.stiff(pattern(Section.SQUARE, 45, 220, rod(150, 40), new Square(mm(50), mm(45), Details.NONE))));
        assertThat(phase(leg, Phase.PARTING)).singleElement().satisfies(cut -> {
            assertThat(cut.tool()).isEqualTo(Tool.SAW);
            assertThat(cut.what()).contains("off the lathe").contains("the far end's line");
        });
    }

    @Test
    void a_millimetre_of_spare_length_is_parted_off_and_less_is_not() {
        Turning spare = Turning.of(Works.stiff(pattern(Section.ROUND, 45, 201, rod(200, 40))));
        assertThat(phase(spare, Phase.PARTING)).hasSize(1);
        assertThat(phase(spare, Phase.DATUM).get(0).what()).contains("strike the datum line");
        assertThat(spare.stages()).hasSize(7);
        Turning none = Turning.of(Works.stiff(pattern(Section.ROUND, 45, 200.9, rod(200, 40))));
        assertThat(phase(none, Phase.PARTING)).isEmpty();
        assertThat(phase(none, Phase.DATUM).get(0).what()).contains("check the length against the stick");
        assertThat(none.stages()).hasSize(6);
    }

    @Test
    void the_roughed_cylinder_is_the_thickest_and_the_sizing_as_far_as_the_blank_allows() {
        assertThat(Works.stiff(pattern(Section.ROUND, 45, 200, rod(200, 40))).roughed())
                .isEqualTo(mm(40.8));
        // A blank runs off its middle by 1/64 in, which costs twice that of its diameter.
        assertThat(Works.stiff(pattern(Section.ROUND, 41, 200, rod(200, 40)))
                        .roughed()
                        .mm())
                .isCloseTo(41 - 25.4 / 32, within(1e-9));
        assertThat(Works.stiff(pattern(Section.SQUARE, 40, 200, rod(200, 40)))
                        .roughed()
                        .mm())
                .isCloseTo(40 - 25.4 / 32, within(1e-9));
        TurningProblem squares =
                Works.stiff(pattern(Section.SQUARE, 50, 200, new Square(mm(200), mm(50), Details.NONE)));
        assertThat(squares.thickestRound()).isEqualTo(mm(25));
        assertThat(phase(Turning.of(squares), Phase.SANDING)).isEmpty();
    }

    @Test
    void a_sizing_cut_goes_to_its_opening_widest_first_and_names_every_place() {
        List<Length> openings = phase(baluster, Phase.SIZING).stream()
                .map(cut -> cut.setting().orElseThrow())
                .toList();
        assertThat(openings).isSortedAccordingTo(Collections.reverseOrder()).doesNotHaveDuplicates();
        assertThat(phase(baluster, Phase.SIZING)).allSatisfy(cut -> cut.places()
                .forEach(place -> assertThat(cut.what()).contains(place.format(UnitSystem.METRIC))));
        assertThat(phase(baluster, Phase.SIZING)).allSatisfy(cut -> {
            assertThat(cut.places()).isSorted().doesNotHaveDuplicates();
            assertThat(cut.from()).isEqualTo(cut.places().get(0));
            assertThat(cut.to()).isEqualTo(cut.places().get(cut.places().size() - 1));
            assertThat(cut.members()).doesNotHaveDuplicates().doesNotContain(0, 11);
        });
        // Of more than eight members the rest is another cut, so that none stands under "and so on".
        assertThat(sizing(8)).singleElement().satisfies(cut -> assertThat(cut.what())
                .endsWith("7 cylinder at 130 mm; 8 cylinder at 150 mm"));
        assertThat(sizing(9)).extracting(Cut::members).containsExactly(List.of(0, 1, 2, 3, 4, 5, 6, 7), List.of(8));
        assertThat(sizing(9).get(1).what()).endsWith(": 9 cylinder at 170 mm");
    }

    /** Only what there is on this piece is to be left alone. */
    @Test
    void sanding_leaves_alone_what_the_piece_has() {
        Tenon tenon = new Tenon(mm(25), mm(18), mm(2), Details.NONE);
        Square square = new Square(mm(100), mm(50), Details.NONE);
        assertThat(sanding(rod(200, 30), tenon)).endsWith("; leave the tenons alone");
        assertThat(sanding(square, rod(200, 30))).endsWith("; leave the squares alone");
        assertThat(sanding(rod(200, 30))).isEqualTo("sand lightly, edges kept sharp");
    }

    private static String sanding(Member... run) {
        return phase(Turning.of(Works.stiff(pattern(Section.SQUARE, 50, 320, run))), Phase.SANDING)
                .get(0)
                .what();
    }

    /** A swell's crest is a hair thicker than its middle: the cylinder roughed to the one is tried with calipers set to the other. */
    @Test
    void what_no_caliper_tells_from_the_cylinder_is_tried_and_not_parted() {
        Swell belly = new Swell(mm(140), mm(30), mm(40), mm(26), Details.NONE);
        Turning turning = Turning.of(Works.stiff(pattern(Section.ROUND, 45, 180, belly, rod(40, 26))));
        double roughed =
                phase(turning, Phase.ROUND).get(0).setting().orElseThrow().mm();
        Cut widest = phase(turning, Phase.SIZING).get(0);
        assertThat(roughed - widest.setting().orElseThrow().mm()).isBetween(0.01, 0.2);
        assertThat(widest.what()).startsWith("the cylinder is this size: try the calipers");
    }

    /** A square has two shoulders, and where squares stand between there is more than one stretch to rough: each is told by its place. */
    @Test
    void no_two_shoulders_and_no_two_stretches_to_rough_are_told_alike() {
        assertThat(phase(baluster, Phase.SHOULDERS)).extracting(Cut::what).doesNotHaveDuplicates();
        assertThat(phase(baluster, Phase.SHOULDERS).get(1).what()).endsWith("the shoulder of 2 square at 85 mm");
        assertThat(phase(baluster, Phase.ROUND))
                .extracting(Cut::what)
                .containsExactly(
                        "bring the square to one even cylinder up to the shoulder at 25 mm",
                        "bring the square to one even cylinder between the shoulders at 85 mm and 535 mm",
                        "bring the square to one even cylinder from the shoulder at 575 mm on");
        Turning one = Turning.of(
                Works.stiff(pattern(Section.SQUARE, 50, 320, new Square(mm(100), mm(50), Details.NONE), rod(200, 30))));
        assertThat(phase(one, Phase.SHOULDERS))
                .singleElement()
                .extracting(Cut::what)
                .asString()
                .contains("strike this line round all four faces");
    }

    /** Nobody sets a leg on a square end: what is turned is laid out from the shoulders. */
    @Test
    void a_piece_with_square_ends_is_laid_out_from_its_shoulders() {
        Square square = new Square(mm(100), mm(50), Details.NONE);
        Turning squareEnds =
                Turning.of(Works.stiff(pattern(Section.SQUARE, 50, 400, square, rod(100, 30), rod(100, 40), square)));
        assertThat(phase(squareEnds, Phase.DATUM))
                .singleElement()
                .extracting(Cut::what)
                .asString()
                .contains("every mark is struck from the shoulder lines")
                .doesNotContain("two ends");
        Turning round = Turning.of(Works.stiff(pattern(Section.SQUARE, 50, 200, rod(100, 30), rod(100, 40))));
        assertThat(phase(round, Phase.DATUM))
                .singleElement()
                .extracting(Cut::what)
                .asString()
                .contains("two ends");
    }

    private static List<Cut> sizing(int members) {
        Member[] run = Collections.nCopies(members, rod(20, 40)).toArray(new Member[0]);
        return phase(Turning.of(Works.stiff(pattern(Section.ROUND, 45, 20 * members, run))), Phase.SIZING);
    }

    @Test
    void no_cut_asks_for_more_than_the_roughed_cylinder_still_is() {
        for (double stock : new double[] {40, 40.5, 41, 42}) {
            Turning turning = Turning.of(
                    Works.stiff(pattern(Section.SQUARE, stock, 240, rod(100, 40), rod(100, 30), rod(40, 40))));
            double largest = Math.min(40.8, stock - 25.4 / 32);
            assertThat(phase(turning, Phase.ROUND)
                            .get(0)
                            .setting()
                            .orElseThrow()
                            .mm())
                    .isCloseTo(largest, within(1e-9));
            assertThat(turning.cuts()).allSatisfy(cut -> assertThat(cut.setting()
                            .filter(any -> cut.tool() != Tool.DIVIDERS)
                            .orElse(Length.ZERO))
                    .isLessThanOrEqualTo(
                            phase(turning, Phase.ROUND).get(0).setting().orElseThrow()));
            assertThat(phase(turning, Phase.SIZING).get(0).what())
                    .startsWith(
                            "the cylinder is this size: try the calipers and take down only what is over: 1 cylinder");
            assertThat(phase(turning, Phase.SIZING).get(1).what()).startsWith("part down to the calipers: 2 cylinder");
        }
    }

    @Test
    void a_tenon_is_brought_to_its_holes_wrench() {
        Tenon tenon = new Tenon(mm(25), mm(18), mm(2), Details.NONE);
        Turning turning = Turning.of(Works.stiff(pattern(Section.ROUND, 45, 225, rod(200, 40), tenon)));
        assertThat(phase(turning, Phase.TENONS).get(0).what())
                .startsWith("2 tenon: ")
                .contains("then a shaving at a time until an 18 mm wrench just drops over");
        assertThat(phase(turning, Phase.DETAILS).get(0).what()).doesNotContain("wrench");
    }

    @Test
    void below_two_thirds_of_the_thickest_is_slender_however_stiff_it_stays() {
        // The last one is so limber that no other gives a tenth.
        assertThat(slender(rod(20, 26.6), rod(300, 40), rod(300, 15))).containsExactly(0, 2);
        assertThat(slender(rod(20, 26.7), rod(300, 40), rod(300, 15))).containsExactly(2);
    }

    @Test
    void below_nine_tenths_is_slender_when_it_gives_a_tenth_of_the_limberness() {
        assertThat(slender(rod(300, 40), rod(300, 35.9))).containsExactly(1);
        assertThat(slender(rod(300, 40), rod(300, 36.1))).isEmpty();
        assertThat(slender(rod(300, 40), rod(300, 40))).isEmpty();
    }

    /** ∫ sin²(πx/L) dx over a stretch, times what its cut adds to 1/r⁴: the share of a tenth by the closed form. */
    @Test
    void a_tenth_of_the_limberness_is_reckoned_where_the_piece_bows() {
        double last = 0;
        boolean[] seen = new boolean[2];
        for (double length = 10; length <= 200; length += 5) {
            double all = 1000 + length;
            double share = added(0, length, all, 17.5)
                    / (added(0, length, all, 17.5)
                            + added(length, 500 + length, all, 20)
                            + added(500 + length, all, all, 13));
            assertThat(share).isGreaterThan(last);
            last = share;
            boolean slender =
                    slender(rod(length, 35), rod(500, 40), rod(500, 26)).contains(0);
            assertThat(slender).as("share %s", share).isEqualTo(share >= 0.1);
            seen[slender ? 1 : 0] = true;
        }
        assertThat(seen[0]).isTrue();
    }

    private static double added(double from, double to, double length, double radius) {
        double whole = (to - from) / 2
                - length
                        / (4 * Math.PI)
                        * (Math.sin(2 * Math.PI * to / length) - Math.sin(2 * Math.PI * from / length));
        return whole * (Math.pow(radius, -4) - Math.pow(20.4, -4));
    }

    @Test
    void which_stretch_is_slender_goes_by_the_job_s_own_rules() {
        Member[] run = {rod(20, 26.6), rod(300, 40), rod(300, 35.9)};
        assertThat(slender(SlenderRules.USUAL, run)).containsExactly(0, 2);
        assertThat(slender(new SlenderRules(0.6, 0.9, 0.1), run)).containsExactly(2);
        assertThat(slender(new SlenderRules(2.0 / 3, 0.85, 0.1), run)).containsExactly(0);
        assertThat(slender(new SlenderRules(0.6, 0.9, 1), run)).isEmpty();
    }

    private static Set<Integer> slender(SlenderRules rules, Member... members) {
        ShopRules usual = ShopRules.USUAL;
        ShopRules own = new ShopRules(
                usual.chart(),
                usual.ceiling(),
                usual.outOfRound(),
                usual.longWork(),
                usual.whipShare(),
                usual.steadyFrom(),
                usual.roughingGouge(),
                usual.pencil(),
                usual.parting(),
                usual.overhang(),
                usual.centring(),
                usual.strengthMargin(),
                usual.thrustShare(),
                usual.thrustMost(),
                usual.shapes(),
                rules,
                usual.curves());
        return SlenderMembers.of(Works.of(
                pattern(Section.ROUND, 60, 2000, members),
                Optional.of(Stiffness.given(11_000)),
                Lathe.USUAL.withRules(own)));
    }

    @Test
    void tenons_and_squares_are_never_slender() {
        Tenon tenon = new Tenon(mm(200), mm(12), mm(2), Details.NONE);
        Square square = new Square(mm(60), mm(20), Details.NONE);
        assertThat(slender(tenon, rod(100, 40), square)).isEmpty();
    }

    @Test
    void a_stage_half_way_has_finished_members_slots_of_three_millimetres_and_roughed_ones() {
        StageOutlines shapes = new StageOutlines(Works.stiff(pattern(
                Section.SQUARE, 45, 320, rod(100, 40), rod(100, 30), new Square(mm(100), mm(45), Details.NONE))));
        Outline stage = shapes.after(Set.of(0), Set.of(1));
        assertThat(stage.length().mm()).isCloseTo(300, within(1e-9));
        assertThat(stage.radiusAt(mm(50)).mm()).isEqualTo(20);
        // The sized place of a cylinder is its middle; the opening is 30.8.
        double middle = 100
                + Works.stiff(pattern(Section.ROUND, 45, 100, rod(100, 30)))
                        .pattern()
                        .members()
                        .get(0)
                        .diameters()
                        .get(0)
                        .place()
                        .mm();
        double inside = middle + (middle < 150 ? 1.4 : -1.4);
        double outside = middle + (middle < 150 ? 3.1 : -3.1);
        assertThat(stage.radiusAt(mm(inside)).mm()).isCloseTo(15.4, within(1e-9));
        assertThat(stage.radiusAt(mm(outside)).mm()).isCloseTo(20.4, within(1e-9));
        assertThat(stage.radiusAt(mm(250)).mm()).isEqualTo(22.5);
        assertThat(stage.sectionAt(mm(250))).isEqualTo(Section.SQUARE);
        Outline unparted = shapes.unparted();
        assertThat(unparted.length().mm()).isCloseTo(320, within(1e-9));
        assertThat(unparted.radiusAt(mm(310)).mm()).isCloseTo(20.4, within(1e-9));
        Outline blank = shapes.blank();
        assertThat(blank.sectionAt(mm(10))).isEqualTo(Section.SQUARE);
        assertThat(blank.radiusAt(mm(10)).mm()).isEqualTo(22.5);
        assertThat(shapes.roughed().radiusAt(mm(50)).mm()).isCloseTo(20.4, within(1e-9));
    }

    @Test
    void coarse_figures_of_a_stage_are_within_a_thousandth_of_the_fine_ones() {
        Outline outline = Works.baluster().outline();
        List<Length> places = List.of(mm(150), mm(300), mm(450));
        Whip fine = Whip.of(outline, Works.wood(), Works.usual(), places);
        Stage stage = Whip.stage("any", outline, Works.wood(), Works.usual(), places);
        assertThat(stage.first().rpm()).isCloseTo(fine.first().rpm(), withinPercentage(0.1));
        assertThat(stage.second().rpm()).isCloseTo(fine.second().rpm(), withinPercentage(0.1));
        assertThat(stage.buckling().newtons()).isCloseTo(fine.buckling().newtons(), withinPercentage(0.1));
        assertThat(stage.most().sag().mm()).isCloseTo(fine.most().sag().mm(), withinPercentage(0.1));
        assertThat(stage.most().place()).isEqualTo(fine.most().place()).isEqualTo(mm(300));
        assertThat(Whip.firstOf(outline, Works.wood(), Works.usual())
                        .orElseThrow()
                        .rpm())
                .isCloseTo(fine.first().rpm(), withinPercentage(0.1));
    }

    @Test
    void the_sag_is_told_at_every_mark_and_forty_even_parts_none_twice() {
        Whip whip = baluster.whip().orElseThrow();
        List<Length> places = whip.sags().stream().map(Whip.Sag::place).toList();
        assertThat(places).isSorted().contains(mm(0), mm(15), mm(300), mm(600));
        assertThat(places)
                .containsAll(Works.baluster().marks().stream().map(Mark::place).toList());
        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i).minus(places.get(i - 1)).mm()).isGreaterThan(1e-6);
        }
        assertThat(whip.most().sag())
                .isEqualTo(whip.sags().stream()
                        .map(Whip.Sag::sag)
                        .max(Length::compareTo)
                        .orElseThrow());
    }

    @Test
    void the_sizing_cuts_say_what_they_cost() {
        List<Cut> narrow = phase(baluster, Phase.SIZING);
        Cut last = narrow.get(narrow.size() - 1);
        double before = baluster.stages().get(1).first().rpm();
        double after = baluster.stages().get(2).first().rpm();
        String why = last.why().orElseThrow();
        // What a turner feels, the stiffness, first; it goes by the square of the speed.
        assertThat(why)
                .startsWith("the sizing cuts ")
                .contains(String.format(
                        Locale.ROOT, " %.0f %% of the stiffness", 100 * (1 - Math.pow(after / before, 2))))
                .endsWith("(the speed it whips at goes from %s to %s rpm)"
                        .formatted(
                                Math.round(before / 100) * 100, // three figures: 12,300, not 12,304
                                Math.round(after / 100) * 100));
        assertThat(why.contains("light cuts from here on")).isEqualTo(after <= 0.9 * before);
        assertThat(narrow.subList(0, narrow.size() - 1))
                .allSatisfy(cut -> assertThat(cut.why()).isEmpty());
        // One cut a quarter of the way down in a stout rod costs next to nothing.
        Cut stout = phase(
                        Turning.of(Works.stiff(pattern(Section.ROUND, 45, 300, rod(150, 40), rod(150, 36)))),
                        Phase.SIZING)
                .get(1);
        assertThat(stout.why().orElseThrow())
                .as("of a stout rod that no lathe makes whip no speed is told")
                .endsWith("all may be made at once");
        Bead bead = new Bead(mm(10), mm(8), mm(40), Details.NONE);
        // Thirty beads' roots down to a fifth cost much.
        Member[] beads = Collections.nCopies(30, bead).toArray(new Member[0]);
        Cut deep = phase(Turning.of(Works.stiff(pattern(Section.ROUND, 45, 300, beads))), Phase.SIZING).stream()
                .reduce((one, later) -> later)
                .orElseThrow();
        assertThat(deep.why().orElseThrow()).contains("light cuts from here on");
    }

    @Test
    void with_more_than_sixty_members_only_the_last_cut_of_a_phase_has_its_natural_speed() {
        List<Member> run = new ArrayList<>();
        for (int i = 0; i < 61; i++) {
            run.add(rod(10, 40 - i % 2));
        }
        Pattern many = new Pattern("many", new Stock(Section.ROUND, mm(45), mm(610)), run);
        List<Cut> details = phase(Turning.of(Works.stiff(many)), Phase.DETAILS);
        assertThat(details).hasSize(61);
        assertThat(details.subList(0, 60))
                .allSatisfy(cut -> assertThat(cut.natural()).isEmpty());
        assertThat(details.get(60).natural()).isPresent();
        Pattern sixty = new Pattern("sixty", new Stock(Section.ROUND, mm(45), mm(600)), run.subList(0, 60));
        assertThat(phase(Turning.of(Works.stiff(sixty)), Phase.DETAILS))
                .allSatisfy(cut -> assertThat(cut.natural()).isPresent());
    }

    @Test
    void natural_speeds_stand_at_cuts_that_shape_and_fall_as_wood_goes() {
        assertThat(baluster.cuts()).allSatisfy(cut -> {
            boolean shapes = Set.of(Phase.SIZING, Phase.DETAILS, Phase.SLENDER, Phase.TENONS, Phase.THIN)
                    .contains(cut.phase());
            if (cut.phase() != Phase.ROUND) {
                assertThat(cut.natural().isPresent()).isEqualTo(shapes);
            }
        });
        List<Cut> round = phase(baluster, Phase.ROUND);
        assertThat(round.get(0).natural()).isEmpty();
        assertThat(round.get(2).natural().orElseThrow().rpm())
                .isCloseTo(baluster.stages().get(1).first().rpm(), within(1e-6));
    }

    @Test
    void the_workings_give_the_figures_they_explain() {
        Whip whip = baluster.whip().orElseThrow();
        String all = baluster.workings().toString();
        assertThat(baluster.workings()).hasSize(8);
        assertThat(all)
                .contains(
                        "first %.0f rpm, second %.0f rpm"
                                .formatted(whip.first().rpm(), whip.second().rpm()),
                        "%d elements of four".formatted(whip.elements()),
                        "P = %.0f N".formatted(whip.buckling().newtons()),
                        "under 20.0 N at the place itself; most %s at %.1f mm"
                                .formatted(
                                        whip.most().sag().formatFine(UnitSystem.METRIC),
                                        whip.most().place().mm()),
                        "leaves at rest, %.1f mm".formatted(whip.steady().mm()),
                        "no figure by more than %.4f %%".formatted(100 * whip.halvingChange()));
        assertThat(Turning.of(Works.of(Works.baluster(), Optional.empty(), Lathe.USUAL))
                        .workings())
                .hasSize(2);
    }

    @Test
    void a_lathes_speeds_that_contradict_one_another_are_told_where_they_stand() {
        List<Speed> steps = List.of(Speed.ofRpm(500), Speed.ofRpm(900), Speed.ofRpm(500), Speed.ofRpm(3000.5));
        assertThat(Lathe.problems("turning.speeds", steps, Optional.of(Speed.ofRpm(900))))
                .containsExactly(
                        new Problem("turning.speeds: step 3", "500 rpm is there twice", "list each step once"),
                        new Problem(
                                "turning.speeds: step 4",
                                "3000.5 rpm is above max_rpm, 900",
                                "leave the step out or raise max_rpm"));
        assertThat(Lathe.problems("at", steps.subList(0, 2), Optional.empty())).isEmpty();
        assertThat(new Lathe(Lathe.USUAL_CUTTING, steps, Optional.empty(), Optional.empty()).steps())
                .isSorted();
    }
}
