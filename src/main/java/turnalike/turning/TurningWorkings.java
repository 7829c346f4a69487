package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.units.Force;
import turnalike.units.UnitSystem;
import turnalike.units.Working;
import turnalike.wood.Stiffness;

/** How the figures about turning were found. */
final class TurningWorkings {
    private static final String BEAM =
            "Timoshenko beam with Engesser's shear under thrust; S. Timoshenko, Vibration Problems in Engineering (from memory);"
                    + " checked slim against W. Thomson, Theory of Vibration, table 9.5-1 (VERIFIED)";

    private TurningWorkings() {}

    static List<Working> of(
            TurningProblem work,
            Optional<Whip> whip,
            Optional<BendingStrength> strength,
            Optional<SpeedAdvice> speeds) {
        List<Working> out = new ArrayList<>();
        work.stiffness().ifPresent(each -> out.add(each.working()));
        whip.ifPresent(each -> {
            out.add(natural(each, work.stiffness().map(Stiffness::moeOverShear).orElse(0.0)));
            out.add(thrust(work.lathe().rules()));
            out.add(sag(each));
            out.add(buckling(each));
            out.add(steady(each));
        });
        strength.ifPresent(each -> {
            out.add(each.rupture().working());
            out.add(stress(each));
        });
        speeds.ifPresent(each -> out.add(each.working(work.lathe().rules())));
        out.add(
                new Working(
                        "Order of cuts",
                        order(work),
                        Working.COMMON_PRACTICE,
                        "stages: members cut so far at finished size, the others at the roughed diameter, sizing cuts 3 mm wide"
                                + (work.held().byOneEnd()
                                        ? ""
                                        : "; both ends on centres at the finished length, but for the stage with the spare length still on")));
        return out;
    }

    private static String order(TurningProblem work) {
        if (work.held().byOneEnd()) {
            return "held by one end: square to round, datum, layout, then from the other end back, each member sized as its turn"
                    + " comes, so that the thick end still holds it; sanding, the tip, parting";
        }
        return String.format(
                Locale.ROOT,
                "square to round, datum, layout, sizing, heavy details from the tail end to the drive end, slender stretches from the"
                        + " middle out to the tail end and then from the middle out to the drive end, tenons, the thinnest, sanding,"
                        + " parting; a stretch is slender when its diameter of equal volume is under 2/3 of the thickest, or under"
                        + " 9/10 and its cutting adds a tenth or more of the limberness, integral of sin^2(pi x/L)/I; of those it is"
                        + " cut last when it is thinner than %.0f %% of its distance from the nearer centre",
                100 * work.lathe().rules().shapes().thin());
    }

    private static Working natural(Whip whip, double moeOverShear) {
        return new Working(
                "Natural speeds",
                String.format(
                        Locale.ROOT,
                        "(EI t')' + S (w' - t) + omega^2 rho I t = 0, (S (w' - t) - P w')' + omega^2 rho A w = 0, S = k G A, k = 9/10"
                                + " round and 5/6 square, G = E / %.4g, %s, P = %.0f N, on the true outline (squares s^4/12): %d elements"
                                + " of four Gauss points each; first %.0f rpm, second %.0f rpm",
                        moeOverShear,
                        whip.ends().text(),
                        whip.thrust().map(Force::newtons).orElse(0.0),
                        whip.elements(),
                        whip.first().rpm(),
                        whip.second().rpm()),
                BEAM,
                String.format(
                        Locale.ROOT,
                        "halving every element changes no figure by more than %.4f %%; the wood's stiffness is the weak point: 22 %%"
                                + " spread of it is 11 %% of the speed. Centres that give lower it further. %s",
                        100 * whip.halvingChange(),
                        shear(moeOverShear)));
    }

    /** The wood table has no moduli of shear: one ratio stands for all until the job gives the wood's own. */
    private static String shear(double moeOverShear) {
        return moeOverShear == Stiffness.USUAL_MOE_OVER_SHEAR
                ? "E / G is taken alike for every wood (Wood Handbook Table 5-1; from memory), where woods have 5 to 27: of a stout piece"
                        + " wood.moe_over_shear tells it better"
                : "E / G is the job's own";
    }

    private static Working thrust(ShopRules rules) {
        return new Working(
                "Tailstock",
                String.format(
                        Locale.ROOT,
                        "where turning.tailstock_force_n is not given, %.0f %% of what bows each stage, %.0f N at most, holds the stages'"
                                + " figures and the speeds back; the finished piece's own figures are free of it",
                        100 * rules.thrustShare(),
                        rules.thrustMost().newtons()),
                Working.COMMON_PRACTICE,
                "an even rod on two centres swings at f0 sqrt(1 - P/Pcr) under it");
    }

    private static Working stress(BendingStrength strength) {
        String worst = strength.strains().stream()
                .findFirst()
                .map(each -> String.format(
                        Locale.ROOT,
                        "most %.1f MPa at %.1f mm in cut %d",
                        each.stressMpa(),
                        each.place().mm(),
                        each.cut()))
                .orElse("nothing is cut");
        return new Working(
                "Bending stress",
                String.format(
                        Locale.ROOT,
                        "M/Z (round pi d^3/32, square s^3/6 sqrt 2 across the corners) all along under the cutting force at every place"
                                + " of every cut, on the outline it leaves; borne up to the strength over %.3g, %.1f MPa; %s",
                        strength.margin(),
                        strength.allowedMpa(),
                        worst),
                Working.COMMON_PRACTICE,
                "the margin is for a dig with the tool, several times the plain cut, and for wood below the average; set it in"
                        + " turning.rules.strength_margin. Compression by the tailstock is not added");
    }

    private static Working sag(Whip whip) {
        return new Working(
                "Sag",
                String.format(
                        Locale.ROOT,
                        "the same beam under %.1f N at the place itself; most %s at %.1f mm; above its radius there or a tenth of the"
                                + " length a sag means nothing",
                        whip.cutting().newtons(),
                        whip.most().text(UnitSystem.METRIC),
                        whip.most().place().mm()),
                "unit-load theorem, derived here; checked against PL^3/48EI and PL/4S",
                "exact for the drawn shape; the force is a light finishing cut by " + Working.COMMON_PRACTICE
                        + " unless the job gives turning.force_n");
    }

    private static Working buckling(Whip whip) {
        return new Working(
                "Buckling",
                String.format(
                        Locale.ROOT,
                        "the same beam at rest under an end force, %s: P = %.0f N",
                        whip.ends().text(),
                        whip.buckling().newtons()),
                "Vianello's method; S. Timoshenko, Theory of Elastic Stability (from memory); checked without shear against the pinned cone, exact"
                        + " pi^3 E d1^2 d2^2 / 64 L^2",
                "for a straight piece pushed along its axis; a crooked one bows long before");
    }

    private static Working steady(Whip whip) {
        return new Working(
                "Steady rest",
                String.format(
                        Locale.ROOT,
                        "the place that the second mode leaves at rest, %.1f mm: no one support can raise the first natural speed"
                                + " above the second, and one there raises it from %.0f to %.0f rpm",
                        whip.steady().mm(),
                        whip.first().rpm(),
                        whip.second().rpm()),
                "max-min principle of eigenvalues; R. Courant and D. Hilbert, Methods of Mathematical Physics I, ch. VI (from memory);"
                        + " checked by trying every place",
                "for a rest that holds sideways and lets the piece tilt");
    }
}
