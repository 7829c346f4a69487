package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import turnalike.effort.Ending;
import turnalike.frame.Counterweight;
import turnalike.frame.Moment;
import turnalike.match.Candidate;
import turnalike.match.Expected;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * A set on a wheel.
 *
 * @param frame the wheel
 * @param placement which piece stands where
 * @param roundness how round the rim comes out, if the lengths were measured
 * @param grade how the unbalance stands at the wheel's speed, if that is told
 * @param whole the wheel with what its pieces weigh, hub and rim as far as they are told
 * @param units in which lengths are told
 * @param pulls what hub and rim pull, part by part; none where nothing is told of them
 * @param endedBy what ended the search for it; by proof only where what was placed is proven to have the least unbalance
 * @param handWork what a person settled of it
 * @param nextSet what the left-over pieces are good for
 * @param weighing how its masses are told
 * @param warnings what to know before believing it
 * @param workings how the figures were found
 */
public record WheelSet(
        OnWheel frame,
        WheelPlacement placement,
        Optional<Roundness> roundness,
        Optional<SpeedGrade> grade,
        WholeWheel whole,
        UnitSystem units,
        List<Pull> pulls,
        Ending endedBy,
        HandWork handWork,
        Optional<NextPieces> nextSet,
        WeighingScale weighing,
        List<String> warnings,
        List<Working> workings)
        implements SetMatch {
    public WheelSet {
        pulls = List.copyOf(pulls);
        warnings = List.copyOf(warnings);
        workings = List.copyOf(workings);
    }

    /**
     * {@return in how many seconds the built wheel would rock, in a sentence; empty where hub and rim are not told} It is told of what is to be
     * expected, not of what the weights leave: a swing shows all that is off.
     */
    public Optional<String> rockingInWords() {
        Expected expected = placement.expected();
        OptionalDouble usual = whole.periodS(expected.meanGMm());
        if (usual.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble slow = whole.periodS(expected.fromGMm());
        OptionalDouble quick = whole.periodS(expected.toGMm());
        String range = expected.unseenGMm() == 0 || slow.isEmpty() || quick.isEmpty()
                ? ""
                : said(
                        ", nine wheels of ten in %s to %s",
                        WholeWheel.seconds(quick.getAsDouble()), WholeWheel.seconds(slow.getAsDouble()));
        return Optional.of(said(
                "built, it would rock there and back in %s by %s g·mm on a free and level axle%s: quicker, and more is off",
                WholeWheel.seconds(usual.getAsDouble()), Moment.figure(expected.meanGMm()), range));
    }

    /** {@return what the unbalance left is the sum of: the pieces in their places, then each part of hub and rim; none where these pull nothing} */
    public List<Pull> parts() {
        if (pulls.isEmpty()) {
            return List.of();
        }
        List<Moment> all = new ArrayList<>(List.of(placement.unbalance()));
        pulls.forEach(pull -> all.add(pull.moment().opposite()));
        List<Pull> out = new ArrayList<>(List.of(new Pull("the pieces in their places", Moment.sum(all))));
        out.addAll(pulls);
        return out;
    }

    /** {@return the same in a sentence; empty where there is nothing to tell apart} */
    public Optional<String> partsInWords() {
        return parts().isEmpty()
                ? Optional.empty()
                : Optional.of("it is the sum of: "
                        + parts().stream()
                                .map(part -> said(
                                        "%s %s toward %s",
                                        part.from(),
                                        part.moment().format(),
                                        part.moment().at().formatDirection()))
                                .collect(Collectors.joining("; ")));
    }

    /** What decided which set and order was placed. */
    public enum ChosenBy {
        /** The smallest unbalance. */
        BALANCE,
        /** Of those balanced alike, the roundest. */
        ROUNDNESS,
        /** Of those balanced alike, the set most alike. */
        LIKENESS,
        /** The smallest unbalance to be expected, since some balance points were measured and others not. */
        EXPECTED,
        /** A person, for some of the places or all. */
        HAND;

        /** {@return its word in an answer} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** {@return what decided which set and order was placed} */
    public ChosenBy chosenBy() {
        if (handWork.hand().isAny()) {
            return ChosenBy.HAND;
        }
        if (roundness.filter(Roundness::choseOrder).isPresent()) {
            return ChosenBy.ROUNDNESS;
        }
        if (warnings.contains(AlikerSet.CHOSEN)) {
            return ChosenBy.LIKENESS;
        }
        return warnings.stream().anyMatch(SurerSet::isSaidIn) ? ChosenBy.EXPECTED : ChosenBy.BALANCE;
    }

    @Override
    public List<String> spareLabels() {
        return placement.spares().stream().map(Candidate::label).toList();
    }

    @Override
    public Verdict verdict() {
        Moment unbalance = placement.unbalance();
        String less = chosenBy() == ChosenBy.HAND ? handWork.sureness() : otherwise();
        String sure = placement.bestProven() ? "no other choice or order has less" : less;
        List<String> out = new ArrayList<>();
        String heavy = placement.isHeavyOnOneSide() // else the side named would be chance
                ? ", heavy at " + unbalance.at().formatDirection()
                : "";
        out.add(said("%s left%s%s; %s", placement.left(), asIf(unbalance), heavy, sure));
        out.addAll(handWork.sentences());
        partsInWords().ifPresent(out::add);
        out.add(said("the scale's noise alone is %s g·mm: %s", Moment.figure(placement.noiseFloorGMm()), seen()));
        out.addAll(ExpectedWords.of(placement));
        rockingInWords().ifPresent(out::add);
        if (placement.isHeavyOnOneSide()) { // else a counterweight would correct what scatters, not the wheel
            frame.counterweightRadius()
                    .map(unbalance::counterweight)
                    .map(this::cancelling)
                    .ifPresent(out::add);
        }
        return new Verdict("Balance", out);
    }

    /** What a moment is to somebody who has a lump of wax in hand; of less than a hundredth of a gram there is none to stick on. */
    private String asIf(Moment unbalance) {
        Length at = whole.trialAt();
        Mass lump = Mass.ofGrams(unbalance.gMm() / at.mm());
        double count = weighing.unit().count(lump);
        return lump.grams() < 0.01
                ? ""
                : said(
                        ", as if %s %s sat %s from the axle",
                        PlainNumber.toFigures(count, 1 + (count >= 10 ? 1 : 0)),
                        weighing.unit().symbol(),
                        at.formatBoth(units));
    }

    private String otherwise() {
        return chosenBy() != ChosenBy.BALANCE ? "another order has less" : Verdict.MAY_BE_LESS;
    }

    @Override
    public List<String> order() {
        return placement.seats().stream().map(seat -> seat.piece().label()).toList();
    }

    @Override
    public double leftOver() {
        return placement.unbalance().gMm();
    }

    /** {@inheritDoc} Of two that the scale cannot tell from balanced, the rounder one is better. */
    @Override
    public boolean isBetterThan(SetMatch other) {
        boolean alike = other instanceof WheelSet
                && passes() == other.passes()
                && leftOver() <= placement.noiseFloorGMm()
                && other.leftOver() <= placement.noiseFloorGMm();
        if (alike && other instanceof WheelSet wheel && roundness.isPresent() && wheel.roundness.isPresent()) {
            double has = roundness.get().placed().rim().runOut().mm();
            double had = wheel.roundness.get().placed().rim().runOut().mm();
            return has < had - 1e-6;
        }
        return SetMatch.super.isBetterThan(other);
    }

    private String seen() {
        if (placement.isWithinScale()) {
            return "balanced to within what your scale can see";
        }
        return placement.unbalance().gMm() > placement.noiseFloorGMm()
                ? "more than the scale's own noise"
                : "what is left is less, but the scale does not see all";
    }

    private String cancelling(Counterweight weight) {
        return said(
                "to cancel it: %s at %s, %s from the axle, or as much off at %s",
                weighing.reckoned(weight.mass()),
                weight.at().formatDirection(),
                weight.radius().formatBoth(units),
                weight.removeAt().formatDirection());
    }

    @Override
    public List<String> remarks() {
        List<String> out = new ArrayList<>();
        String apart = weighing.apart(placement.massSpread());
        out.add(
                weighing.shows(placement.massSpread())
                        ? "masses within %s of one another".formatted(apart)
                        : "masses %s apart".formatted(apart));
        out.addAll(SetMatch.super.remarks());
        return out;
    }

    private static String said(String text, Object... values) {
        return String.format(Locale.ROOT, text, values);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.wheel(this);
    }
}
