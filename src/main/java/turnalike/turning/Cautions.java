package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/** What to beware of at the lathe. The bounds are common practice, no source. */
final class Cautions {
    /** Above this share of its buckling load a piece bows so far under the tailstock that a third more is added to every sag. */
    private static final double MUCH_OF_BUCKLING = 0.25;

    private final TurningProblem work;
    private final List<Warning> out = new ArrayList<>();

    private Cautions(TurningProblem work) {
        this.work = work;
    }

    static List<Warning> of(TurningProblem work, Optional<Whip> whip, List<Stage> stages, SpeedAdvice speeds) {
        Cautions cautions = new Cautions(work);
        boolean offered = whip.isEmpty() || cautions.bowed(stages).isEmpty();
        if (!offered) {
            cautions.tailstock(stages);
        }
        new HoldingCautions(work).list().forEach(cautions.out::add);
        if (offered) {
            cautions.speed(speeds);
            cautions.slowDown(speeds);
            cautions.steps(speeds);
        }
        if (whip.isPresent()) {
            if (offered) {
                cautions.tailstock(stages);
            }
            cautions.bending(whip.get());
            cautions.force();
            cautions.steady(whip.get());
        } else {
            cautions.add(
                    "whip",
                    "not reckoned, since no stiffness is known for this wood; give wood.moe_mpa, and until then take a slim piece"
                            + " for one that whips");
        }
        if (whip.isEmpty() || work.rupture().isEmpty()) {
            cautions.add(
                    "strength",
                    "not reckoned, since this wood's strength or stiffness is not known; cut the thinnest parts last, with a light hand");
        }
        cautions.add(
                "speed",
                "the figures suppose sound, straight-grained wood, tight centres and a stiff lathe; start slow, stand aside, wear a"
                        + " face shield, and go down a step at the first shake. Where a shop has rules or a teacher, they come first");
        return List.copyOf(cautions.out);
    }

    private void add(String where, String what) {
        out.add(new Warning(where, what));
    }

    private void speed(SpeedAdvice speeds) {
        if (speeds.limit() == SpeedAdvice.Limit.WHIP) {
            add(
                    "speed",
                    String.format(
                            Locale.ROOT,
                            "held to %s rpm by the piece's own whip, below what is common for its diameter%s",
                            speeds.turning().to().noFaster(),
                            work.wantsNoSteady() ? "" : "; a steady rest lets it be turned with less shake"));
        }
    }

    /** The thick cylinder bears a speed that the finished piece does not. */
    private void slowDown(SpeedAdvice speeds) {
        if (speeds.roughing().to().compareTo(speeds.turning().to()) > 0) {
            add(
                    "speed",
                    String.format(
                            Locale.ROOT,
                            "once it is round go down to %s rpm or less before the sizing cuts: as it grows thin it whips sooner",
                            speeds.turning().to().noFaster()));
        }
    }

    private void steps(SpeedAdvice speeds) {
        List<Speed> steps = work.lathe().steps();
        if (steps.isEmpty()) {
            return;
        }
        SpeedRange range = speeds.turning();
        if (speeds.turningSteps().isEmpty()) {
            boolean slower = steps.get(0).compareTo(range.to()) <= 0;
            add(
                    "lathe steps",
                    slower
                            ? String.format(
                                    Locale.ROOT,
                                    "no step lies from %s; take the next slower one, %.0f",
                                    told(range),
                                    slower(range).rpm())
                            : "every step is faster than %s rpm; this piece wants a slower lathe%s"
                                    .formatted(range.to().noFaster(), work.wantsNoSteady() ? "" : " or a steady rest"));
        }
        SpeedRange roughing = speeds.roughing();
        boolean roughs = steps.get(0).compareTo(roughing.to()) <= 0;
        // Where both ranges are one, one caution says it.
        boolean isTold = told(roughing).equals(told(range));
        if (roughs && speeds.roughingSteps().isEmpty() && !isTold) {
            add(
                    "lathe steps",
                    String.format(
                            Locale.ROOT,
                            "for roughing no step lies from %s; take the next slower one, %.0f",
                            told(roughing),
                            slower(roughing).rpm()));
        }
        if (!roughs) {
            add(
                    "lathe steps",
                    "the slowest step is above %s rpm, the most for roughing; knock the corners off first"
                            .formatted(roughing.to().noFaster()));
        }
    }

    /** As the plan tells it. */
    private static String told(SpeedRange range) {
        return "%s to %s rpm".formatted(range.from().about(), range.to().noFaster());
    }

    /** The fastest of the lathe's steps that is not above a range; there must be one. */
    private Speed slower(SpeedRange range) {
        return work.lathe().steps().stream()
                .filter(step -> step.compareTo(range.to()) <= 0)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The weakest stage where the given force bows the piece out. */
    private Optional<Stage> bowed(List<Stage> stages) {
        Optional<Double> given = work.lathe().tailstock().map(Force::newtons);
        return given.isEmpty() || !work.supports().bearsThrust()
                ? Optional.empty()
                : weakest(stages)
                        .filter(stage ->
                                !EndThrust.isBorne(given.get(), stage.buckling().newtons()));
    }

    /** A point is turned with nothing pressing along it. */
    private Optional<Stage> weakest(List<Stage> stages) {
        return stages.stream()
                .filter(stage -> !work.isPointed() || stage.thrust().isPresent())
                .min(Comparator.comparing(Stage::buckling));
    }

    private void tailstock(List<Stage> stages) {
        Optional<Force> force =
                work.lathe().tailstock().filter(given -> work.supports().bearsThrust());
        Optional<Stage> weakest = weakest(stages);
        if (force.isEmpty() || weakest.isEmpty()) {
            return;
        }
        double share = force.get().newtons() / weakest.get().buckling().newtons();
        if (bowed(stages).isPresent()) {
            add(
                    "tailstock",
                    String.format(
                            Locale.ROOT,
                            "%s bows this piece out by itself (%s: %s); ease the tailstock far below that. No speed is offered"
                                    + " for it",
                            force.get().format(work.units()),
                            weakest.get().name(),
                            weakest.get().buckling().format(work.units())));
        } else if (share > MUCH_OF_BUCKLING) {
            add(
                    "tailstock",
                    String.format(
                            Locale.ROOT,
                            "%s is %.0f %% of what bows the piece out (%s); every sag grows about %.1f-fold and it whips at %.0f %% of"
                                    + " its free speed. Ease the tailstock",
                            force.get().format(work.units()),
                            100 * share,
                            weakest.get().name(),
                            1 / (1 - share),
                            100 * Math.sqrt(1 - share)));
        }
    }

    private void force() {
        Length thinnest = work.pattern().outline().smallestRadius().times(2);
        if (work.lathe().isHeavyOn(thinnest)) {
            add(
                    "force",
                    "%s is a light cut on stout work, but a heavy one where the piece is thinner than a pencil, %s at its thinnest: how far"
                                    .formatted(work.lathe().cutting().format(work.units()), work.both(thinnest))
                            + " it gives way and what bends it are told for that all the same; say in turning.force_n what your own"
                            + " finishing cut pushes with");
        }
    }

    /** A piece that gives way by s leaves the diameter 2 s too large. */
    private void bending(Whip whip) {
        String steady = work.wantsNoSteady()
                ? ""
                : " or a steady rest at " + whip.steady().formatRoughly(work.units());
        if (whip.most().beyond() && work.held().byOneEnd()) {
            add(
                    "bending",
                    String.format(
                            Locale.ROOT,
                            "go back to nothing that is done: finished, it would give way at %s further than it is thick to its middle under"
                                    + " %s; from the tip back each part is done and sanded before the next is begun, with a hand behind%s",
                            work.at(whip.most().place()),
                            whip.cutting().format(work.units()),
                            steady));
        } else if (whip.most().beyond()) {
            add(
                    "bending",
                    String.format(
                            Locale.ROOT,
                            "the finished piece cannot be cut unsupported: at %s it gives way further than it is thick to its middle under"
                                    + " %s; give it a hand behind%s, or leave it thicker or shorter",
                            work.at(whip.most().place()),
                            whip.cutting().format(work.units()),
                            steady));
        }
        Length left = whip.most().sag().times(2);
        if (!whip.most().beyond() && left.compareTo(work.diameterTolerance()) > 0) {
            add(
                    "bending",
                    String.format(
                            Locale.ROOT,
                            "%s push the finished piece %s aside at %s, which leaves the diameter %s too large there, more"
                                    + " than the %s allowed; light cuts with a sharp tool, a hand behind%s",
                            whip.cutting().format(work.units()),
                            whip.most().sag().formatFine(work.units()),
                            work.at(whip.most().place()),
                            left.formatFine(work.units()),
                            work.diameterTolerance().formatFine(work.units()),
                            steady));
        }
        if (whip.thickened()) {
            add(
                    "bending",
                    "some place is thinner than a thousandth of the thickest and was reckoned as that; do not trust these figures");
        }
    }

    private void steady(Whip whip) {
        if (work.wantsNoSteady()) {
            return;
        }
        PlacedMember there = work.pattern().placed().stream()
                .filter(each -> each.end().compareTo(whip.steady()) >= 0)
                .findFirst()
                .orElseThrow();
        boolean square = work.pattern().outline().sectionAt(whip.steady()) == Section.SQUARE;
        if (!square && !there.member().crests().isEmpty()) {
            add(
                    "steady rest",
                    ("its best place, %s, is on %s: let it run there on a band of the plain cylinder and cut that detail last, or"
                                    + " set it on the nearest plain stretch")
                            .formatted(whip.steady().formatRoughly(work.units()), there.where()));
        }
        if (square) {
            add(
                    "steady rest",
                    "its best place, %s, is on a square, where none can run; set it on the nearest round stretch"
                            .formatted(whip.steady().formatRoughly(work.units())));
        }
    }
}
