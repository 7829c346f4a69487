package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import turnalike.Seeds;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/** What every member kind must keep; a new kind joins by {@link Samples#member}. */
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
                DoubleUnaryOperator expected = ContractShape.of(member, at.ends());
                Outline outline = Outline.of(Length.ZERO, member.curves(at.ends()), member.section());
                assertThat(outline.length().mm()).isCloseTo(member.length().mm(), within(1e-9));
                for (int i = 0; i <= 200; i++) {
                    double x = member.length().mm() * i / 200;
                    assertThat(outline.radiusAt(mm(x)).mm())
                            .as("%s at %s", member, x)
                            .isCloseTo(expected.applyAsDouble(x), within(atAnEnd(i) ? 1e-6 : 1e-9));
                }
            }
        });
    }

    /** There an ellipse arc stands upright: the last bit of x is worth half the digits of r. */
    private static boolean atAnEnd(int i) {
        return i == 0 || i == 200;
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
                DoubleUnaryOperator shape = ContractShape.of(member, Member.Ends.NEITHER);
                for (Member.Diameter each : member.diameters()) {
                    assertThat(2 * shape.applyAsDouble(each.place().mm()))
                            .as("%s %s", member, each)
                            .isCloseTo(each.size().mm(), within(1e-9));
                }
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
}
