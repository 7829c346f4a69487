package turnalike.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static turnalike.pattern.Samples.mm;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Samples;
import turnalike.pattern.Stock;
import turnalike.units.Density;
import turnalike.units.Length;

class SolidTest {
    /** One gram per cubic millimetre, so that masses are volumes. */
    private static final Density UNIT = Density.ofKgPerM3(1e6);

    private static final Percentage ONE_IN_TEN_BILLION = withinPercentage(1e-8);

    @Test
    void every_member_agrees_with_adaptive_quadrature_of_its_formula() {
        Seeds.each(25, random -> {
            for (int kind = 0; kind < Samples.KINDS; kind++) {
                Member member = Samples.member(kind, random);
                assertSame(new Pattern("one", new Stock(Section.SQUARE, mm(45), mm(200)), List.of(member)));
            }
        });
    }

    @Test
    void whole_runs_agree_with_adaptive_quadrature() {
        Seeds.each(20, random -> assertSame(Samples.pattern(2 + random.nextInt(12), random)));
    }

    private static void assertSame(Pattern pattern) {
        Solid solid = Solid.of(pattern.outline(), Density.ofKgPerM3(640));
        Quadrature by = new Quadrature(pattern);
        double rho = 640e-6;
        assertThat(solid.volumeMm3()).isCloseTo(by.volume(), ONE_IN_TEN_BILLION);
        assertThat(solid.mass().grams()).isCloseTo(rho * by.volume(), ONE_IN_TEN_BILLION);
        assertThat(solid.balance().mm()).isCloseTo(by.balance(), ONE_IN_TEN_BILLION);
        assertThat(solid.spinInertiaGMm2()).isCloseTo(rho * by.spin(), ONE_IN_TEN_BILLION);
        assertThat(solid.swingInertiaGMm2()).isCloseTo(rho * by.swing(), ONE_IN_TEN_BILLION);
    }

    /** Cone frustum: πh(R²+Rr+r²)/3, centroid h(R²+2Rr+3r²)/(4(R²+Rr+r²)) from R, inertia 0.3 m (R⁵−r⁵)/(R³−r³). From memory. */
    @Test
    void frustum_has_its_handbook_figures() {
        Solid solid = solid(new Line(mm(4), mm(3), mm(2)));
        assertThat(solid.volumeMm3()).isCloseTo(Math.PI * 4 * (9 + 6 + 4) / 3, ONE_IN_TEN_BILLION);
        assertThat(solid.volumeMm3()).isCloseTo(79.5870, withinPercentage(1e-4));
        assertThat(solid.balance().mm()).isCloseTo(4.0 * (9 + 12 + 12) / (4 * (9 + 6 + 4)), ONE_IN_TEN_BILLION);
        double spin = 0.3 * solid.mass().grams() * (243 - 32) / (27 - 8);
        assertThat(solid.spinInertiaGMm2()).isCloseTo(spin, ONE_IN_TEN_BILLION);
    }

    /** Spherical segment of two bases: πh(3r₁²+3r₂²+h²)/6 (VERIFIED: HandWiki, "Spherical segment"). */
    @Test
    void spherical_zone_has_its_published_volume() {
        // radii 3 and 4 a height of 1 apart: a sphere of radius 5 between 3 and 4 from its centre, seen from the flat
        // side
        EllipseArc zone = new EllipseArc(mm(1), mm(-3), mm(5), mm(0), mm(5));
        assertThat(solid(zone).volumeMm3()).isCloseTo(Math.PI * (3 * 16 + 3 * 9 + 1) / 6, ONE_IN_TEN_BILLION);
        assertThat(solid(zone).volumeMm3()).isCloseTo(39.7935, withinPercentage(1e-4));
    }

    /** Torus: 2π²Ra² (VERIFIED: Schaum's mathematical handbook by way of a formula file). A bead less a cove on one level is one. */
    @Test
    void bead_less_cove_is_a_torus() {
        Seeds.each(50, random -> {
            double a = 0.5 + 10 * random.nextDouble();
            double level = a + 0.1 + 30 * random.nextDouble();
            Length width = mm(2 * a);
            Bead bead = new Bead(width, mm(2 * level), mm(2 * (level + a)), Details.NONE);
            Cove cove = new Cove(width, mm(2 * level), mm(2 * (level - a)), Details.NONE);
            double torus = volume(bead) - volume(cove);
            assertThat(torus).isCloseTo(2 * Math.PI * Math.PI * level * a * a, withinPercentage(1e-8));
        });
    }

    /** Pappus: V = 2π · centroid distance · area; a half disc's centroid stands 4a/3π from its flat side (from memory). */
    @Test
    void bead_on_a_cylinder_obeys_pappus() {
        double a = 4;
        double root = 11;
        Bead bead = new Bead(mm(2 * a), mm(2 * root), mm(2 * (root + a)), Details.NONE);
        Cylinder core = new Cylinder(mm(2 * a), mm(2 * root), Details.NONE);
        double ring = 2 * Math.PI * (root + 4 * a / (3 * Math.PI)) * (Math.PI * a * a / 2);
        assertThat(volume(bead) - volume(core)).isCloseTo(ring, withinPercentage(1e-8));
    }

    /** Quarter cove and bead of radius 2 on a level of 5: volumes, centroids and J/ρ worked out by another route. */
    @Test
    void quarter_arcs_have_their_worked_figures() {
        Solid cove = solid(new EllipseArc(mm(2), mm(0), mm(2), mm(5), mm(-2)));
        assertThat(cove.volumeMm3()).isCloseTo(75.1387, withinPercentage(1e-4));
        assertThat(cove.balance().mm()).isCloseTo(1.14282, withinPercentage(1e-3));
        assertThat(cove.spinInertiaGMm2()).isCloseTo(483.4515, withinPercentage(1e-4));
        Solid bead = solid(new EllipseArc(mm(2), mm(0), mm(2), mm(5), mm(2)));
        assertThat(bead.volumeMm3()).isCloseTo(272.5308, withinPercentage(1e-4));
        assertThat(bead.balance().mm()).isCloseTo(0.929883, withinPercentage(1e-3));
        assertThat(bead.spinInertiaGMm2()).isCloseTo(6010.430, withinPercentage(1e-4));
    }

    /** A square bar: mass s²L, spin m s²/6, swing m(s² + L²)/12 (any handbook of mechanics, from memory). */
    @Test
    void square_bar_has_its_handbook_inertias() {
        Outline bar = Outline.of(Length.ZERO, List.of(Line.level(mm(300), mm(20))), Section.SQUARE);
        Solid solid = Solid.of(bar, UNIT);
        double mass = 40.0 * 40 * 300;
        assertThat(solid.mass().grams()).isCloseTo(mass, ONE_IN_TEN_BILLION);
        assertThat(solid.spinInertiaGMm2()).isCloseTo(mass * 1600 / 6, ONE_IN_TEN_BILLION);
        assertThat(solid.swingInertiaGMm2()).isCloseTo(mass * (1600 + 90_000) / 12, ONE_IN_TEN_BILLION);
    }

    @Test
    void scaling_by_k_gives_k_cubed_and_k_to_the_fifth() {
        Seeds.each(30, random -> {
            Bead bead = (Bead) Samples.member(6, random);
            double k = 0.3 + 3 * random.nextDouble();
            Solid small = solid(bead.curves(Member.Ends.NEITHER).get(0));
            Solid large = solid(new Bead(
                            bead.length().times(k),
                            bead.root().times(k),
                            bead.crown().times(k),
                            Details.NONE)
                    .curves(Member.Ends.NEITHER)
                    .get(0));
            assertThat(large.volumeMm3() / small.volumeMm3()).isCloseTo(Math.pow(k, 3), ONE_IN_TEN_BILLION);
            assertThat(large.swingInertiaGMm2() / small.swingInertiaGMm2())
                    .isCloseTo(Math.pow(k, 5), ONE_IN_TEN_BILLION);
        });
    }

    @Test
    void turned_end_for_end_only_the_balance_point_moves() {
        Seeds.each(30, random -> {
            Outline outline = Samples.pattern(6, random).outline();
            Solid solid = Solid.of(outline, UNIT);
            Solid turned = Solid.of(outline.reversed(), UNIT);
            assertThat(turned.volumeMm3()).isCloseTo(solid.volumeMm3(), ONE_IN_TEN_BILLION);
            assertThat(turned.balance().mm() + solid.balance().mm())
                    .isCloseTo(outline.length().mm(), ONE_IN_TEN_BILLION);
            assertThat(turned.swingInertiaGMm2()).isCloseTo(solid.swingInertiaGMm2(), ONE_IN_TEN_BILLION);
        });
    }

    @Test
    void members_add_up_to_the_whole() {
        Seeds.each(30, random -> {
            Pattern pattern = Samples.pattern(9, random);
            double sum = 0;
            double moment = 0;
            for (PlacedMember placed : pattern.placed()) {
                Solid part = Solid.of(placed.outline(), UNIT);
                sum += part.mass().grams();
                moment += part.mass().grams() * part.balance().mm();
            }
            Solid whole = Solid.of(pattern.outline(), UNIT);
            assertThat(whole.mass().grams()).isCloseTo(sum, ONE_IN_TEN_BILLION);
            assertThat(whole.balance().mm()).isCloseTo(moment / sum, ONE_IN_TEN_BILLION);
        });
    }

    @Test
    void sensitivity_is_the_difference_of_two_solids() {
        Seeds.each(30, random -> {
            Taper thin = new Taper(30 + random.nextInt(50), 10 + 10 * random.nextDouble(), 12);
            double more = 0.4;
            Sensitivity sensitivity = Sensitivity.of(thin.outline(0), UNIT);
            double gained = Solid.of(thin.outline(more), UNIT).mass().grams()
                    - Solid.of(thin.outline(0), UNIT).mass().grams();
            assertThat(sensitivity.change(mm(more)).grams()).isCloseTo(gained, withinPercentage(1e-7));
        });
    }

    private record Taper(double length, double from, double to) {
        Outline outline(double more) {
            Line line = new Line(mm(length), mm((from + more) / 2), mm((to + more) / 2));
            return Outline.of(Length.ZERO, List.of(line), Section.ROUND);
        }
    }

    private static Solid solid(turnalike.outline.Curve curve) {
        return Solid.of(Outline.of(Length.ZERO, List.of(curve), Section.ROUND), UNIT);
    }

    private static double volume(Member member) {
        return solid(member.curves(Member.Ends.NEITHER).get(0)).volumeMm3();
    }

    @Test
    void a_formula_that_is_wrong_would_be_noticed() {
        // The quadrature itself against a shape everyone knows: a ball of radius 10, 4πr³/3.
        DoubleUnaryOperator ball = x -> Math.sqrt(Math.max(0, 100 - (x - 10) * (x - 10)));
        assertThat(Quadrature.integrate(x -> Math.PI * ball.applyAsDouble(x) * ball.applyAsDouble(x), 0, 20))
                .isCloseTo(4 * Math.PI * 1000 / 3, ONE_IN_TEN_BILLION);
    }

    /** A square bar of side s gains ρL((s + δ)² − s²), a cylinder of diameter d a quarter of π times as much. */
    @Test
    void sensitivity_of_a_bar_is_that_of_its_square() {
        for (Section section : Section.values()) {
            Outline bar = Outline.of(Length.ZERO, List.of(Line.level(mm(300), mm(20))), section);
            Sensitivity sensitivity = Sensitivity.of(bar, Density.ofKgPerM3(700));
            double shape = section == Section.SQUARE ? 1 : Math.PI / 4;
            for (double more : new double[] {-3, 0.5, 2}) {
                double gained = 700e-6 * shape * 300 * (Math.pow(40 + more, 2) - 1600);
                assertThat(sensitivity.change(mm(more)).grams()).isCloseTo(gained, withinPercentage(1e-9));
            }
            assertThat(sensitivity.linearGPerMm()).isCloseTo(700e-6 * shape * 300 * 80, withinPercentage(1e-9));
            assertThat(sensitivity.quadraticGPerMm2()).isCloseTo(700e-6 * shape * 300, withinPercentage(1e-9));
        }
    }

    /** Steiner: the swing about the balance point and m · shift² about any other axis; the balance point moves with the piece. */
    @Test
    void where_the_piece_is_measured_from_changes_its_balance_point_alone() {
        Line cone = new Line(mm(40), mm(12), mm(5));
        Solid here = Solid.of(Outline.of(Length.ZERO, List.of(cone), Section.ROUND), UNIT);
        Solid moved = Solid.of(Outline.of(mm(500), List.of(cone), Section.ROUND), UNIT);
        assertThat(moved.balance().mm()).isCloseTo(here.balance().mm() + 500, ONE_IN_TEN_BILLION);
        assertThat(moved.mass().grams()).isCloseTo(here.mass().grams(), ONE_IN_TEN_BILLION);
        assertThat(moved.swingInertiaGMm2()).isCloseTo(here.swingInertiaGMm2(), ONE_IN_TEN_BILLION);
        assertThat(moved.spinInertiaGMm2()).isCloseTo(here.spinInertiaGMm2(), ONE_IN_TEN_BILLION);
    }

    @Test
    void the_working_names_its_formulas() {
        assertThat(solid(Line.level(mm(10), mm(5))).working().how()).contains("mass = ρV", "balance = ∫xA dx / V");
    }
}
