package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.units.Force;
import turnalike.units.Length;

/**
 * The bending stress M/Z all along the piece under the cutting force at every place of every cut, on the outline that the cut leaves; the
 * worst of it in each member, and what would mend it. The moment is the beam's, thrust and shear included; compression by the thrust is not
 * added.
 */
final class CutStrains {
    /** What would mend it is worked out for the worst so many. */
    private static final int MOST_MENDED = 12;

    /** One more support is tried at about so many places. */
    private static final int SUPPORTS = 40;

    private static final double SAME_MM = 1e-6;

    /** How far inside a member it is looked which side of a shoulder it stands on, and how near its diameter there is to be. */
    private static final double INSIDE_MM = 1e-3;

    private static final double SAME_SIDE = 1.02;

    private final TurningProblem work;
    private final BeamWood wood;
    private final BeamLoad load;
    private final List<PlacedMember> run;
    private final StageOutlines shapes;
    private final double allowedMpa;

    CutStrains(TurningProblem work, BeamWood wood, BeamLoad load, double allowedMpa) {
        this.work = work;
        this.wood = wood;
        this.load = load;
        this.run = work.pattern().placed();
        this.shapes = new StageOutlines(work);
        this.allowedMpa = allowedMpa;
    }

    /** A cut and the piece that it leaves. */
    private record Done(Cut cut, Outline outline) {}

    /** The worst of each member that any cut bends, the hardest bent first. */
    List<Strain> of(List<Cut> cuts) {
        TreeMap<Integer, Strain> worst = new TreeMap<>();
        TreeMap<Integer, Done> when = new TreeMap<>();
        Set<Integer> finished = new TreeSet<>();
        Set<Integer> slotted = new TreeSet<>();
        Set<Integer> late = new TreeSet<>();
        for (Cut cut : cuts) {
            if (!cut.phase().shapes() || cut.phase() == Phase.ROUND) {
                continue;
            }
            (cut.sizes() ? (cut.phase() == Phase.SIZING ? slotted : late) : finished).addAll(cut.members());
            Done done = new Done(cut, shapes.after(finished, slotted, late));
            for (Strain each : strains(done)) {
                Strain before = worst.get(each.member());
                boolean there = finished.contains(each.member())
                        || slotted.contains(each.member())
                        || late.contains(each.member());
                if (there && (before == null || each.stressMpa() > before.stressMpa())) {
                    worst.put(each.member(), each);
                    when.put(each.member(), done);
                }
            }
        }
        List<Strain> out = new ArrayList<>(worst.values());
        out.sort(Comparator.comparing(Strain::stressMpa).reversed());
        for (int i = 0; i < Math.min(MOST_MENDED, out.size()); i++) {
            Strain each = out.get(i);
            if (each.stressMpa() > allowedMpa) {
                out.set(
                        i,
                        mended(
                                each,
                                Optional.ofNullable(when.get(each.member())).orElseThrow()));
            }
        }
        return out;
    }

    private Beam beam(Outline outline, List<Length> places) {
        double[] at = places.stream().mapToDouble(Length::mm).toArray();
        Beam free = new Beam(BeamMesh.of(outline, at, BeamMesh.Fineness.COARSE), wood, load.ends(), 0);
        double bucklingN = load.thrust().mostN() > 0 ? free.bucklingN() : Double.POSITIVE_INFINITY;
        double thrustN = load.thrust().mostN() > 0 ? load.thrustN(bucklingN) : 0;
        return EndThrust.isBorne(thrustN, bucklingN) ? free.pressed(thrustN) : free;
    }

    private static boolean within(double placeMm, Length from, Length to) {
        return placeMm > from.mm() - SAME_MM && placeMm < to.mm() + SAME_MM;
    }

    /** Where the tool pushes in a cut: at each sized place, or all along the member. */
    private static List<Integer> pushed(Cut cut, BeamMesh mesh) {
        List<Integer> out = new ArrayList<>();
        for (int node = 0; node < mesh.nodeMm.length; node++) {
            double place = mesh.nodeMm[node];
            boolean here = cut.sizes()
                    ? cut.places().stream().anyMatch(each -> Math.abs(each.mm() - place) < SAME_MM)
                    : within(place, cut.from(), cut.to());
            if (here) {
                out.add(node);
            }
        }
        return out;
    }

    private boolean isInStretches(Cut cut) {
        return cut.phase() == Phase.FROM_TIP
                && !cut.sizes()
                && ThinStretches.isCutInStretches(work, run.get(cut.members().get(0)));
    }

    /** Where the stress must be known: what is cut in stretches, at every width of the tool from its end toward the tip. */
    private List<Length> places(Cut cut) {
        if (!isInStretches(cut)) {
            return cut.places();
        }
        double step = work.lathe().rules().parting().mm();
        double length = cut.to().minus(cut.from()).mm();
        List<Length> out = new ArrayList<>();
        for (double at = 0; at < length; at += step) {
            out.add(
                    work.held().at() == Held.At.START
                            ? cut.to().minus(Length.ofMm(at))
                            : cut.from().plus(Length.ofMm(at)));
        }
        return out;
    }

    /** Whether a place is down to its size when the tool pushes at another: of what is cut in stretches, not what lies behind the tool. */
    private boolean isThinned(Cut cut, double toolMm, double placeMm) {
        PlacedMember placed = run.get(cut.members().get(0));
        boolean inStretches = isInStretches(cut) && within(placeMm, placed.start(), placed.end());
        double behind = work.held().at() == Held.At.START ? toolMm - placeMm : placeMm - toolMm;
        return !inStretches || behind < work.lathe().rules().parting().mm() + SAME_MM;
    }

    private List<Strain> strains(Done done) {
        Cut cut = done.cut();
        Beam beam = beam(done.outline(), places(cut));
        BeamMesh mesh = beam.mesh();
        double[] worst = new double[mesh.nodeMm.length];
        int[] from = new int[mesh.nodeMm.length];
        BeamStatics.Pushes pushes = beam.pushes();
        for (int loaded : pushed(cut, mesh)) {
            BeamStatics.Push push = pushes.at(loaded);
            for (int node = 0; node < worst.length; node++) {
                double stress = stressMpa(mesh, push.momentNmm(node), node);
                if (stress > worst[node] && isThinned(cut, mesh.nodeMm[loaded], mesh.nodeMm[node])) {
                    worst[node] = stress;
                    from[node] = loaded;
                }
            }
        }
        List<Strain> out = new ArrayList<>();
        for (PlacedMember placed : run) {
            int best = -1;
            for (int node = 0; node < worst.length; node++) {
                boolean here = owns(placed, done.outline(), mesh, node);
                if (here && (best < 0 || worst[node] > worst[best])) {
                    best = node;
                }
            }
            if (best >= 0 && worst[best] > 0) {
                out.add(new Strain(
                        placed.number() - 1,
                        Length.ofMm(mesh.nodeMm[best]),
                        across(placed, done.outline(), mesh.nodeMm[best]),
                        worst[best],
                        cut.order(),
                        Length.ofMm(mesh.nodeMm[from[best]]),
                        Optional.empty()));
            }
        }
        return out;
    }

    /** At a shoulder the stress is the thinner side's. */
    private static boolean owns(PlacedMember placed, Outline outline, BeamMesh mesh, int node) {
        double at = mesh.nodeMm[node];
        return within(at, placed.start(), placed.end())
                && across(placed, outline, at).mm() < SAME_SIDE * diameterMm(mesh, node);
    }

    /** The member's own diameter, or its side where it is square. */
    private static Length across(PlacedMember placed, Outline outline, double atMm) {
        double inside = Math.max(
                placed.start().mm() + INSIDE_MM, Math.min(atMm, placed.end().mm() - INSIDE_MM));
        return outline.radiusAt(Length.ofMm(inside)).times(2);
    }

    private double stressMpa(BeamMesh mesh, double momentNmmPerN, int node) {
        return Math.abs(momentNmmPerN) * load.cutting().newtons() / mesh.modulusMm3[node];
    }

    /** Of the thinner side: its area counts 9/10 in shear. */
    private static double diameterMm(BeamMesh mesh, int node) {
        return 2 * Math.sqrt(mesh.leastShearAreaMm2[node] / (Section.ROUND.shearFactor() * Math.PI));
    }

    private Strain mended(Strain strain, Done done) {
        double share = allowedMpa / strain.stressMpa();
        Beam beam = beam(done.outline(), places(done.cut()));
        BeamStatics.Pushes pushes = beam.pushes();
        int node = nearest(beam.mesh(), strain.place());
        double[] at = beam.mesh().nodeMm;
        List<BeamStatics.Push> byTool = pushed(done.cut(), beam.mesh()).stream()
                .filter(loaded -> isThinned(done.cut(), at[loaded], at[node]))
                .map(pushes::at)
                .toList();
        Bent bent = new Bent(beam.mesh(), pushes, byTool, node);
        int support = bestSupport(bent, done.outline());
        Strain.Mends mends = new Strain.Mends(
                cutLastMpa(strain),
                Length.ofMm(beam.mesh().nodeMm[support]),
                supportedMpa(bent, support),
                Force.ofNewtons(load.cutting().newtons() * share),
                strain.diameter().times(Math.cbrt(1 / share)));
        return new Strain(
                strain.member(),
                strain.place(),
                strain.diameter(),
                strain.stressMpa(),
                strain.cut(),
                strain.loadAt(),
                Optional.of(mends));
    }

    /** A place of a piece, and the tool at every place of its cut. */
    private record Bent(BeamMesh mesh, BeamStatics.Pushes pushes, List<BeamStatics.Push> byTool, int node) {}

    private static int nearest(BeamMesh mesh, Length place) {
        int best = 0;
        for (int i = 0; i < mesh.nodeMm.length; i++) {
            if (Math.abs(mesh.nodeMm[i] - place.mm()) < Math.abs(mesh.nodeMm[best] - place.mm())) {
                best = i;
            }
        }
        return best;
    }

    /** With the rest finished and nothing left to cut but this member. */
    private double cutLastMpa(Strain strain) {
        PlacedMember placed = run.get(strain.member());
        Beam beam = beam(work.pattern().outline(), List.of(placed.start(), placed.end()));
        BeamMesh mesh = beam.mesh();
        BeamStatics.Pushes pushes = beam.pushes();
        double most = 0;
        for (int loaded = 0; loaded < mesh.nodeMm.length; loaded++) {
            if (within(mesh.nodeMm[loaded], placed.start(), placed.end())) {
                BeamStatics.Push push = pushes.at(loaded);
                for (int node = 0; node < mesh.nodeMm.length; node++) {
                    if (within(mesh.nodeMm[node], placed.start(), placed.end())) {
                        most = Math.max(most, stressMpa(mesh, push.momentNmm(node), node));
                    }
                }
            }
        }
        return most;
    }

    /** Where a rest can run; on any round place where it can nowhere. */
    private int bestSupport(Bent bent, Outline outline) {
        return bestSupport(bent, place -> RestPlaces.carries(outline, place))
                .or(() -> bestSupport(bent, place -> outline.sectionAt(place) == Section.ROUND))
                .orElse(bent.node());
    }

    private Optional<Integer> bestSupport(Bent bent, Predicate<Length> may) {
        BeamMesh mesh = bent.mesh();
        Optional<Integer> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        int step = Math.max(1, mesh.elements() / SUPPORTS);
        for (int support = step; support < mesh.elements(); support += step) {
            double stress = may.test(Length.ofMm(mesh.nodeMm[support]))
                    ? supportedMpa(bent, support)
                    : Double.POSITIVE_INFINITY;
            if (stress < least) {
                least = stress;
                best = Optional.of(support);
            }
        }
        return best;
    }

    /** The support pushes back so hard that it does not give way: its push is w(s) under the tool over w(s) under one newton there. */
    private double supportedMpa(Bent bent, int support) {
        BeamStatics.Push back = bent.pushes().at(support);
        double most = 0;
        for (BeamStatics.Push push : bent.byTool()) {
            double share = push.asideMm(support) / back.asideMm(support);
            double moment = push.momentNmm(bent.node()) - share * back.momentNmm(bent.node());
            most = Math.max(most, stressMpa(bent.mesh(), moment, bent.node()));
        }
        return most;
    }
}
