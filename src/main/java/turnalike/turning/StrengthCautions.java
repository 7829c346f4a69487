package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.PlainNumber;
import turnalike.units.SentenceCase;

/** What is said of members that the plain cut bends harder than the wood bears with a margin, and what would mend each. */
final class StrengthCautions {
    /** Told in full; the rest are counted. */
    private static final int MOST_TOLD = 3;

    /** Stresses nearer to one another than this share are the same. */
    private static final double SAME = 1e-3;

    private final TurningProblem work;
    private final BendingStrength strength;

    private StrengthCautions(TurningProblem work, BendingStrength strength) {
        this.work = work;
        this.strength = strength;
    }

    static List<Warning> of(TurningProblem work, BendingStrength strength) {
        StrengthCautions cautions = new StrengthCautions(work, strength);
        List<Strain> beyond = strength.beyond();
        List<Warning> out = new ArrayList<>();
        for (Strain each : beyond.subList(0, Math.min(MOST_TOLD, beyond.size()))) {
            each.mends().ifPresent(mends -> out.add(cautions.told(each, mends)));
        }
        int more = beyond.size() - MOST_TOLD;
        if (more > 0) {
            out.add(new Warning(
                    "strength",
                    more == 1
                            ? "one more member is bent harder than that"
                            : more + " more members are bent harder than that"));
        }
        return out;
    }

    private Warning told(Strain strain, Strain.Mends mends) {
        boolean breaks = strain.stressMpa() >= strength.rupture().mpa();
        String where = "member %d, %s"
                .formatted(
                        strain.member() + 1,
                        work.pattern().members().get(strain.member()).title());
        String what = String.format(
                Locale.ROOT,
                "%s at %s, %s thick: %s at %s in cut %d bend it with %.0f MPa, where this wood breaks at %.0f on average; a margin of"
                        + " %s for a dig with the tool leaves %.0f. ",
                breaks ? "the plain cut breaks it" : "a dig with the tool would break it",
                work.at(strain.place()),
                work.both(strain.diameter()),
                work.lathe().cutting().format(work.units()),
                work.at(strain.loadAt()),
                strain.cut(),
                strain.stressMpa(),
                strength.rupture().mpa(),
                PlainNumber.toFigures(strength.margin(), 3),
                strength.allowedMpa());
        return new Warning(where, what + mendsTold(strain, mends));
    }

    /** Of a member that comes last already, or first since it is held by one end, it is no mend to come last. */
    private String mendsTold(Strain strain, Strain.Mends mends) {
        boolean isLastAlready = mends.lastMpa() >= strain.stressMpa() * (1 - SAME);
        List<String> out = new ArrayList<>();
        if (!isLastAlready) {
            out.add(String.format(
                    Locale.ROOT, "size and cut it last of all: %.0f MPa%s", mends.lastMpa(), enough(mends.lastMpa())));
        }
        // At a free tip no support takes anything from the cut that is made there.
        if (!work.held().byOneEnd() || mends.supportedMpa() < strain.stressMpa() * (1 - SAME)) {
            out.add(String.format(
                    Locale.ROOT,
                    "one more support at %s: %.0f MPa%s",
                    work.both(mends.support()),
                    mends.supportedMpa(),
                    enough(mends.supportedMpa())));
        }
        out.add((out.isEmpty() ? "" : "or ") + "push with no more than "
                + noMore(mends.force()).format(work.units()));
        out.add("or leave it %s thick".formatted(work.both(mends.diameter())));
        return SentenceCase.capital(String.join("; ", out));
    }

    /** Down to a tenth of a newton, where that is anything: a limit is not rounded up. */
    private static Force noMore(Force force) {
        double tenths = Math.floor(10 * force.newtons());
        return tenths > 0 ? Force.ofNewtons(tenths / 10) : force;
    }

    private String enough(double mpa) {
        return mpa <= strength.allowedMpa() ? ", enough" : ", not enough by itself";
    }
}
