package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import turnalike.effort.Effort;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.settings.Calipers;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.settings.SizedDiameter;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.wood.Rupture;
import turnalike.wood.Stiffness;

/** Invented pieces of work for tests. */
public final class Works {
    static final Length SIZING = Length.ofMm(0.8);

    /** Marks that were laid out before are not laid out anew: the search takes far longer than what is asked of it here. */
    private static final Map<List<Length>, DividerPlan> LAID_OUT = new ConcurrentHashMap<>();

    private Works() {}

    private static DividerPlan laidOut(List<Length> marks) {
        return LAID_OUT.computeIfAbsent(
                marks, each -> Dividers.solve(DividerProblem.of(each, UnitSystem.METRIC), Effort.ofAsks(2000))
                        .findPlan()
                        .orElseThrow());
    }

    static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    static TurningProblem of(Pattern pattern, Optional<Stiffness> stiffness, Lathe lathe) {
        return of(pattern, stiffness, Optional.empty(), lathe);
    }

    static TurningProblem of(Pattern pattern, Optional<Stiffness> stiffness, Optional<Rupture> rupture, Lathe lathe) {
        List<Mark> marks = pattern.marks();
        List<SizedDiameter> sized = new ArrayList<>();
        for (int i = 0; i < pattern.members().size(); i++) {
            for (Member.Diameter each : pattern.members().get(i).diameters()) {
                sized.add(new SizedDiameter(i, each.size()));
            }
        }
        return new TurningProblem(
                pattern,
                marks,
                laidOut(marks.stream().map(Mark::place).toList()),
                Calipers.group(sized, Length.ZERO, SIZING),
                SIZING,
                mm(0.4),
                Density.ofKgPerM3(700),
                stiffness,
                rupture,
                lathe,
                EndSlopes.NONE,
                UnitSystem.METRIC);
    }

    /** The wood of {@link #stiff}. */
    static BeamWood wood() {
        return BeamWood.of(Stiffness.given(11_000), Density.ofKgPerM3(700));
    }

    /** Between centres, under the light cut and the thrust of a job that says nothing. */
    static BeamLoad usual() {
        return BeamLoad.of(Lathe.USUAL_CUTTING).pressing(EndThrust.supposed(ShopRules.USUAL));
    }

    public static TurningProblem stiff(Pattern pattern) {
        return of(pattern, Optional.of(Stiffness.given(11_000)), Lathe.USUAL);
    }

    /** A baluster of 600 mm: square, beads and coves at both ends, one long slender taper between, tenons. */
    static Pattern baluster() {
        return new Pattern(
                "baluster",
                new Stock(Section.SQUARE, mm(50), mm(620)),
                List.of(
                        new Tenon(mm(25), mm(20), mm(2), Details.NONE),
                        new Square(mm(60), mm(50), Details.NONE),
                        new Bead(mm(15), mm(36), mm(48), Details.NONE),
                        new Cove(mm(20), mm(44), mm(32), Details.NONE),
                        new Fillet(mm(10), mm(40), Details.NONE),
                        new Taper(mm(180), mm(30), mm(16), Details.named("lower taper")),
                        new Taper(mm(180), mm(16), mm(30), Details.named("upper taper")),
                        new Fillet(mm(10), mm(40), Details.NONE),
                        new Cove(mm(20), mm(44), mm(32), Details.NONE),
                        new Bead(mm(15), mm(36), mm(48), Details.NONE),
                        new Square(mm(40), mm(50), Details.NONE),
                        new Tenon(mm(25), mm(20), mm(2), Details.NONE)));
    }
}
