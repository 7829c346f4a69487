package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import turnalike.effort.Effort;
import turnalike.match.Candidate;
import turnalike.match.Placement;
import turnalike.match.WheelMatch;
import turnalike.match.WheelProblem;
import turnalike.pattern.Pattern;
import turnalike.pattern.Placed;
import turnalike.pattern.Tenon;
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
 * @param warnings what to know before believing it
 */
public record WheelSet(JobFrame.OnWheel frame, Placement placement, List<String> warnings) implements SetMatch {
    public WheelSet {
        warnings = List.copyOf(warnings);
    }

    /** Where the hub tenon's shoulder stands, and whether there is a tenon at all. */
    private record Shoulder(Length place, boolean onTenon) {}

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
        Placement placement = WheelMatch.solve(problem(job, frame, pieces, strict), effort);
        List<String> warnings = new ArrayList<>(placement.warnings());
        if (!shoulder(job.pattern(), frame).onTenon()) {
            warnings.add("the pattern has no tenon at its hub end, so the hub radius is taken to the piece's own end");
        }
        return new WheelSet(frame, placement, warnings);
    }

    private static WheelProblem problem(Job job, JobFrame.OnWheel frame, List<Piece> pieces, boolean strict) {
        Length patternBalance =
                Solid.of(job.pattern().outline(), job.wood().density()).balance();
        List<Candidate> candidates = new ArrayList<>();
        for (Piece piece : pieces) {
            Length balance = piece.balance().orElse(patternBalance);
            Length reach = frame.wheel().reach(fromShoulder(job.pattern(), frame, balance));
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

    /** From the hub tenon's shoulder outward to the balance point, which is measured from the start end. */
    private static Length fromShoulder(Pattern pattern, JobFrame.OnWheel frame, Length balance) {
        Length shoulder = shoulder(pattern, frame).place();
        return frame.hubEnd() == JobFrame.HubEnd.START ? balance.minus(shoulder) : shoulder.minus(balance);
    }

    private static Shoulder shoulder(Pattern pattern, JobFrame.OnWheel frame) {
        List<Placed> run = pattern.placed();
        boolean atStart = frame.hubEnd() == JobFrame.HubEnd.START;
        Placed outer = atStart ? run.get(0) : run.get(run.size() - 1);
        if (outer.member() instanceof Tenon) {
            return new Shoulder(atStart ? outer.end() : outer.start(), true);
        }
        return new Shoulder(atStart ? Length.ZERO : pattern.length(), false);
    }

    @Override
    public List<Working> workings() {
        return placement.workings();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.wheel(this);
    }
}
