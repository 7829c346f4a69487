package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Watch;
import turnalike.frame.Counterweight;
import turnalike.frame.Moment;
import turnalike.match.Candidate;
import turnalike.match.Expected;
import turnalike.match.Spoke;
import turnalike.match.TradeOff;
import turnalike.match.Unlikeness;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Likeness;
import turnalike.pieces.Piece;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
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

    static List<Problem> problems(SetTerms terms, OnWheel frame, List<Piece> pieces) {
        List<Problem> out = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.mass().isEmpty()) {
                out.add(new Problem("piece " + piece.label(), "has no mass", "weigh it, or take it out of the file"));
            }
        }
        if (out.isEmpty()) {
            out.addAll(problem(terms, frame, pieces, false).problems());
            out.addAll(terms.hand().problems(frame.wheel().places(), pieces));
        }
        return out;
    }

    static WheelSet of(SetTerms terms, OnWheel frame, List<Piece> pieces, boolean strict, Effort effort) {
        boolean outward = frame.hubEnd() == End.START;
        WheelScatter scatter = new WheelScatter(terms, frame, pieces);
        Watch watch = Watch.over(effort);
        if (terms.hand().isAny()) {
            HandWheel hand = HandWheel.of(terms, frame, problem(terms, frame, pieces, strict), pieces, watch);
            WheelPlacement stood = hand.placement().with(scatter.of(hand.placement(), outward));
            return of(
                    terms,
                    frame,
                    pieces,
                    new Placed(stood, hand.roundness(), hand.notes(), hand.work()),
                    strict,
                    watch.ending(hand.work().leastOfRest() || terms.hand().stands()));
        }
        SurerSet chosen = SurerSet.of(problem(terms, frame, pieces, strict), pieces, scatter, outward, watch);
        WheelProblem problem = chosen.problem();
        WheelPlacement best = chosen.best();
        Seating seating = Seating.of(terms.pattern(), frame.hubEnd());
        RimReading reading = RimReading.of(frame, seating, pieces, problem, best);
        Optional<WheelPlacement> aliker = reading.rim().isPresent()
                ? Optional.empty()
                : AlikerSet.of(
                                problem,
                                best,
                                unlikeness(terms, pieces, problem.pieces()),
                                each -> scatter.of(each, outward).noiseGMm(),
                                watch)
                        .filter(each -> chosen.keeps(scatter.expectedGMm(each, outward)));
        Optional<Roundness> roundness = reading.rim()
                .map(rim ->
                        Roundness.of(rim, best, unlikeness(terms, pieces, pieces(rim)), terms, frame.runOut(), strict));
        WheelPlacement rounder = aliker.or(() -> roundness.map(each -> RounderPlacement.of(problem, best, each)))
                .orElse(best);
        WheelPlacement placement = chosen.withAllSpares(rounder).with(scatter.of(rounder, outward));
        List<String> notes = new ArrayList<>(chosen.notes());
        notes.addAll(reading.notes());
        roundness.filter(Roundness::choseOrder).ifPresent(each -> notes.add(each.note()));
        aliker.ifPresent(each -> notes.add(AlikerSet.CHOSEN));
        return of(
                terms,
                frame,
                pieces,
                new Placed(placement, roundness, notes, HandWork.NONE),
                strict,
                watch.ending(placement.bestProven()));
    }

    /** What was placed, and what is to be told of how it came about. */
    private record Placed(WheelPlacement placement, Optional<Roundness> roundness, List<String> notes, HandWork hand) {}

    private static WheelSet of(
            SetTerms terms, OnWheel frame, List<Piece> pieces, Placed placed, boolean strict, Ending ending) {
        WheelPlacement placement = placed.placement();
        Optional<Roundness> roundness = placed.roundness();
        WheelFit fit = WheelFitting.of(frame, terms.pattern(), terms.density(), terms.units());
        Optional<SpeedGrade> grade = frame.revPerMin().isPresent()
                ? Optional.of(SpeedGrade.of(placement, frame.revPerMin().getAsDouble(), fit.whole()))
                : Optional.empty();
        List<NextPieces.Spare> spares = placement.spares().stream()
                .map(spare -> new NextPieces.Spare(spare.label(), spare.mass()))
                .toList();
        List<String> warnings = new ArrayList<>();
        fit.misfits().stream().filter(Misfit::forbids).forEach(each -> warnings.add(each.where() + ": " + each.said()));
        warnings.addAll(placement.warnings());
        CoarseScale.words(terms, pieces).ifPresent(warnings::add);
        if (!Seating.of(terms.pattern(), frame.hubEnd()).onTenon()) {
            warnings.add("the pattern has no tenon at its hub end, so the hub radius is taken to the piece's own end");
        }
        warnings.addAll(placed.notes());
        roundness
                .filter(each -> !strict)
                .flatMap(each -> each.unmet(frame.runOut()))
                .ifPresent(warnings::add);
        grade.ifPresent(each -> warnings.add(SpeedGrade.caution()));
        List<Working> workings = new ArrayList<>(placement.workings());
        workings.add(WheelScatter.working());
        frame.bare().rocking().ifPresent(each -> workings.add(each.working()));
        roundness.ifPresent(each -> workings.addAll(each.workings()));
        grade.ifPresent(each -> workings.add(each.working()));
        fit.whole().working().ifPresent(workings::add);
        return new WheelSet(
                frame,
                placement,
                roundness,
                grade,
                fit.whole().withSpokes(weighed(placement)),
                terms.units(),
                frame.pulls(terms.pattern()),
                ending,
                placed.hand(),
                terms.unlessGlance(
                        () -> NextPieces.of(spares, pieces, frame.wheel().places(), terms.massPct())),
                terms.weighing(),
                warnings,
                workings);
    }

    private static Mass weighed(WheelPlacement placement) {
        return Mass.ofGrams(placement.seats().stream()
                .mapToDouble(seat -> seat.piece().mass().grams())
                .sum());
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

    /** How unlike two of those are to the eye of the job. */
    private static Unlikeness unlikeness(SetTerms terms, List<Piece> pieces, List<Candidate> candidates) {
        Map<String, Piece> byLabel = pieces.stream().collect(Collectors.toMap(Piece::label, Function.identity()));
        Likeness likeness = terms.likeness(pieces);
        List<Piece> listed = candidates.stream()
                .map(candidate -> byLabel.get(candidate.label()))
                .toList();
        return (one, other) -> likeness.difference(listed.get(one), listed.get(other));
    }

    private static List<Candidate> pieces(TradeOff.Rim rim) {
        return rim.spokes().stream().map(Spoke::piece).toList();
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

    private static WheelProblem problem(SetTerms terms, OnWheel frame, List<Piece> pieces, boolean strict) {
        Length patternBalance =
                Solid.of(terms.pattern().outline(), terms.density()).balance();
        Seating seating = Seating.of(terms.pattern(), frame.hubEnd());
        List<Candidate> candidates = new ArrayList<>();
        for (Piece piece : pieces) {
            Length balance = piece.balance().orElse(patternBalance);
            Length reach = frame.wheel().reach(seating.fromShoulder(balance));
            candidates.add(new Candidate(piece.label(), piece.mass().orElseThrow(), reach));
        }
        return new WheelProblem(
                candidates,
                frame.wheel(),
                terms.massPct(),
                terms.scale(),
                frame.givenMoments(terms.pattern()),
                strict,
                frame.seatDepths());
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
        out.add(said("%s left%s; %s", unbalance.format(), heavy, sure));
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
        out.add("masses within %s of one another".formatted(weighing.reading(placement.massSpread())));
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
