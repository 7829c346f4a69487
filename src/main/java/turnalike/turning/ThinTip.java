package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * The tip of a piece held by one end with the tailstock up, as far as it is to be thinner than a pencil: nothing so thin is borne by a cup or pad.
 * Spare length that stands at the tip is thick enough. A short one is left a pencil thick until the tailstock goes; a longer one is a point, see {@link TurningProblem#isPointed}.
 *
 * @param length of its own member from the tip inward; zero where the tip is thicker, or nothing bears it
 */
record ThinTip(Length length) {
    private static final int PARTS = 64;
    private static final ThinTip NONE = new ThinTip(Length.ZERO);

    static ThinTip of(TurningProblem work) {
        Held held = work.held();
        boolean spareThere = work.partsOff() && new Holding(work).spareAt() != held.at();
        if (!held.byOneEnd() || !held.tailstock() || spareThere) {
            return NONE;
        }
        PlacedMember tip = member(work);
        Outline outline = tip.outline();
        if (tip.member().section() == Section.SQUARE) {
            return NONE;
        }
        double whole = outline.length().mm();
        for (int i = 0; i <= PARTS; i++) {
            double inward = whole * i / PARTS;
            Length place = atStart(work)
                    ? outline.start().plus(Length.ofMm(inward))
                    : outline.end().minus(Length.ofMm(inward));
            if (!work.isTooThinToPart(outline.radiusAt(place).times(2))) {
                return new ThinTip(Length.ofMm(inward));
            }
        }
        return new ThinTip(outline.length());
    }

    private static boolean atStart(TurningProblem work) {
        return work.held().at() == Held.At.END;
    }

    static PlacedMember member(TurningProblem work) {
        List<PlacedMember> run = work.pattern().placed();
        return atStart(work) ? run.get(0) : run.get(run.size() - 1);
    }

    /** The tip's member as it stands while the tailstock bears it; where it is bent, by chords. */
    Outline left(TurningProblem work) {
        Outline outline = member(work).outline();
        if (!length.isPositive()) {
            return outline;
        }
        double pencilMm = work.lathe().rules().pencil().mm() / 2;
        List<Line> lines = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            Curve curve = segment.curve();
            double part = curve.length().mm() / PARTS;
            for (int i = 0; i < PARTS; i++) {
                double from = curve.radiusMm(i * part);
                double to = curve.radiusMm(Math.min(curve.length().mm(), (i + 1) * part));
                lines.add(new Line(
                        Length.ofMm(part), Length.ofMm(Math.max(from, pencilMm)), Length.ofMm(Math.max(to, pencilMm))));
            }
        }
        return Outline.of(outline.start(), lines, Section.ROUND);
    }
}
