package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Section;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

class PatternTest {
    private static final Stock STOCK = new Stock(Section.SQUARE, mm(40), mm(500));

    private static Pattern pattern(Member... members) {
        return new Pattern("p", STOCK, List.of(members));
    }

    private static Bead bead(Details details) {
        return new Bead(mm(20), mm(20), mm(30), details);
    }

    private static Cylinder cylinder(double length, double diameter) {
        return new Cylinder(mm(length), mm(diameter), Details.NONE);
    }

    @Test
    void marks_are_both_ends_every_boundary_and_the_crests() {
        Pattern pattern = pattern(
                new Tenon(mm(15), mm(12), mm(1), Details.NONE),
                bead(Details.named("upper")),
                new Cove(mm(10), mm(28), mm(20), Details.NONE),
                new Vee(mm(6), mm(28), mm(24), Details.NONE),
                cylinder(30, 20));
        assertThat(pattern.marks().stream().map(mark -> mark.place().mm()))
                .containsExactly(0.0, 15.0, 25.0, 35.0, 40.0, 45.0, 48.0, 51.0, 81.0);
        assertThat(pattern.marks().stream().map(Mark::label))
                .containsExactly(
                        "start end",
                        "1 tenon | 2 upper",
                        "2 upper crest",
                        "2 upper | 3 cove",
                        "3 cove bottom",
                        "3 cove | 4 vee",
                        "4 vee bottom",
                        "4 vee | 5 cylinder",
                        "far end");
        assertThat(pattern.length().mm()).isEqualTo(81);
    }

    @Test
    void bead_at_start_has_a_mark_at_its_crown() {
        assertThat(pattern(bead(Details.NONE)).marks().get(1).place().mm()).isEqualTo(10);
    }

    @Test
    void each_mark_is_found_at_its_place_and_none_between() {
        Seeds.each(50, random -> {
            Pattern pattern = Samples.pattern(1 + random.nextInt(10), random);
            List<Mark> marks = pattern.marks();
            for (int i = 0; i < marks.size(); i++) {
                Length place = marks.get(i).place();
                assertThat(pattern.markAt(place)).contains(i);
                assertThat(pattern.markAt(place.plus(mm(1e-10)))).contains(i);
                assertThat(pattern.markAt(place.plus(mm(1e-4)))).isEmpty();
            }
        });
    }

    @Test
    void a_member_by_eye_gets_no_crest_mark_but_keeps_its_edges() {
        Pattern pattern = pattern(bead(new Details(java.util.Optional.empty(), true)), cylinder(5, 20));
        assertThat(pattern.marks().stream().map(mark -> mark.place().mm())).containsExactly(0.0, 20.0, 25.0);
    }

    @Test
    void only_what_cannot_exist_is_refused() {
        assertThat(whats(List.of())).containsExactly("the run is empty");
        assertThat(problems(STOCK, List.of(cylinder(10, 40)))).isEmpty();
        assertThat(problems(STOCK, List.of(cylinder(500, 40)))).isEmpty();
        assertThat(whats(List.of(cylinder(10, 40.1))))
                .hasSize(1)
                .first()
                .asString()
                .contains("wider than the blank");
        assertThat(whats(List.of(cylinder(500.1, 30))))
                .hasSize(1)
                .first()
                .asString()
                .contains("longer than the stock");
        assertThat(whats(List.of(new Square(mm(10), mm(41), Details.NONE)))).hasSize(1);
        assertThat(whats(List.of(new Groove(mm(10), mm(41), mm(20), Details.NONE))))
                .hasSize(1);
        assertThat(whats(List.of(new Swell(mm(100), mm(30), mm(40), mm(39), Details.NONE))))
                .hasSize(1);
        assertThatThrownBy(() -> pattern(cylinder(501, 10))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_square_in_round_stock_is_measured_across_its_arrises() {
        Stock round = new Stock(Section.ROUND, mm(40), mm(100));
        assertThat(problems(round, List.of(new Square(mm(10), mm(28), Details.NONE))))
                .isEmpty();
        assertThat(problems(round, List.of(new Square(mm(10), mm(29), Details.NONE))))
                .hasSize(1);
        assertThat(problems(round, List.of(cylinder(10, 40)))).isEmpty();
    }

    @Test
    void a_problem_names_the_members_number_and_name() {
        Details name = Details.named("upper bead");
        List<Problem> problems = problems(STOCK, List.of(cylinder(9, 9), new Bead(mm(9), mm(9), mm(50), name)));
        assertThat(problems).extracting(Problem::where).containsExactly("member 2 (upper bead)");
    }

    private static List<String> whats(List<Member> members) {
        return problems(STOCK, members).stream().map(Problem::what).toList();
    }

    @Test
    void what_is_wrong_or_unwise_is_told_in_the_turners_units() {
        List<Member> wide = List.of(cylinder(25.4, 50.8));
        assertThat(Pattern.problems(STOCK, wide, UnitSystem.INCH).get(0).what())
                .startsWith("is 2 in (50.8 mm) across, wider than the blank of ");
        assertThat(Pattern.problems(STOCK, wide, UnitSystem.METRIC).get(0).what())
                .startsWith("is 50.8 mm (2 in) across");
        Pattern grooved =
                pattern(cylinder(20, 30), new Groove(mm(1.27), mm(30), mm(24), Details.NONE), cylinder(20, 30));
        assertThat(Turnability.warnings(grooved, UnitSystem.INCH).get(0).what()).startsWith("is 0.05 in (1.3 mm) wide");
        assertThat(Turnability.warnings(grooved, UnitSystem.METRIC).get(0).what())
                .startsWith("is 1.27 mm (3/64 in) wide");
        Fault crown = Bead.faults(mm(10), mm(28.575), mm(28.448)).get(0);
        assertThat(crown.what().in(UnitSystem.INCH))
                .isEqualTo("must exceed the root, was 1.12 in (28.448 mm) with a root of 1 1/8 in (28.575 mm)");
    }

    @Test
    void a_mirrored_pattern_has_mirrored_marks() {
        Seeds.each(50, random -> {
            Pattern pattern = Samples.pattern(1 + random.nextInt(10), random);
            List<Mark> marks = pattern.marks();
            List<Mark> turned = pattern.mirrored().marks();
            assertThat(turned).hasSameSizeAs(marks);
            for (int i = 0; i < marks.size(); i++) {
                double place = pattern.length()
                        .minus(marks.get(marks.size() - 1 - i).place())
                        .mm();
                assertThat(turned.get(i).place().mm()).isCloseTo(place, within(1e-7));
            }
        });
    }

    @Test
    void warns_of_a_tenon_thicker_than_its_neighbour() {
        assertWarns("no shoulder", new Tenon(mm(20), mm(16), mm(0), Details.NONE), cylinder(50, 12));
        assertSilent("no shoulder", new Tenon(mm(20), mm(12), mm(0), Details.NONE), cylinder(50, 16));
        assertWarns("no shoulder", cylinder(50, 12), new Tenon(mm(20), mm(16), mm(0), Details.NONE));
    }

    @Test
    void warns_of_a_cove_or_vee_too_narrow_for_its_depth() {
        assertWarns("gouge", new Cove(mm(10), mm(30), mm(19), Details.NONE));
        assertSilent("gouge", new Cove(mm(10), mm(30), mm(20), Details.NONE));
        assertWarns("skew", new Vee(mm(4), mm(30), mm(21), Details.NONE));
        assertSilent("skew", new Vee(mm(4), mm(30), mm(22), Details.NONE));
        assertWarns("parting tool", new Groove(mm(1), mm(30), mm(21), Details.NONE));
    }

    @Test
    void warns_of_a_neck_thinner_than_a_tenth_of_its_distance_to_the_nearer_end() {
        assertWarns("whip", cylinder(220, 30), new Cove(mm(20), mm(30), mm(22), Details.NONE), cylinder(220, 30));
        assertSilent("whip", cylinder(200, 30), new Cove(mm(20), mm(30), mm(22), Details.NONE), cylinder(220, 30));
        assertWarns("whip", cylinder(400, 19));
        assertSilent("whip", cylinder(400, 20));
        assertWarns("whip", cylinder(100, 30), cylinder(300, 22), cylinder(100, 30));
    }

    @Test
    void warns_of_a_thin_neck_outboard_of_a_heavy_part() {
        Cove neck = new Cove(mm(20), mm(20), mm(12), Details.NONE);
        assertWarns("outboard", cylinder(20, 20), neck, cylinder(100, 38), cylinder(200, 30));
        assertSilent("outboard", cylinder(20, 20), neck, cylinder(100, 28), cylinder(200, 28));
        assertWarns("outboard", cylinder(200, 30), cylinder(100, 38), neck, cylinder(20, 20));
    }

    @Test
    void warns_of_a_squares_arrises_meeting_a_bead() {
        Square square = new Square(mm(60), mm(40), Details.NONE);
        assertWarns("arrises", square, bead(Details.NONE));
        assertWarns("arrises", bead(Details.NONE), square);
        assertSilent("arrises", square, new Fillet(mm(3), mm(30), Details.NONE), bead(Details.NONE));
    }

    @Test
    void an_everyday_run_is_not_nagged_about() {
        assertThat(warnings(pattern(
                        new Tenon(mm(20), mm(16), mm(2), Details.NONE),
                        new Fillet(mm(4), mm(26), Details.NONE),
                        bead(Details.NONE),
                        new Cove(mm(15), mm(28), mm(20), Details.NONE),
                        new Taper(mm(150), mm(28), mm(22), Details.NONE),
                        new Tenon(mm(20), mm(16), mm(2), Details.NONE))))
                .isEmpty();
    }

    private static List<Problem> problems(Stock stock, List<? extends Member> members) {
        return Pattern.problems(stock, List.copyOf(members), UnitSystem.METRIC);
    }

    private static List<Warning> warnings(Pattern pattern) {
        return Turnability.warnings(pattern, UnitSystem.METRIC);
    }

    private static void assertWarns(String word, Member... members) {
        assertThat(warnings(pattern(members))).anySatisfy(warning -> {
            assertThat(warning.what()).contains(word);
            assertThat(warning.where()).startsWith("member ");
        });
    }

    private static void assertSilent(String word, Member... members) {
        assertThat(warnings(pattern(members)))
                .noneSatisfy(warning -> assertThat(warning.what()).contains(word));
    }

    @Test
    void patterns_are_equal_when_name_stock_and_members_are() {
        Pattern one = pattern(cylinder(10, 20), bead(Details.NONE));
        assertThat(pattern(cylinder(10, 20), bead(Details.NONE))).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(pattern(cylinder(10, 21), bead(Details.NONE))).isNotEqualTo(one);
        assertThat(new Pattern("q", STOCK, one.members())).isNotEqualTo(one);
        assertThat(new Pattern("p", new Stock(Section.ROUND, mm(40), mm(500)), one.members()))
                .isNotEqualTo(one);
        assertThat(one).isNotEqualTo("p").hasToString("Pattern[p, %s, %s]".formatted(STOCK, one.members()));
        assertThat(one.hashCode()).isNotEqualTo(pattern(cylinder(10, 21)).hashCode());
        assertThat(one.name()).isEqualTo("p");
    }

    @Test
    void rounding_makes_no_run_too_long_and_no_member_too_wide() {
        assertThat(problems(STOCK, List.of(cylinder(500 * (1 + 5e-13), 40 * (1 + 5e-13)))))
                .isEmpty();
        assertThat(problems(STOCK, List.of(cylinder(500 * (1 + 1e-11), 40)))).hasSize(1);
        assertThat(problems(STOCK, List.of(cylinder(500, 40 * (1 + 1e-11))))).hasSize(1);
    }

    @Test
    void what_is_too_wide_is_measured_as_its_blank_is() {
        Stock round = new Stock(Section.ROUND, mm(40), mm(100));
        Square square = new Square(mm(10), mm(30), Details.NONE);
        // 30 mm across the flats are 42.426 mm across the corners.
        assertThat(problems(round, List.of(square)).get(0).what())
                .isEqualTo("is 42.426 mm (1.6703 in) across, wider than the blank of 40 mm (1.5748 in)");
        assertThat(problems(STOCK, List.of(new Square(mm(10), mm(41), Details.NONE)))
                        .get(0)
                        .what())
                .startsWith("is 41 mm (1.6142 in) across");
        assertThat(problems(STOCK, List.of(new Groove(mm(10), mm(41), mm(20), Details.NONE)))
                        .get(0)
                        .what())
                .startsWith("is 41 mm (1.6142 in) across");
        assertThat(whats(List.of(cylinder(300, 30), cylinder(201, 30))))
                .containsExactly("the run of 501 mm (19.7244 in) is longer than the stock of 500 mm (19.685 in)");
    }

    @Test
    void a_tenons_edge_is_broken_at_a_free_end_alone() {
        Tenon tenon = new Tenon(mm(20), mm(12), mm(2), Details.NONE);
        Pattern pattern = pattern(tenon, cylinder(50, 20), tenon, cylinder(50, 20), tenon);
        assertThat(pattern.outline().startRadius()).isEqualTo(mm(4));
        assertThat(pattern.outline().endRadius()).isEqualTo(mm(4));
        assertThat(pattern.outline().radiusAt(mm(19.99))).isEqualTo(mm(6));
        assertThat(pattern.outline().radiusAt(mm(70.01)).mm()).isEqualTo(6);
        assertThat(pattern.outline().radiusAt(mm(89.99)).mm()).isEqualTo(6);
        assertThat(pattern.outline().radiusAt(mm(140.01)).mm()).isEqualTo(6);
    }
}
