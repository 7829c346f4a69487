package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.outline.Outline;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.Speed;

/**
 * What the order of cuts does to the piece's stiffness: the first natural speed after each cut, the stages' figures, and the computed
 * reasons for cutting slender stretches last.
 */
final class CutStiffness {
    /** With more members than this only the last cut of each phase is reckoned, so that a plan stays quick. */
    private static final int MOST_MEMBERS = 60;

    private static final int SAG_PLACES = 20;

    private final TurningProblem work;
    private final BeamWood wood;
    private final BeamLoad roughing;
    private final BeamLoad load;
    private final StageOutlines shapes;
    private final Set<Integer> slender;
    private final List<Integer> thin;

    /** @param load what presses on it until it is round; what holds it afterwards may be less, see {@link TurningProblem#supportsOfShaping} */
    CutStiffness(TurningProblem work, BeamWood wood, BeamLoad load, Set<Integer> slender) {
        this.work = work;
        this.wood = wood;
        this.roughing = load;
        this.load = new BeamLoad(work.supportsOfShaping(), load.thrust(), load.cutting());
        this.shapes = new StageOutlines(work);
        this.slender = slender;
        this.thin = ThinParts.of(work, slender);
    }

    /** The blank. */
    Stage blank() {
        return stage("blank", shapes.blank(), roughing);
    }

    /** Every stage once the blank is round, in order. */
    List<Stage> later() {
        List<Stage> out = new ArrayList<>();
        out.add(stage("roughed cylinder", shapes.roughed(), roughing));
        if (work.held().byOneEnd()) {
            List<Integer> way = work.towardTheHeadstock();
            out.add(stage("half the members cut, from the tip", shapes.after(firstHalf(way), Set.of())));
            out.add(stage("finished", shapes.after(members(false, false), Set.of())));
            return out;
        }
        Set<Integer> details = members(true, false);
        Set<Integer> tenonsLeft = new TreeSet<>(details);
        tenonsLeft.addAll(slender);
        tenonsLeft.removeAll(thin);
        out.add(stage("sizing cuts made", shapes.after(Set.of(), members(true, true))));
        out.add(stage("heavy details cut", shapes.after(details, members(true, true))));
        out.add(stage("slender stretches cut", shapes.after(tenonsLeft, members(true, true))));
        if (!thin.isEmpty()) {
            Set<Integer> thinLeft = members(false, false);
            thinLeft.removeAll(thin);
            out.add(stage("all but the thinnest cut", shapes.after(thinLeft, members(true, true))));
        }
        out.add(stage("finished", shapes.after(members(false, false), Set.of())));
        if (work.partsOff()) {
            out.add(stage("finished, spare length still on", shapes.unparted()));
        }
        return out;
    }

    private static Set<Integer> firstHalf(List<Integer> way) {
        return new TreeSet<>(way.subList(0, (way.size() + 1) / 2));
    }

    /** Every member; or those that are no tenon, with or without the slender ones. */
    private Set<Integer> members(boolean noTenons, boolean withSlender) {
        Set<Integer> out = new TreeSet<>();
        work.pattern().placed().forEach(placed -> {
            int index = placed.number() - 1;
            boolean tenon = placed.member().enters().isPresent();
            if (!noTenons || (!tenon && (withSlender || !slender.contains(index)))) {
                out.add(index);
            }
        });
        return out;
    }

    private Stage stage(String name, Outline outline) {
        return stage(name, outline, load);
    }

    private Stage stage(String name, Outline outline, BeamLoad load) {
        List<Length> places = new ArrayList<>();
        for (int i = 0; i <= SAG_PLACES; i++) {
            places.add(outline.length().times(i / (double) SAG_PLACES));
        }
        return Whip.stage(name, outline, wood, load, places);
    }

    /** The cuts with the first natural speed after each that shapes the piece, and with reasons where there are some. */
    List<Cut> reckoned(List<Cut> cuts) {
        Set<Integer> finished = new TreeSet<>();
        Set<Integer> slotted = new TreeSet<>();
        Set<Integer> late = new TreeSet<>();
        List<Cut> out = new ArrayList<>();
        boolean every = work.pattern().members().size() <= MOST_MEMBERS;
        for (int i = 0; i < cuts.size(); i++) {
            Cut cut = cuts.get(i);
            boolean lastOfPhase = i + 1 == cuts.size() || cuts.get(i + 1).phase() != cut.phase();
            Set<Integer> done = cut.sizes() ? (cut.phase() == Phase.SIZING ? slotted : late) : finished;
            done.addAll(shaped(cut));
            boolean told =
                    cut.phase() == Phase.ROUND ? lastOfPhase : cut.phase().shapes() && (every || lastOfPhase);
            if (!told) {
                out.add(cut);
                continue;
            }
            Optional<Speed> natural = Whip.firstOf(shapes.after(finished, slotted, late), wood, load);
            out.add(natural.map(cut::withNatural).orElse(cut));
        }
        return withReasons(out);
    }

    private static List<Integer> shaped(Cut cut) {
        return cut.phase().shapes() ? cut.members() : List.of();
    }

    private List<Cut> withReasons(List<Cut> cuts) {
        List<Cut> out = new ArrayList<>(cuts);
        for (int i = 0; i < out.size(); i++) {
            Phase phase = out.get(i).phase();
            boolean first = i == 0 || out.get(i - 1).phase() != phase;
            boolean last = i + 1 == out.size() || out.get(i + 1).phase() != phase;
            boolean slenderWaits = phase == Phase.SLENDER || (phase == Phase.THIN && thin.size() == slender.size());
            if (slenderWaits && first) {
                out.set(i, slenderReason(out.get(i)));
            } else if (phase == Phase.SIZING && last) {
                out.set(i, sizingReason(out.get(i)));
            }
        }
        return out;
    }

    private Cut sizingReason(Cut cut) {
        Optional<Speed> roughed = Whip.firstOf(shapes.roughed(), wood, load);
        if (roughed.isEmpty() || cut.natural().isEmpty()) {
            return cut;
        }
        double before = roughed.get().rpm();
        double after = cut.natural().get().rpm();
        // Stiffness goes by the square of the speed; what the slots weigh is little beside that.
        double lost = Math.max(0, 1 - after * after / (before * before));
        String told = after > 0.9 * before
                ? "the sizing cuts are narrow and cost %.0f %% of the stiffness, so all may be made at once"
                : "the sizing cuts together take %.0f %% of the stiffness: light cuts from here on";
        String whips = isFar(cut.natural().get())
                ? ""
                : " (the speed it whips at goes from %s to %s rpm)".formatted(figures(before), figures(after));
        return cut.withWhy(String.format(Locale.ROOT, told, 100 * lost) + whips);
    }

    /** Of speeds that no lathe comes near nothing is told: they say nothing at the lathe. */
    private boolean isFar(Speed natural) {
        return Turning.isBeyondLathes(natural, work.lathe().rules());
    }

    /** Two of one piece are compared, which is surer than either, yet no surer than this. */
    private static String figures(double rpm) {
        return PlainNumber.toFigures(rpm, 3);
    }

    private Cut slenderReason(Cut cut) {
        Set<Integer> details = members(true, false);
        if (details.isEmpty()) {
            return cut;
        }
        Stage asOrdered = stage("", shapes.after(details, members(true, true)));
        Stage otherWay = stage("", shapes.after(slender, members(true, true)));
        Length stiff = asOrdered.most().sag();
        Length limber = otherWay.most().sag();
        // Of a piece pushed aside by s the diameter is left 2 s too large; what the tolerance forgives is no reason
        // worth reading.
        boolean stout = limber.times(2).compareTo(work.diameterTolerance()) <= 0;
        if (limber.compareTo(stiff) <= 0 || stout) {
            return cut;
        }
        if (otherWay.most().beyond()) {
            String whips = isFar(otherWay.first())
                    ? ""
                    : "; in this order it whips at %s rpm instead of %s"
                            .formatted(
                                    figures(asOrdered.first().rpm()),
                                    figures(otherWay.first().rpm()));
            return cut.withWhy(
                    "with the slender stretches cut first the heavy details could not be cut unsupported" + whips);
        }
        String whips = isFar(otherWay.first())
                ? ""
                : ", and it whips at %s rpm instead of %s"
                        .formatted(
                                figures(asOrdered.first().rpm()),
                                figures(otherWay.first().rpm()));
        return cut.withWhy(String.format(
                Locale.ROOT,
                "with the slender stretches cut first, %s would push the piece %s aside while the heavy details are cut; in"
                        + " this order it is %s%s",
                work.lathe().cutting().format(work.units()),
                otherWay.most().text(work.units()),
                asOrdered.most().text(work.units()),
                whips));
    }
}
