package turnalike.turning;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Tool;
import turnalike.units.Length;

/**
 * What is done about the hold of a piece that one end alone drives: how it comes in, how its tip comes free, how it comes off. Common practice,
 * no source.
 */
final class Holding {
    private final TurningProblem work;
    private final Held held;

    Holding(TurningProblem work) {
        this.work = work;
        this.held = work.held();
    }

    /** Index of the tenon that the piece is held by, if it is held by one of its own. */
    Optional<Integer> ownTenon() {
        PlacedMember last = atTheHeadstock();
        boolean grips = held.by() == Held.By.JAM || (held.by() == Held.By.CHUCK && !work.partsOff());
        return grips && last.member().enters().isPresent() ? Optional.of(last.number() - 1) : Optional.empty();
    }

    private PlacedMember atTheHeadstock() {
        List<PlacedMember> run = work.pattern().placed();
        return held.at() == Held.At.START ? run.get(0) : run.get(run.size() - 1);
    }

    /** The end that the spare length stands at: between centres the far end, else the held one, unless the piece's own tenon is held. */
    Held.At spareAt() {
        if (!held.byOneEnd()) {
            return Held.At.END;
        }
        return ownTenon().isPresent() ? held.at().other() : held.at();
    }

    /** Whether there is nothing to hold it by but what is finished. */
    boolean wantsSpare() {
        return held.byOneEnd() && held.by() != Held.By.SCREW && ownTenon().isEmpty() && !work.partsOff();
    }

    /** How it comes into the hold. */
    Cut in() {
        Length place = work.place(held.at());
        String end = held.at().side();
        String tenon = held.at().word();
        String spare = work.spare().format(work.units());
        String tail = held.tailstock() ? "; bring the tailstock's cup or pad up to the tip" : "; nothing bears the tip";
        String how =
                switch (held.by()) {
                    case CENTRES -> "set it between centres";
                    case CHUCK ->
                        ownTenon().isPresent()
                                ? "between centres, bring the %s tenon to its size; grip it in the jaws"
                                        .formatted(tenon)
                                : "grip the %s end in the jaws by its spare length, %s".formatted(end, spare);
                    case SCREW ->
                        "bore up the middle of the %s end for the screw and wind the blank on until it seats flat"
                                .formatted(end);
                    case JAM ->
                        ownTenon().isPresent()
                                ? "between centres, bring the %s tenon to its size; drive it into a block bored on the lathe with the tenon's own bit"
                                        .formatted(tenon)
                                : "between centres, turn the spare length at the %s end to a tenon; drive it into a block bored to fit"
                                        .formatted(end);
                };
        return cut(
                Phase.HOLDING,
                Tool.HOLD,
                place,
                List.of(),
                how + tail,
                held.by() == Held.By.CHUCK
                        ? "the key out of the chuck, one turn by hand; hands and rest clear of the jaws"
                        : "lathe stopped; one turn by hand");
    }

    /** How the tailstock goes before a point is turned; empty where it stays up to the end or was never there. */
    Optional<Cut> away() {
        if (!work.isPointed()) {
            return Optional.empty();
        }
        Length place = work.place(held.at().other());
        return Optional.of(cut(
                Phase.AWAY,
                Tool.HOLD,
                place,
                List.of(place),
                "take the tailstock's cup or pad away: nothing bears so long and thin a point as comes first now",
                "lathe stopped; from here on light cuts, a hand behind, and nothing that is done is gone back to"));
    }

    /** How the tip comes free of the tailstock, or loses the spare length that stood there; empty where neither is so. */
    Optional<Cut> tip() {
        boolean spare = work.partsOff() && spareAt() != held.at();
        if (!held.byOneEnd() || (!held.tailstock() && !spare) || work.isPointed()) {
            return Optional.empty();
        }
        Length place = work.place(held.at().other());
        String away = held.tailstock() ? "take the tailstock's cup or pad away, last of all; " : "";
        String rest = spare ? "cut the spare length away a little at a time, " : "";
        return Optional.of(cut(
                Phase.TIP,
                Tool.SPINDLE_GOUGE,
                place,
                List.of(place),
                away + rest + "finish the tip with light cuts toward its end and sand it",
                "slower now: nothing bears this end, so no cut pushes it aside"));
    }

    /** How it comes off the spare length; empty where there is none, or it stood at the tip. */
    Optional<Cut> off() {
        boolean atTip = held.byOneEnd() && spareAt() != held.at();
        if (!work.partsOff() || atTip) {
            return Optional.empty();
        }
        Held.At end = spareAt();
        Length place = work.place(end);
        List<PlacedMember> run = work.pattern().placed();
        PlacedMember last = end == Held.At.START ? run.get(0) : run.get(run.size() - 1);
        Length diameter = (end == Held.At.START
                        ? last.outline().startRadius()
                        : last.outline().endRadius())
                .times(2);
        String line = line(end);
        if (work.slopes().at(end).isPositive()) {
            return Optional.of(leftOn(place));
        }
        Cut off = off(last, place, line, diameter);
        return Optional.of(work.slopes().at(end.other()).isPositive() ? off.saying(off.what() + "; " + sloped()) : off);
    }

    private Cut off(PlacedMember last, Length place, String line, Length diameter) {
        if (last.member().section() == Section.SQUARE) {
            return sawnOff(place, line);
        }
        if (held.by() == Held.By.SCREW) {
            return offTheScrew(place, line);
        }
        boolean thin = work.isTooThinToPart(diameter);
        return cut(
                Phase.PARTING,
                thin ? Tool.SAW : Tool.PARTING_TOOL,
                place,
                List.of(place),
                thin
                        ? "stop the lathe and saw it off outside %s: thinner than a pencil, nothing is parted down here"
                                .formatted(line)
                        : "part down at %s to a pencil's thickness, stop the lathe, and saw it off".formatted(line),
                held.byOneEnd()
                        ? "never part right through: a loose piece flies; hold it only with the lathe stopped"
                        : "never part right through between centres: the piece jams and flies");
    }

    /** What the slope takes beyond the line is not sawn away with the rest. */
    private Cut leftOn(Length place) {
        return cut(
                Phase.PARTING,
                Tool.SAW,
                place,
                List.of(place),
                "take the piece off the lathe with its spare length; " + sloped(),
                "");
    }

    /** Cut each by its own eye the two slopes of a piece come to lean against one another. */
    private String sloped() {
        Length start = work.slopes().start();
        Length end = work.slopes().end();
        if (start.isPositive() && end.isPositive()) {
            String beyond = work.both(start).equals(work.both(end))
                    ? work.both(end) + " beyond each line"
                    : "%s beyond the first and %s beyond the second".formatted(work.both(start), work.both(end));
            return "on the bench, cut both ends to their slope, parallel to one another, through the start line and the far end's line: the"
                    + " longer side reaches " + beyond;
        }
        Held.At one = start.isPositive() ? Held.At.START : Held.At.END;
        return "on the bench, cut the end to its slope through %s: the longer side reaches %s beyond it"
                .formatted(line(one), work.both(work.slopes().at(one)));
    }

    private static String line(Held.At end) {
        return end == Held.At.START ? "the start line" : "the far end's line";
    }

    /** A square's corners split off under a parting tool, and a square end is sawn truer on the bench anyway. */
    private Cut sawnOff(Length place, String line) {
        return cut(
                Phase.PARTING,
                Tool.SAW,
                place,
                List.of(place),
                "take the piece off the lathe and saw the spare length off at %s on the bench: a square is not parted down"
                        .formatted(line),
                "");
    }

    /** A screw reaches further in than most spare length is long: a tool on the line would meet steel. */
    private Cut offTheScrew(Length place, String line) {
        return cut(
                Phase.PARTING,
                Tool.SAW,
                place,
                List.of(place),
                "wind the piece off the screw, with the lathe stopped, and saw the spare length off at %s on the bench"
                        .formatted(line),
                "no tool on this line while it turns: the screw stands there");
    }

    private Cut cut(Phase phase, Tool tool, Length place, List<Length> places, String what, String caution) {
        List<PlacedMember> run = work.pattern().placed();
        int member = place.equals(Length.ZERO) ? 0 : run.size() - 1;
        return new Cut(
                0,
                phase,
                tool,
                Optional.empty(),
                place,
                place,
                places,
                List.of(member),
                false,
                what,
                caution,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }
}
