package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Section;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Samples;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Taper;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Working;
import turnalike.wood.Rupture;
import turnalike.wood.Stiffness;

/** Bending stress by statics alone: the moment is the lever arms' times 20 N, the modulus of a round πd³/32. */
class StrainTest {
    /** 3/16 in. */
    private static final double NECK_MM = 4.7625;

    private static final Rupture ASH = new Rupture(106, new Working("Strength", "as printed", "table", "average"));
    private static final Held CHUCK = new Held(Held.By.CHUCK, Held.At.START, false);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Cylinder rod(double lengthMm, double diameterMm) {
        return new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE);
    }

    /** The tailstock all but slack, so that statics alone decide. */
    private static Lathe lathe(Held held) {
        return new Lathe(Force.ofNewtons(20), List.of(), Optional.empty(), Optional.of(Force.ofNewtons(0.001)))
                .withHeld(held);
    }

    private static Turning turning(Held held, Member... members) {
        double length = List.of(members).stream()
                .mapToDouble(each -> each.length().mm())
                .sum();
        Pattern pattern = new Pattern("neck", new Stock(Section.ROUND, mm(60), mm(length)), List.of(members));
        return Turning.of(Works.of(pattern, Optional.of(Stiffness.given(11_000)), Optional.of(ASH), lathe(held)));
    }

    private static double modulus(double diameterMm) {
        return Math.PI * Math.pow(diameterMm, 3) / 32;
    }

    @Test
    void a_neck_in_the_middle_is_bent_by_the_cut_upon_itself_and_each_mend_is_worked_out() {
        Turning turning = turning(Held.BETWEEN_CENTRES, rod(200, 40), rod(10, NECK_MM), rod(200, 40));
        double stress = 20 * 205 * 205 / 410.0 / modulus(NECK_MM);
        BendingStrength strength = turning.strength().orElseThrow();
        assertThat(strength.allowedMpa()).isEqualTo(26.5);
        Strain worst = strength.strains().get(0);
        assertThat(worst.member()).isEqualTo(1);
        assertThat(worst.place().mm()).isCloseTo(205, within(1e-6));
        assertThat(worst.loadAt()).isEqualTo(worst.place());
        assertThat(worst.diameter().mm()).isCloseTo(NECK_MM, within(1e-9));
        assertThat(worst.stressMpa()).isCloseTo(stress, withinPercentage(0.01));
        Cut cut = turning.cuts().get(worst.cut() - 1);
        assertThat(cut.members()).containsExactly(1);
        Strain.Mends mends = worst.mends().orElseThrow();
        // It is cut last already in effect: nothing else bends it as hard.
        assertThat(mends.lastMpa()).isCloseTo(stress, withinPercentage(0.01));
        assertThat(mends.force().newtons()).isCloseTo(20 * 26.5 / stress, withinPercentage(0.01));
        double diameter = Math.cbrt(32 * 20 * 205 * 205 / 410.0 / 26.5 / Math.PI);
        assertThat(mends.diameter().mm()).isCloseTo(diameter, withinPercentage(0.01));
        assertThat(mends.supportedMpa()).isLessThan(stress / 4);
        assertThat(mends.support().mm()).isBetween(150.0, 260.0);
    }

    /** A support at s and a push at a on two centres: what pushes back is w(s; a)/w(s; s), by the deflections of an even rod. */
    @Test
    void one_more_support_takes_from_the_stress_as_the_handbook_says() {
        Turning turning = turning(Held.BETWEEN_CENTRES, rod(800, 10));
        Strain worst = turning.strength().orElseThrow().strains().get(0);
        Strain.Mends mends = worst.mends().orElseThrow();
        assertThat(worst.stressMpa()).isCloseTo(20 * 200 / modulus(10), withinPercentage(0.01));
        double s = mends.support().mm();
        double most = 0;
        Cut cut = turning.cuts().get(worst.cut() - 1);
        for (double a = cut.from().mm(); a <= cut.to().mm(); a += 2) {
            double back = sag(s, a) / sag(s, s);
            double x = worst.place().mm();
            double moment = arm(x, a) - back * arm(x, s);
            most = Math.max(most, 20 * Math.abs(moment) / modulus(10));
        }
        assertThat(mends.supportedMpa()).isCloseTo(most, withinPercentage(0.5)).isLessThan(worst.stressMpa());
    }

    private static double arm(double x, double a) {
        return x < a ? x * (800 - a) / 800 : a * (800 - x) / 800;
    }

    /** b x (L² − b² − x²)/6EIL for x up to a, b = L − a (any handbook of mechanics; from memory), and shear. */
    private static double sag(double x, double a) {
        if (x > a) {
            return sag(a, x);
        }
        double b = 800 - a;
        double inertia = Math.PI * Math.pow(10, 4) / 64;
        double bent = b * x * (640_000 - b * b - x * x) / (6 * 11_000 * inertia * 800);
        return bent + b * x / 800 / (0.9 * 880 * Math.PI * 25);
    }

    /** From the tip back the neck is only bent by its own cut; cut before the tip it breaks, and that order is what mends it. */
    @Test
    void in_a_chuck_a_neck_cut_early_is_bent_by_what_is_cut_further_out() {
        double own = 20 * 10 / modulus(NECK_MM);
        Pattern pattern = new Pattern(
                "neck",
                new Stock(Section.ROUND, mm(60), mm(200)),
                List.of(rod(20, 40), rod(10, NECK_MM), rod(170, 40)));
        TurningProblem work = Works.of(pattern, Optional.of(Stiffness.given(11_000)), Optional.of(ASH), lathe(CHUCK));
        Turning turning = Turning.of(work);
        Strain inOrder = turning.strength().orElseThrow().strains().get(0);
        assertThat(inOrder.member()).isEqualTo(1);
        assertThat(inOrder.stressMpa()).isCloseTo(own, withinPercentage(0.01));
        assertThat(turning.cautions()).noneMatch(each -> each.what().contains("MPa"));
        List<Cut> shaping = new ArrayList<>(
                turning.cuts().stream().filter(cut -> cut.phase().cutsMembers()).toList());
        Collections.reverse(shaping);
        BeamLoad load = new BeamLoad(Supports.CHUCK, EndThrust.NONE, Force.ofNewtons(20));
        BendingStrength early = new BendingStrength(ASH, 4, new CutStrains(work, Works.wood(), load, 26.5).of(shaping));
        Strain worst = early.strains().get(0);
        double atTip = 20 * (200 - 20) / modulus(NECK_MM);
        assertThat(worst.member()).isEqualTo(1);
        assertThat(worst.place().mm()).isCloseTo(20, within(1e-6));
        assertThat(worst.loadAt().mm()).isCloseTo(200, within(1e-6));
        assertThat(worst.stressMpa()).isCloseTo(atTip, withinPercentage(0.01));
        assertThat(worst.mends().orElseThrow().lastMpa()).isCloseTo(own, withinPercentage(0.01));
        Warning told = StrengthCautions.of(work, early).get(0);
        assertThat(told.where()).startsWith("member 2, ");
        assertThat(told.what())
                .startsWith("the plain cut breaks it at 20 mm")
                .contains(
                        "with %.0f MPa, where this wood breaks at 106".formatted(atTip),
                        "19 MPa, enough",
                        "push with no more than 1.5 N; or leave it");
    }

    /** The wood behind the tool is thick yet: a point is bent by no more than the tool's width of itself, and what is cut later by none of it. */
    @Test
    void a_point_turned_from_its_tip_back_is_bent_as_it_stands_when_the_tool_is_there() {
        Pattern pattern = new Pattern(
                "spire",
                new Stock(Section.ROUND, mm(20), mm(150)),
                List.of(
                        rod(40, 14),
                        new Taper(mm(30), mm(5), mm(10), Details.NONE),
                        new Taper(mm(50), mm(5), mm(2), Details.NONE)));
        Turning turning = Turning.of(Works.of(
                pattern,
                Optional.of(Stiffness.given(11_000)),
                Optional.of(ASH),
                lathe(new Held(Held.By.CHUCK, Held.At.START, true))));
        Strain point = turning.strength().orElseThrow().strains().get(0);
        assertThat(point.member()).isEqualTo(2);
        // 2 mm thick at the tip, 0.06 mm more for each millimetre inward, the tool 3 mm wide.
        assertThat(point.loadAt().mm()).isCloseTo(120, within(1e-6));
        assertThat(point.place().mm()).isCloseTo(117, within(1e-6));
        assertThat(point.stressMpa()).isCloseTo(20 * 3 / modulus(2.18), withinPercentage(0.1));
        // The neck behind it, 5 mm at 40 mm, would break under a cut 30 mm further out; that cut comes before.
        assertThat(turning.strength().orElseThrow().strains())
                .filteredOn(strain -> strain.member() == 1)
                .allSatisfy(strain -> assertThat(strain.stressMpa()).isLessThan(20 * 3.1 / modulus(5)));
        String told = turning.cautions().get(0).what();
        assertThat(told).contains("Push with no more than ").doesNotContain("last of all", "one more support");
    }

    /** A rest runs on the plain stretch, not beside the square on a slope of ten millimetres where the sum would put it. */
    @Test
    void one_more_support_is_told_where_a_rest_can_run() {
        Pattern pattern = new Pattern(
                "leg",
                new Stock(Section.SQUARE, mm(90), mm(700)),
                List.of(
                        new Square(mm(140), mm(90), Details.NONE),
                        new Taper(mm(8), mm(84), mm(60), Details.NONE),
                        rod(230, 50),
                        rod(14, 8),
                        rod(280, 40)));
        Turning leg = Turning.of(
                Works.of(pattern, Optional.of(Stiffness.given(11_000)), Optional.of(ASH), lathe(Held.BETWEEN_CENTRES)));
        Strain neck = leg.strength().orElseThrow().strains().get(0);
        assertThat(neck.member()).isEqualTo(3);
        Strain.Mends mends = neck.mends().orElseThrow();
        assertThat(mends.support().mm()).isBetween(158.0, 368.0);
        assertThat(mends.supportedMpa()).isLessThan(neck.stressMpa() / 2);
    }

    @Test
    void what_breaks_is_told_first() {
        List<Warning> cautions = turning(Held.BETWEEN_CENTRES, rod(200, 40), rod(10, NECK_MM), rod(200, 40))
                .cautions();
        assertThat(cautions.get(0).where()).startsWith("member 2, ");
        // It is the last of the cuts already: to cut it last is no mend.
        assertThat(cautions.get(0).what())
                .contains("the plain cut breaks it", "One more support at")
                .doesNotContain("cut it last");
    }

    @Test
    void the_margin_is_the_jobs_and_decides_what_is_told() {
        Member[] run = {rod(100, 40), rod(10, 12), rod(100, 40)};
        double stress = 20 * 105 * 105 / 210.0 / modulus(12);
        Turning usual = turning(Held.BETWEEN_CENTRES, run);
        assertThat(stress).isLessThan(26.5);
        assertThat(usual.strength().orElseThrow().strains().get(0).stressMpa())
                .isCloseTo(stress, withinPercentage(0.01));
        assertThat(usual.strength().orElseThrow().beyond()).isEmpty();
        assertThat(usual.cautions()).noneMatch(each -> each.what().contains("MPa"));
        BendingStrength strict =
                new BendingStrength(ASH, 20, usual.strength().orElseThrow().strains());
        assertThat(strict.allowedMpa()).isEqualTo(5.3);
        assertThat(strict.beyond()).extracting(Strain::member).contains(1);
    }

    /** Every stress there is, by statics on the outline after each cut, is no larger than the one told. */
    @Test
    void no_place_of_any_run_is_bent_harder_than_the_hardest_told() {
        Seeds.each(8, random -> {
            Pattern pattern = Samples.pattern(2 + random.nextInt(6), random);
            TurningProblem work = Works.of(
                    pattern, Optional.of(Stiffness.given(11_000)), Optional.of(ASH), lathe(Held.BETWEEN_CENTRES));
            BendingStrength strength = Turning.of(work).strength().orElseThrow();
            double length = pattern.length().mm();
            double most = 0;
            for (int i = 1; i < 2000; i++) {
                double x = length * i / 2000;
                double r = pattern.outline().radiusAt(mm(x)).mm();
                if (pattern.outline().sectionAt(mm(x)) == Section.ROUND) {
                    most = Math.max(most, 20 * x * (length - x) / length / modulus(2 * r));
                }
            }
            if (!strength.strains().isEmpty()) {
                assertThat(strength.strains().get(0).stressMpa()).isGreaterThan(most * 0.97);
            }
        });
    }
}
