package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Watch;
import turnalike.match.Candidate;
import turnalike.match.Spoke;
import turnalike.match.TradeOff;
import turnalike.match.Unlikeness;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Likeness;
import turnalike.pieces.PairDifferences;
import turnalike.pieces.Piece;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.Working;

/** How a wheel's set is chosen: which pieces, in which order round it, and what is to be told of how that came about. */
final class ChosenWheel {
    private ChosenWheel() {}

    /** What keeps those pieces from being placed; nothing where they can be. */
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

    /** The set as it is found with that effort; {@code strict} goes on below what the scale can tell. */
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
                        WeighedRoundness.of(rim, best, unlikeness(terms, pieces, pieces(rim)), terms, frame, strict));
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

    /** How unlike two of those are to the eye of the job. */
    private static Unlikeness unlikeness(SetTerms terms, List<Piece> pieces, List<Candidate> candidates) {
        Map<String, Piece> byLabel = pieces.stream().collect(Collectors.toMap(Piece::label, Function.identity()));
        Likeness likeness = terms.likeness(pieces);
        List<Piece> listed = candidates.stream()
                .map(candidate -> byLabel.get(candidate.label()))
                .toList();
        return new PairDifferences(likeness, listed)::between;
    }

    private static List<Candidate> pieces(TradeOff.Rim rim) {
        return rim.spokes().stream().map(Spoke::piece).toList();
    }
}
