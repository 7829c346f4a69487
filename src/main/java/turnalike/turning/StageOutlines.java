package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/** The piece's outline at any stage of the work: some members finished, the others still roughed, with or without their sizing cuts. */
final class StageOutlines {
    private final TurningProblem work;
    private final List<PlacedMember> run;
    private final List<SizedPlace> sized;
    private final LateSizing waiting;
    private final double roughRadiusMm;
    private final ThinTip tip;

    StageOutlines(TurningProblem work) {
        this.work = work;
        this.run = work.pattern().placed();
        this.sized = SizedPlace.of(work);
        this.waiting = new LateSizing(work, SlenderMembers.of(work));
        this.roughRadiusMm = work.roughed().mm() / 2;
        this.tip = ThinTip.of(work);
    }

    /** The blank cut to the finished length. */
    Outline blank() {
        Length radius = work.pattern().stock().size().times(0.5);
        return Outline.of(
                Length.ZERO,
                List.of(Line.level(work.pattern().length(), radius)),
                work.pattern().stock().section());
    }

    /** The roughed cylinder, nothing sized. */
    Outline roughed() {
        return after(Set.of(), Set.of());
    }

    /**
     * The piece with some members finished.
     *
     * @param finished indices of members
     * @param slotted indices of members with their first sizing cuts made; those finished need not be named
     */
    Outline after(Set<Integer> finished, Set<Integer> slotted) {
        return after(finished, slotted, Set.of());
    }

    /** @param late indices of members whose thin places have been sized too, see {@link LateSizing} */
    Outline after(Set<Integer> finished, Set<Integer> slotted, Set<Integer> late) {
        List<Outline> parts = new ArrayList<>();
        for (PlacedMember placed : run) {
            int index = placed.number() - 1;
            if (finished.contains(index) && staysThick(index)) {
                parts.add(tip.left(work));
            } else if (finished.contains(index) || placed.member().section() == Section.SQUARE) {
                parts.add(placed.outline());
            } else {
                parts.add(rough(placed, slotted.contains(index), late.contains(index)));
            }
        }
        return Outline.join(parts);
    }

    /** As long as the tailstock bears it, the tip is left a pencil thick. */
    private boolean staysThick(int index) {
        return tip.length().isPositive()
                && !work.isLongForThin(tip.length())
                && index == ThinTip.member(work).number() - 1;
    }

    /** Finished, with the blank's spare length still on at the far end, roughed. */
    Outline unparted() {
        Length radius = Length.ofMm(roughRadiusMm);
        Outline spare = Outline.of(work.pattern().length(), List.of(Line.level(work.spare(), radius)), Section.ROUND);
        return Outline.join(List.of(work.pattern().outline(), spare));
    }

    private Outline rough(PlacedMember placed, boolean slotted, boolean late) {
        double length = placed.member().length().mm();
        List<Slot> slots = slotted || late ? slots(placed, late) : List.of();
        TreeSet<Double> joints = new TreeSet<>(List.of(0.0, length));
        slots.forEach(slot -> joints.addAll(List.of(slot.fromMm(), slot.toMm())));
        List<Line> lines = new ArrayList<>();
        double last = 0;
        for (double joint : joints) {
            double width = joint - last;
            if (width > 0) {
                double middle = last + width / 2;
                double deepest = slots.stream()
                        .filter(slot -> slot.fromMm() < middle && middle < slot.toMm())
                        .mapToDouble(Slot::radiusMm)
                        .min()
                        .orElse(roughRadiusMm);
                lines.add(Line.level(Length.ofMm(width), Length.ofMm(deepest)));
            }
            last = joint;
        }
        return Outline.of(placed.start(), lines, Section.ROUND);
    }

    /** A stretch of the member parted down, from its own start. */
    private record Slot(double fromMm, double toMm, double radiusMm) {}

    private List<Slot> slots(PlacedMember placed, boolean late) {
        double length = placed.member().length().mm();
        double width = Math.min(work.lathe().rules().parting().mm(), length);
        List<Slot> out = new ArrayList<>();
        for (SizedPlace each : sized) {
            // What is thinner than a pencil is not parted down to: there is no slot before the member itself is cut.
            boolean parted = !work.isTooThinToPart(each.setting().finished());
            if (each.member() == placed.number() - 1 && parted && (late || !waiting.waits(each))) {
                double middle = each.place().minus(placed.start()).mm();
                double from = Math.min(Math.max(0, middle - width / 2), length - width);
                double radius = Math.min(roughRadiusMm, each.setting().opening().mm() / 2);
                out.add(new Slot(from, from + width, radius));
            }
        }
        return out;
    }
}
