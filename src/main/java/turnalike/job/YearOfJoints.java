package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.set.Bored;
import turnalike.job.set.End;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Warning;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;
import turnalike.units.Working;
import turnalike.wood.DimensionalChange;
import turnalike.wood.Grain;
import turnalike.wood.Moisture;
import turnalike.wood.MoistureChange;
import turnalike.wood.Wood;
import turnalike.year.Home;
import turnalike.year.Joint;
import turnalike.year.JointYear;

/**
 * How every tenon at an end of the piece stands in its hole through the year.
 *
 * @param home where the pieces will live
 * @param snug the interference from which on it is asked about, see {@link turnalike.pattern.ShapeRules#tenonSnug}
 * @param stands the joints that can be worked out, in order of the run
 * @param untold why another cannot be, each by its place
 */
public record YearOfJoints(Home home, Length snug, List<Stand> stands, List<Warning> untold) {
    /**
     * One joint.
     *
     * @param tenon the member
     * @param hole what it goes into, as a sentence names it: {@code hub}
     * @param year tenon and hole
     */
    public record Stand(PlacedMember tenon, String hole, JointYear year) {}

    public YearOfJoints {
        stands = List.copyOf(stands);
        untold = List.copyOf(untold);
    }

    /** The joints of a job that says where its pieces will live; empty where it does not. */
    static Optional<YearOfJoints> of(Job job) {
        return job.home().map(home -> of(job, home));
    }

    private static YearOfJoints of(Job job, Home home) {
        List<Stand> stands = new ArrayList<>();
        List<Warning> untold = new ArrayList<>();
        List<PlacedMember> run = job.pattern().placed();
        for (PlacedMember placed : run) {
            boolean first = placed.number() == 1;
            if (placed.member().enters().isEmpty() || !(first || placed.number() == run.size())) {
                continue; // inside the run no hole can take it, which is warned of as it is
            }
            Bored bored = bored(job, first ? End.START : End.END);
            Parsed<Joint> joint = joint(placed, job.wood(), bored.wood().orElse(job.wood()), bored.name());
            joint.fold(
                    each -> stands.add(new Stand(placed, bored.name(), new JointYear(each, home))),
                    (what, mend) -> untold.add(new Warning(placed.where(), what + "; " + mend)));
        }
        return new YearOfJoints(home, job.lathe().rules().shapes().tenonSnug(), stands, untold);
    }

    private static Bored bored(Job job, End end) {
        Pattern pattern = job.pattern();
        return job.frame()
                .flatMap(frame -> frame.bored(end, pattern))
                .orElseGet(() -> new Bored("hole", Optional.empty()));
    }

    private static Parsed<Joint> joint(PlacedMember tenon, Wood turned, Wood bored, String hole) {
        Length diameter = tenon.member().diameters().get(0).size();
        Length bore = tenon.member().enters().orElseThrow().diameter();
        return part(turned, "the tenon")
                .fold(
                        peg -> part(bored, "the " + hole)
                                .fold(
                                        around -> Parsed.of(new Joint(diameter, peg, bore, around)),
                                        (what, mend) -> Parsed.refused(what, mend)),
                        (what, mend) -> Parsed.refused(what, mend));
    }

    private static Parsed<Joint.Part> part(Wood wood, String what) {
        return wood.match(new Wood.Cases<>() {
            @Override
            public Parsed<Joint.Part> species(Wood.OfSpecies of) {
                return Joint.moves(of.species())
                        ? Parsed.of(new Joint.Part(of.species(), of.moisture()))
                        : Parsed.refused(
                                "nothing is said of its year: no shrinkage of %s is printed in our sources"
                                        .formatted(of.species().name()),
                                "name a wood that has one");
            }

            @Override
            public Parsed<Joint.Part> density(Wood.OfDensity of) {
                return Parsed.refused(
                        "nothing is said of its year: of the wood of %s only the density is told".formatted(what),
                        "name the species");
            }
        });
    }

    /** What cannot be told, what lies beyond the formula, and joints as tight as is asked about. */
    List<Warning> warnings(UnitSystem units) {
        List<Warning> out = new ArrayList<>(untold);
        for (Stand each : stands) {
            beyond(each.year().joint().tenonWood().made(), "is turned", each).ifPresent(out::add);
            beyond(each.year().joint().holeWood().made(), "goes into a hole bored", each)
                    .ifPresent(out::add);
            JointYear year = each.year();
            if (year.tightest().compareTo(snug) >= 0) {
                out.add(new Warning(
                        each.tenon().where(),
                        "is %s thicker than its hole when %s; is that meant? So much crushes the wood or splits the %s"
                                .formatted(
                                        year.tightest().formatSteadyBoth(units),
                                        year.tightestInDry() ? "dry" : "damp",
                                        each.hole())));
            }
        }
        return out;
    }

    private static Optional<Warning> beyond(Moisture made, String what, Stand stand) {
        return made.compareTo(Moisture.FIBRE_SATURATION) > 0
                ? Optional.of(new Warning(
                        stand.tenon().where(),
                        "%s at %s: above fibre saturation, 30 %% here, wood does not move, so it is counted as 30 %%"
                                .formatted(what, made.text())))
                : Optional.empty();
    }

    /** {@return how the figures were found, each joint's drying shown in full} */
    public List<Working> workings() {
        List<Working> out = new ArrayList<>();
        home.dry().from().ifPresent(each -> out.add(each.working()));
        home.damp().from().ifPresent(each -> out.add(each.working()));
        for (Stand each : stands) {
            for (Moisture moisture : List.of(home.dry().moisture(), home.damp().moisture())) {
                for (Grain grain : Grain.values()) {
                    Joint joint = each.year().joint();
                    out.add(change(joint.tenonWood(), joint.tenon(), moisture, grain));
                }
            }
        }
        return out;
    }

    private static Working change(Joint.Part part, Length size, Moisture moisture, Grain grain) {
        return DimensionalChange.of(part.species(), grain, size, new MoistureChange(part.made(), moisture))
                .get()
                .working();
    }
}
