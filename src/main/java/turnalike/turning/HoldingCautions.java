package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Warning;
import turnalike.units.Length;

/** What to beware of in the way the piece is held. The bounds are common practice, no source, see {@link ShopRules}. */
final class HoldingCautions {
    private static final String WHERE = "holding";

    /** A holding screw is some 6 to 10 mm thick; less wood than twice that round it splits (common practice, no source). */
    private static final Length THIN_FOR_A_SCREW = Length.ofMm(20);

    /** Spare length that takes the whole screw (common practice, no source). */
    private static final Length TAKES_A_SCREW = Length.ofMm(30);

    private final TurningProblem work;

    HoldingCautions(TurningProblem work) {
        this.work = work;
    }

    /** Between centres there is one only of an end too thin to be driven. */
    List<Warning> list() {
        List<Warning> out = new ArrayList<>();
        Held held = work.held();
        if (!held.byOneEnd()) {
            thinAtTheDrive().ifPresent(out::add);
            thinAtTheTail().ifPresent(out::add);
            return out;
        }
        if (new Holding(work).wantsSpare()) {
            out.add(new Warning(
                    WHERE,
                    "there is no spare length and no tenon at the %s end to hold it by: take a longer blank"
                            .formatted(held.at().side())));
        }
        out.add(new Warning(WHERE, of(held.by())));
        thinRoundTheScrew().ifPresent(out::add);
        Length greatest = work.pattern().outline().largestRadius().times(2);
        double diameters = work.pattern().length().mm() / greatest.mm();
        boolean farOut = diameters > work.lathe().rules().overhang();
        if (work.isPointed() && farOut) {
            out.add(new Warning(
                    WHERE,
                    String.format(
                            Locale.ROOT,
                            "once the tailstock is away for the point it stands out %.1f times its greatest diameter, more than the %.1f that"
                                    + " is common: leave the wood behind the point as thick as the blank is until that is done, cut"
                                    + " lightly, and give it a hand behind",
                            diameters,
                            work.lathe().rules().overhang())));
        }
        if (!held.tailstock() && farOut) {
            out.add(new Warning(
                    WHERE,
                    String.format(
                            Locale.ROOT,
                            "it stands out %.1f times its greatest diameter with nothing at the tip, more than the %.1f that is"
                                    + " common: bring the tailstock up",
                            diameters,
                            work.lathe().rules().overhang())));
        }
        return out;
    }

    /** The spare length stands at the far end: driven there, no centre has to bite into what is finished. */
    private Optional<Warning> thinAtTheDrive() {
        Held.At drive = work.held().at();
        Length across = across(drive);
        boolean hasSpare = drive == Held.At.END && work.partsOff();
        if (hasSpare || !work.isTooThinToPart(across)) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                WHERE,
                "its %s end is driven and only %s thick, thinner than a pencil: no drive centre bites in that; %s"
                        .formatted(
                                drive.side(),
                                work.both(across),
                                drive == Held.At.START
                                        ? "drive the far end, where the spare length stands, or hold it in a chuck"
                                        : "take a longer blank, or hold it in a chuck")));
    }

    /** A centre wound into a tip splits it, and what is let go flies. */
    private Optional<Warning> thinAtTheTail() {
        Held.At tail = work.held().at().other();
        boolean hasSpare = tail == Held.At.END && work.partsOff();
        Length across = across(tail);
        return hasSpare || !work.isTooThinToPart(across)
                ? Optional.empty()
                : Optional.of(new Warning(
                        WHERE,
                        "its %s end, at the tailstock, is only %s thick, thinner than a pencil: a centre splits that and lets it fly; leave"
                                        .formatted(tail.side(), work.both(across))
                                + " spare length there, or hold the other end in a chuck"));
    }

    /** Cut down round a screw, a thin end splits or the tool meets steel. */
    private Optional<Warning> thinRoundTheScrew() {
        Held held = work.held();
        Length across = across(held.at());
        boolean clear = work.spare().compareTo(TAKES_A_SCREW) >= 0;
        if (held.by() != Held.By.SCREW || clear || across.compareTo(THIN_FOR_A_SCREW) >= 0) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                WHERE,
                "its %s end is only %s thick, and the screw stands in it: it splits, or the tool meets the screw; leave %s of spare length there, or"
                                .formatted(held.at().side(), work.both(across), work.both(TAKES_A_SCREW))
                        + " hold it in a chuck"));
    }

    private Length across(Held.At end) {
        List<PlacedMember> run = work.pattern().placed();
        return end == Held.At.START
                ? run.get(0).outline().startRadius().times(2)
                : run.get(run.size() - 1).outline().endRadius().times(2);
    }

    private static String of(Held.By by) {
        return switch (by) {
            case CENTRES -> throw new IllegalArgumentException("no hold by one end, was between centres");
            case CHUCK ->
                "jaws loosen as wood gives: tighten again after roughing, the key out each time, hands clear of the jaws";
            case SCREW ->
                "a screw up the grain holds less than one across it: short pieces and light cuts, and the tailstock up while it can be; know how far in it reaches, and keep the tool off it";
            case JAM ->
                "friction alone holds it: light cuts, stop when it slips or grows warm, and the tailstock up while it can be";
        };
    }
}
