package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.units.Working;

/** How the figures about turning were found. */
final class TurningWorkings {
    private static final String BEAM =
            "Euler-Bernoulli beam; S. Timoshenko, Vibration Problems in Engineering (from memory); checked"
                    + " against W. Thomson, Theory of Vibration, table 9.5-1 (VERIFIED)";

    private TurningWorkings() {}

    static List<Working> of(TurningProblem work, Optional<Whip> whip, SpeedAdvice speeds) {
        List<Working> out = new ArrayList<>();
        work.stiffness().ifPresent(each -> out.add(each.working()));
        whip.ifPresent(each -> {
            out.add(natural(each));
            out.add(sag(each));
            out.add(buckling(each));
            out.add(steady(each));
        });
        out.add(speeds.working(work.lathe().rules()));
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
                100 * work.lathe().rules().thin());
    }

    private static Working natural(Whip whip) {
        return new Working(
                "Natural speeds",
                String.format(
                        Locale.ROOT,
                        "(EI w'')'' = omega^2 rho A w, pinned at both ends, on the true outline (squares s^4/12): %d finite elements"
                                + " in force form, moment by statics and curvature by four Gauss points in each; first %.0f rpm,"
                                + " second %.0f rpm",
                        whip.elements(),
                        whip.first().rpm(),
                        whip.second().rpm()),
                BEAM,
                String.format(
                        Locale.ROOT,
                        "halving every element changes no figure by more than %.4f %%; the wood's stiffness is the weak point: 22 %%"
                                + " spread of it is 11 %% of the speed. Centres that give lower it further",
                        100 * whip.halvingChange()));
    }

    private static Working sag(Whip whip) {
        return new Working(
                "Sag",
                String.format(
                        Locale.ROOT,
                        "(1 - a/L)^2 * integral 0..a of x^2/EI + (a/L)^2 * integral a..L of (L-x)^2/EI, times %.1f N; most %.3f mm at"
                                + " %.1f mm",
                        whip.cutting().newtons(),
                        whip.most().sag().mm(),
                        whip.most().place().mm()),
                "unit-load theorem, derived here; checked against PL^3/48EI",
                "exact for the drawn shape; the force is a light finishing cut by " + Working.COMMON_PRACTICE
                        + " unless the job gives turning.force_n");
    }

    private static Working buckling(Whip whip) {
        return new Working(
                "Buckling",
                String.format(
                        Locale.ROOT,
                        "EI w'' + P w = 0, pinned at both ends: P = %.0f N",
                        whip.buckling().newtons()),
                "Vianello's method; S. Timoshenko, Theory of Elastic Stability (from memory); checked against the pinned cone, exact"
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
