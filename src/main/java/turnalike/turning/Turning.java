package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.pattern.Mark;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;
import turnalike.units.Working;
import turnalike.wood.Stiffness;

/**
 * How the piece is turned. Everything about whip is empty when the wood's stiffness is not known.
 *
 * @param lathe what the turner's lathe and hand bring
 * @param stiffness of the wood, shear-free
 * @param whip the finished piece's figures
 * @param steady where a steady rest helps most; empty where the piece is too short to want one or nothing is known of whip
 * @param stages the piece before and after each part of the work, the blank first
 * @param strength what the cutting force does to the wood's strength, where that is known
 * @param offered how fast it may turn; empty where the piece does not bear the tailstock's thrust at every stage, for then no speed is sound
 * @param cuts in their order
 * @param cautions what to beware of, the gravest first; never empty
 * @param workings how the figures were found
 */
public record Turning(
        Lathe lathe,
        Optional<Stiffness> stiffness,
        Optional<Whip> whip,
        Optional<Length> steady,
        List<Stage> stages,
        Optional<BendingStrength> strength,
        Optional<SpeedAdvice> offered,
        List<Cut> cuts,
        List<Warning> cautions,
        List<Working> workings) {
    /** Places at which the sag is told, besides the marks: this many equal parts of the length. */
    private static final int SAG_PARTS = 40;

    /** From so many times the fastest that any work is turned a share of a natural speed is nothing to think of at the lathe. */
    private static final double FAR = 2;

    /** A push so many times the hardest that is pressed with bows nothing. */
    private static final double FAR_PUSH = 10;

    public Turning {
        stages = List.copyOf(stages);
        cuts = List.copyOf(cuts);
        cautions = List.copyOf(cautions);
        workings = List.copyOf(workings);
    }

    /** {@return whether no lathe comes near the speed at which the piece whips; false where that is not known} */
    public boolean isFarFromWhip() {
        return whip.filter(each -> isBeyondLathes(each.first())).isPresent();
    }

    /**
     * {@return whether no lathe comes near that speed}
     *
     * @param natural a speed at which the piece whips
     */
    public boolean isBeyondLathes(Speed natural) {
        return isBeyondLathes(natural, lathe.rules());
    }

    static boolean isBeyondLathes(Speed natural, ShopRules rules) {
        return natural.rpm() * rules.whipShare() >= FAR * rules.ceiling().rpm();
    }

    /** {@return whether no tailstock presses as hard as it takes to bow the piece out; false where that is not known} */
    public boolean isFarFromBowing() {
        return whip.filter(each -> isBeyondTailstocks(each.buckling())).isPresent();
    }

    /**
     * {@return whether no tailstock presses so hard}
     *
     * @param push an end force
     */
    public boolean isBeyondTailstocks(Force push) {
        return push.newtons() >= FAR_PUSH * lathe.rules().thrustMost().newtons();
    }

    /** {@return how the piece is held, in words; whether the tailstock stays up to the end too} */
    public String heldText() {
        boolean goesEarly = cuts.stream().anyMatch(cut -> cut.phase() == Phase.AWAY);
        return goesEarly ? lathe.held().textUntilPoint() : lathe.held().text();
    }

    /** {@return how fast it may turn} Throws {@link IllegalStateException} where no speed is offered. */
    public SpeedAdvice speeds() {
        return offered.orElseThrow(
                () -> new IllegalStateException("no speed is offered: the piece does not bear the tailstock's thrust"));
    }

    /**
     * Works it out.
     *
     * @param work the piece and what it is turned on
     * @return order of cuts, speeds and whip of that piece
     */
    public static Turning of(TurningProblem work) {
        Set<Integer> slender = SlenderMembers.of(work);
        List<Cut> cuts = CutOrder.of(work, slender);
        Optional<Whip> whip = work.stiffness()
                .map(each -> Whip.of(
                        work.pattern().outline(), BeamWood.of(each, work.density()), finished(work), sagPlaces(work)));
        Optional<Stage> blank = Optional.empty();
        List<Stage> later = List.of();
        if (work.stiffness().isPresent()) {
            BeamWood wood = BeamWood.of(work.stiffness().get(), work.density());
            CutStiffness stiffness = new CutStiffness(
                    work, wood, load(work, work.supports(), EndThrust.givenOrUsual(work.lathe())), slender);
            blank = Optional.of(stiffness.blank());
            later = stiffness.later();
            cuts = stiffness.reckoned(cuts);
        }
        SpeedAdvice speeds = SpeedAdvice.of(work.pattern(), work.lathe(), blank, later);
        List<Stage> stages = new ArrayList<>(blank.stream().toList());
        stages.addAll(later);
        List<Cut> numbered = numbered(cuts);
        Optional<BendingStrength> strength = strength(work, numbered);
        boolean borne = stages.stream().allMatch(Stage::borne);
        List<Warning> cautions = new ArrayList<>(Cautions.of(work, whip, stages, speeds));
        // A neck that breaks comes first of all but a piece that bows before it is cut.
        strength.ifPresent(each -> cautions.addAll(borne ? 0 : 1, StrengthCautions.of(work, each)));
        return new Turning(
                work.lathe(),
                work.stiffness(),
                whip,
                whip.filter(each -> !work.wantsNoSteady()).map(Whip::steady),
                stages,
                strength,
                borne ? Optional.of(speeds) : Optional.empty(),
                numbered,
                cautions,
                TurningWorkings.of(work, whip, strength, borne ? Optional.of(speeds) : Optional.empty()));
    }

    private static Optional<BendingStrength> strength(TurningProblem work, List<Cut> cuts) {
        return work.stiffness().flatMap(stiffness -> work.rupture().map(rupture -> {
            double margin = work.lathe().rules().strengthMargin();
            BeamLoad usual = load(work, work.supportsOfShaping(), EndThrust.givenOrUsual(work.lathe()));
            CutStrains strains =
                    new CutStrains(work, BeamWood.of(stiffness, work.density()), usual, rupture.mpa() / margin);
            return new BendingStrength(rupture, margin, strains.of(cuts));
        }));
    }

    /** The finished piece's figures count a thrust that the job gives; a supposed one only holds the speeds back. */
    private static BeamLoad finished(TurningProblem work) {
        return load(
                work,
                work.supportsOfShaping(),
                EndThrust.givenOrNone(work.lathe().tailstock()));
    }

    private static BeamLoad load(TurningProblem work, Supports supports, EndThrust thrust) {
        return new BeamLoad(supports, thrust, work.lathe().cutting());
    }

    private static List<Cut> numbered(List<Cut> cuts) {
        List<Cut> out = new ArrayList<>();
        cuts.forEach(cut -> out.add(cut.numbered(out.size() + 1)));
        return out;
    }

    private static List<Length> sagPlaces(TurningProblem work) {
        TreeSet<Length> out = new TreeSet<>();
        work.marks().stream().map(Mark::place).forEach(out::add);
        Length length = work.pattern().length();
        for (int i = 0; i <= SAG_PARTS; i++) {
            Length place = length.times(i / (double) SAG_PARTS);
            boolean there =
                    out.stream().anyMatch(each -> each.minus(place).abs().mm() < 1e-6);
            if (!there) {
                out.add(place);
            }
        }
        return List.copyOf(out);
    }
}
