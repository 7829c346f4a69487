package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.Seeds;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/** What every member kind must keep; a new kind joins by its line in {@link Samples}. */
class MemberTest {
    enum EndsCase {
        NEITHER(false, false),
        FIRST(true, false),
        LAST(false, true),
        BOTH(true, true);

        private final boolean first;
        private final boolean last;

        EndsCase(boolean first, boolean last) {
            this.first = first;
            this.last = last;
        }

        Member.Ends ends() {
            return new Member.Ends(first, last);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_outline_follows_the_formula_of_the_file_format(EndsCase at) {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                DoubleUnaryOperator expected = Samples.shape(member, at.ends());
                Outline outline = Outline.of(Length.ZERO, member.curves(at.ends()), member.section());
                assertThat(outline.length().mm()).isCloseTo(member.length().mm(), within(1e-9));
                for (int i = 0; i <= 200; i++) {
                    double x = member.length().mm() * i / 200;
                    assertThat(outline.radiusAt(mm(x)).mm())
                            .as("%s at %s", member, x)
                            .isCloseTo(expected.applyAsDouble(x), within(1e-9 + worthOfLastBits(expected, member, x)));
                }
            }
        });
    }

    /** Where an ellipse arc stands upright, at an end or inside, the last bits of x are worth half the digits of r. */
    private static double worthOfLastBits(DoubleUnaryOperator expected, Member member, double x) {
        double bits = 4 * Math.ulp(member.length().mm());
        double r = expected.applyAsDouble(x);
        double before = expected.applyAsDouble(Math.max(0, x - bits));
        double after = expected.applyAsDouble(Math.min(member.length().mm(), x + bits));
        double worth = Math.max(Math.abs(before - r), Math.abs(after - r));
        return worth < 1e-6 ? worth : 0; // more is a step of the formula, which excuses nothing
    }

    @Test
    void the_slope_is_the_difference_quotient() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                for (Curve curve : Samples.member(kind, random).curves(Member.Ends.NEITHER)) {
                    double x = curve.length().mm() * (0.05 + 0.9 * random.nextDouble());
                    double h = 1e-5 * curve.length().mm();
                    double quotient = (curve.radiusMm(x + h) - curve.radiusMm(x - h)) / (2 * h);
                    assertThat(curve.slope(x)).isCloseTo(quotient, within(1e-4 * (1 + Math.abs(quotient))));
                }
            }
        });
    }

    @Test
    void a_mirrored_member_has_the_mirrored_outline() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                Outline turned = Outline.of(Length.ZERO, member.curves(new Member.Ends(true, false)), member.section())
                        .reversed();
                Outline mirrored = Outline.of(
                        Length.ZERO, member.mirrored().curves(new Member.Ends(false, true)), member.section());
                for (int i = 0; i <= 50; i++) {
                    Length x = member.length().times(i / 50.0);
                    assertThat(mirrored.radiusAt(x).mm())
                            .as("%s", member)
                            .isCloseTo(turned.radiusAt(x).mm(), within(1e-7));
                }
            }
        });
    }

    @Test
    void stations_bound_the_outline() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                Outline outline = Outline.of(Length.ZERO, member.curves(Member.Ends.NEITHER), member.section());
                for (int i = 0; i <= 100; i++) {
                    double r =
                            outline.radiusAt(member.length().times(i / 100.0)).mm();
                    assertThat(r)
                            .isBetween(
                                    outline.smallestRadius().mm() - 1e-9,
                                    outline.largestRadius().mm() + 1e-9);
                }
            }
        });
    }

    @Test
    void each_sized_diameter_is_found_on_the_outline() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                DoubleUnaryOperator shape = Samples.shape(member, Member.Ends.NEITHER);
                for (Member.Diameter each : member.diameters()) {
                    assertThat(2 * shape.applyAsDouble(each.place().mm()))
                            .as("%s %s", member, each)
                            .isCloseTo(each.size().mm(), within(1e-9));
                }
            }
        });
    }

    @Test
    void crests_rise_within_the_member_each_with_a_word_of_its_own() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                Length before = Length.ZERO;
                for (Member.Crest crest : member.crests()) {
                    assertThat(crest.place()).as("%s", member).isGreaterThan(before);
                    before = crest.place();
                }
                assertThat(before).as("%s", member).isLessThan(member.length());
                assertThat(member.crests().stream().map(Member.Crest::word)).doesNotHaveDuplicates();
            }
        });
    }

    @Test
    void a_crest_is_where_the_outline_turns() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                DoubleUnaryOperator shape = Samples.shape(member, Member.Ends.NEITHER);
                for (Member.Crest crest : member.crests()) {
                    double here = shape.applyAsDouble(crest.place().mm());
                    double before = shape.applyAsDouble(crest.place().mm() * 0.99);
                    double after = shape.applyAsDouble(crest.place().mm() * 1.01);
                    assertThat((here - before) * (here - after))
                            .as("%s", member)
                            .isPositive();
                }
            }
        });
    }

    @Test
    void a_member_mirrored_twice_is_the_same() {
        Seeds.each(20, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                Member twice = member.mirrored().mirrored();
                assertThat(twice.getClass()).isEqualTo(member.getClass());
                assertThat(twice.length().mm()).isCloseTo(member.length().mm(), within(1e-9));
                assertThat(twice.diameters()).hasSameSizeAs(member.diameters());
                for (int i = 0; i < member.diameters().size(); i++) {
                    Member.Diameter was = member.diameters().get(i);
                    Member.Diameter is = twice.diameters().get(i);
                    assertThat(is.key()).isEqualTo(was.key());
                    assertThat(is.size()).isEqualTo(was.size());
                    assertThat(is.place().mm()).isCloseTo(was.place().mm(), within(1e-9));
                }
            }
        });
    }

    @Test
    void every_kind_of_the_family_has_a_sample() {
        assertThat(Samples.types()).containsExactlyInAnyOrder(Member.class.getPermittedSubclasses());
    }

    @Test
    void what_enters_a_hole_and_what_is_left_square_are_not_turned_for_their_shape() {
        Seeds.each(1, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                boolean stays = member instanceof Tenon || member instanceof Square;
                assertThat(member.isShaped()).as("%s", member).isEqualTo(!stays);
                assertThat(member.lengthInHole())
                        .as("%s", member)
                        .isEqualTo(member instanceof Tenon ? member.length() : Length.ZERO);
            }
        });
    }

    @Test
    void what_cannot_exist_is_told_with_its_key() {
        assertKeys(Bead.faults(mm(10), mm(20), mm(20)), "crown");
        assertKeys(Bead.faults(mm(0), mm(20), mm(30)), "length");
        assertKeys(Bead.faults(mm(10), mm(0), mm(-1)), "root", "crown");
        assertKeys(Cove.faults(mm(10), mm(20), mm(21)), "rim");
        assertKeys(Vee.faults(mm(10), mm(20), mm(20)), "rim");
        assertKeys(Groove.faults(mm(10), mm(19), mm(20)), "rim");
        assertKeys(Taper.faults(mm(10), mm(0), mm(20)), "from");
        assertKeys(Cylinder.faults(mm(10), mm(0)), "diameter");
        assertKeys(Square.faults(mm(10), mm(0)), "side");
        assertKeys(Tenon.faults(mm(10), mm(20), mm(5.1)), "chamfer");
        assertKeys(Tenon.faults(mm(30), mm(8), mm(4.1)), "chamfer");
        assertKeys(Tenon.faults(mm(30), mm(8), mm(4)));
        assertKeys(Swell.faults(mm(30), mm(10), mm(0.5), mm(30)), "middle");
        assertKeys(FreeCurve.faults(List.of(point(0, 5))), "points");
        assertKeys(FreeCurve.faults(List.of(point(1, 5), point(2, 5))), "points");
        assertKeys(FreeCurve.faults(List.of(point(0, 5), point(3, 5), point(3, 6))), "point 3");
        assertKeys(FreeCurve.faults(List.of(point(0, 5), point(3, 0))), "point 2 diameter");
    }

    private static FreeCurve.Point point(double x, double d) {
        return new FreeCurve.Point(mm(x), mm(d));
    }

    private static void assertKeys(List<Fault> faults, String... keys) {
        assertThat(faults.stream().map(Fault::key)).containsExactly(keys);
        assertThat(faults).allSatisfy(fault -> assertThat(fault.mend()).isNotBlank());
    }

    @Test
    void a_square_is_square() {
        assertThat(new Square(mm(10), mm(40), Details.NONE).section()).isEqualTo(Section.SQUARE);
        assertThat(new Bead(mm(10), mm(20), mm(30), Details.NONE).section()).isEqualTo(Section.ROUND);
    }

    /** A millionth of a millimetre is no size to any tool; zero is a chamfer that is not there. */
    @Test
    void a_size_is_above_zero_by_a_millionth_at_least() {
        assertKeys(Cylinder.faults(mm(1e-6), mm(1e-6)));
        assertKeys(Cylinder.faults(mm(0.9e-6), mm(20)), "length");
        assertKeys(Cylinder.faults(mm(10), mm(0.9e-6)), "diameter");
        assertKeys(Tenon.faults(mm(10), mm(20), mm(0)));
        assertKeys(Tenon.faults(mm(10), mm(20), mm(-0.1)), "chamfer");
        assertKeys(Tenon.faults(mm(0), mm(20), mm(1)), "length");
        assertKeys(Tenon.faults(mm(10), mm(0), mm(1)), "diameter");
        assertKeys(Tenon.faults(mm(10), mm(20), mm(5)));
        assertKeys(Tenon.faults(mm(10), mm(8), mm(6)), "chamfer", "chamfer");
        assertKeys(Fillet.faults(mm(0), mm(0)), "length", "diameter");
        assertKeys(HalfBead.faults(mm(10), mm(20), mm(0)), "to");
        assertKeys(HalfCove.faults(mm(10), mm(0), mm(20)), "from");
        assertKeys(Ogee.faults(mm(0), mm(20), mm(20)), "length");
        assertKeys(ReverseOgee.faults(mm(10), mm(20), mm(0)), "to");
        assertKeys(Cove.faults(mm(10), mm(20), mm(20)), "rim");
        assertKeys(Groove.faults(mm(10), mm(20), mm(20)), "rim");
        assertKeys(Swell.faults(mm(30), mm(0), mm(0), mm(0)), "from", "middle", "to");
        assertKeys(Stock.faults(mm(0), mm(0)), "size", "length");
    }

    @Test
    void a_hole_takes_its_tenon() {
        assertKeys(Tenon.holeFaults(Optional.empty()));
        assertKeys(Tenon.holeFaults(Optional.of(mm(11.9))));
        assertKeys(Tenon.holeFaults(Optional.of(mm(0))), "hole");
        Member.Hole own =
                new Tenon(mm(20), mm(12), mm(0), Details.NONE).enters().orElseThrow();
        assertThat(own).isEqualTo(new Member.Hole(mm(12), false));
        Member.Hole told = new Tenon(mm(20), mm(12), mm(0), Optional.of(mm(12.3)), Details.NONE)
                .enters()
                .orElseThrow();
        assertThat(told).isEqualTo(new Member.Hole(mm(12.3), true));
    }

    @Test
    void no_member_that_cannot_exist_is_made_and_the_first_reason_is_told() {
        assertThatThrownBy(() -> new Bead(mm(10), mm(20), mm(20), Details.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("bead crown must exceed the root, was 20 mm (0.7874 in) with a root of 20 mm (0.7874 in)");
        assertThatThrownBy(() -> new Cylinder(mm(0), mm(1), Details.NONE)).hasMessageStartingWith("cylinder length");
        assertThatThrownBy(() -> new Fillet(mm(0), mm(1), Details.NONE)).hasMessageStartingWith("fillet length");
        assertThatThrownBy(() -> new Square(mm(1), mm(0), Details.NONE)).hasMessageStartingWith("square side");
        assertThatThrownBy(() -> new Taper(mm(1), mm(0), mm(1), Details.NONE)).hasMessageStartingWith("taper from");
        assertThatThrownBy(() -> new Swell(mm(9), mm(9), mm(0), mm(9), Details.NONE))
                .hasMessageStartingWith("swell middle");
        assertThatThrownBy(() -> new HalfBead(mm(1), mm(1), mm(0), Details.NONE))
                .hasMessageStartingWith("half-bead to");
        assertThatThrownBy(() -> new HalfCove(mm(1), mm(1), mm(0), Details.NONE))
                .hasMessageStartingWith("half-cove to");
        assertThatThrownBy(() -> new Ogee(mm(1), mm(1), mm(0), Details.NONE)).hasMessageStartingWith("ogee to");
        assertThatThrownBy(() -> new ReverseOgee(mm(1), mm(1), mm(0), Details.NONE))
                .hasMessageStartingWith("reverse-ogee to");
        assertThatThrownBy(() -> new Cove(mm(1), mm(1), mm(1), Details.NONE)).hasMessageStartingWith("cove rim");
        assertThatThrownBy(() -> new Vee(mm(1), mm(1), mm(1), Details.NONE)).hasMessageStartingWith("vee rim");
        assertThatThrownBy(() -> new Groove(mm(1), mm(1), mm(1), Details.NONE)).hasMessageStartingWith("groove rim");
        assertThatThrownBy(() -> new FreeCurve(List.of(), Details.NONE)).hasMessageStartingWith("curve points");
        assertThatThrownBy(() -> new Tenon(mm(1), mm(1), mm(1), Details.NONE)).hasMessageStartingWith("tenon chamfer");
        assertThatThrownBy(() -> new Tenon(mm(1), mm(2), mm(0), Optional.of(mm(0)), Details.NONE))
                .hasMessageStartingWith("tenon hole");
        assertThatThrownBy(() -> new Stock(Section.ROUND, mm(0), mm(1))).hasMessageStartingWith("stock size");
    }

    @Test
    void a_free_curve_is_sized_at_its_ends_and_wherever_it_turns() {
        FreeCurve curve = new FreeCurve(
                List.of(
                        point(0, 10),
                        point(5, 20),
                        point(10, 15),
                        point(15, 15),
                        point(20, 15),
                        point(25, 30),
                        point(30, 31)),
                Details.NONE);
        assertThat(curve.diameters().stream().map(Member.Diameter::key))
                .containsExactly("point 1", "point 2", "point 3", "point 5", "point 7");
        FreeCurve levelling = new FreeCurve(List.of(point(0, 10), point(5, 20), point(10, 20)), Details.NONE);
        assertThat(levelling.diameters().stream().map(Member.Diameter::key))
                .containsExactly("point 1", "point 2", "point 3");
    }

    @Test
    void a_tenon_that_is_all_chamfer_has_no_straight_part() {
        Tenon tenon = new Tenon(mm(10), mm(12), mm(5), Details.NONE);
        assertThat(tenon.curves(new Member.Ends(true, true))).hasSize(2);
        assertThat(tenon.curves(new Member.Ends(true, false))).hasSize(2);
        assertThat(tenon.curves(Member.Ends.NEITHER)).hasSize(1);
        assertThat(new Tenon(mm(10), mm(12), mm(0), Details.NONE).curves(new Member.Ends(true, true)))
                .hasSize(1);
    }

    @Test
    void a_member_goes_by_its_name_or_its_kind() {
        assertThat(new Bead(mm(10), mm(20), mm(30), Details.NONE).title()).isEqualTo("bead");
        assertThat(new Bead(mm(10), mm(20), mm(30), Details.named("ring")).title())
                .isEqualTo("ring");
    }

    @Test
    void beads_are_rolled_and_nothing_else() {
        Seeds.each(1, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                assertThat(member.isRolled()).isEqualTo(member instanceof Bead || member instanceof HalfBead);
            }
        });
    }
}
