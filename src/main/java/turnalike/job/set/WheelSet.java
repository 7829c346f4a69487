package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.JobFrame;
import turnalike.match.Candidate;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelMatch;
import turnalike.match.WheelProblem;
import turnalike.pieces.Piece;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.Working;

/**
 * A set on a wheel.
 *
 * @param frame the wheel
 * @param placement which piece stands where
 * @param roundness how round the rim comes out, if the lengths were measured
 * @param grade how the unbalance stands at the wheel's speed, if that is told
 * @param nextSet what the left-over pieces are good for
 * @param warnings what to know before believing it
 * @param workings how the figures were found
 */
public record WheelSet(
        JobFrame.OnWheel frame,
        WheelPlacement placement,
        Optional<Roundness> roundness,
        Optional<SpeedGrade> grade,
        Optional<NextPieces> nextSet,
        List<String> warnings,
        List<Working> workings)
        implements SetMatch {
    /**
     * Placing's share of the effort when balance will be weighed against roundness: the more, as the weighing starts from what placing found.
     */
    private static final double PLACING_SHARE = 0.6;

    public WheelSet {
        warnings = List.copyOf(warnings);
        workings = List.copyOf(workings);
    }

    static List<Problem> problems(Job job, JobFrame.OnWheel frame, List<Piece> pieces) {
        List<Problem> out = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.mass().isEmpty()) {
                out.add(new Problem("piece " + piece.label(), "has no mass", "weigh it, or take it out of the file"));
            }
        }
        return out.isEmpty() ? problem(job, frame, pieces, false).problems() : out;
    }

    static WheelSet of(Job job, JobFrame.OnWheel frame, List<Piece> pieces, boolean strict, Effort effort) {
        Effort placing = RimReading.expected(frame, pieces) ? effort.share(PLACING_SHARE) : effort;
        WheelPlacement best = WheelMatch.solve(problem(job, frame, pieces, strict), placing);
        Seating seating = Seating.of(job.pattern(), frame.hubEnd());
        RimReading reading = RimReading.of(frame, seating, pieces, best);
        Optional<Roundness> roundness = reading.rim().map(rim -> Roundness.of(rim, best, strict, effort));
        WheelPlacement placement = roundness.map(each -> RounderPlacement.of(best, each)).orElse(best);
        Optional<SpeedGrade> grade = frame.revPerMin().isPresent()
                ? Optional.of(SpeedGrade.of(placement, frame.revPerMin().getAsDouble()))
                : Optional.empty();
        List<NextPieces.Spare> spares = placement.spares().stream()
                .map(spare -> new NextPieces.Spare(spare.label(), spare.mass()))
                .toList();
        List<String> warnings = new ArrayList<>(placement.warnings());
        if (!seating.onTenon()) {
            warnings.add("the pattern has no tenon at its hub end, so the hub radius is taken to the piece's own end");
        }
        warnings.addAll(reading.notes());
        roundness.filter(Roundness::choseOrder).ifPresent(each -> warnings.add(each.note()));
        grade.ifPresent(each -> warnings.add(SpeedGrade.caution()));
        List<Working> workings = new ArrayList<>(placement.workings());
        frame.bare().rocking().ifPresent(each -> workings.add(each.working()));
        roundness.ifPresent(each -> workings.addAll(each.workings()));
        grade.ifPresent(each -> workings.add(SpeedGrade.working()));
        return new WheelSet(
                frame,
                placement,
                roundness,
                grade,
                NextPieces.of(spares, frame.wheel().places(), job.tolerances().massPct()),
                warnings,
                workings);
    }

    private static WheelProblem problem(Job job, JobFrame.OnWheel frame, List<Piece> pieces, boolean strict) {
        Length patternBalance =
                Solid.of(job.pattern().outline(), job.wood().density()).balance();
        Seating seating = Seating.of(job.pattern(), frame.hubEnd());
        List<Candidate> candidates = new ArrayList<>();
        for (Piece piece : pieces) {
            Length balance = piece.balance().orElse(patternBalance);
            Length reach = frame.wheel().reach(seating.fromShoulder(balance));
            candidates.add(new Candidate(piece.label(), piece.mass().orElseThrow(), reach));
        }
        return new WheelProblem(
                candidates,
                frame.wheel(),
                job.tolerances().massPct(),
                job.tolerances().scale(),
                frame.givenMoments(),
                strict);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.wheel(this);
    }
}
