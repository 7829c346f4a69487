package turnalike.api;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import turnalike.drawing.model.StationTable;
import turnalike.drawing.model.StlFile;
import turnalike.drawing.model.ThreeMfFile;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.Job;
import turnalike.job.Lazy;
import turnalike.job.Plan;
import turnalike.job.answer.MatchJson;
import turnalike.job.answer.PlanJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.SetMatch;
import turnalike.outline.Section;
import turnalike.pieces.PiecesFile;
import turnalike.settings.CaliperSetting;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.solid.Mesh;
import turnalike.solid.Solid;
import turnalike.turning.Cut;
import turnalike.turning.Turning;
import turnalike.units.Length;
import turnalike.units.Problem;

/**
 * One order, read from a job file's text: a pattern, its wood and what it goes into. What takes a search ({@link #settings}, {@link #turning},
 * {@link #planJson}) is worked out at the first asking, in a fixed count of steps, so the same text gives the same answer.
 */
public final class SpindleOrder {
    private final Job job;
    private final Lazy<Plan> plan;

    private SpindleOrder(Job job) {
        this.job = job;
        this.plan = new Lazy<>(() -> Plan.of(job, Effort.usual()));
    }

    /**
     * {@return the order that a job file tells of}
     *
     * @param jobFile the whole text, JSON as docs/job-file.md describes it
     * @throws WrongInput with every problem in it
     */
    public static SpindleOrder read(String jobFile) {
        Job.Read read = JobReader.read(jobFile);
        return new SpindleOrder(read.job().orElseThrow(() -> new WrongInput(read.problems())));
    }

    /** {@return the turner's title of it} */
    public String title() {
        return job.title();
    }

    /** {@return the finished piece's length} */
    public Length length() {
        return job.pattern().length();
    }

    /**
     * {@return the radius at a place, half the side where it is square; on a shoulder, of the part that ends there}
     *
     * @param place from the start end; outside the piece its nearer end counts
     */
    public Length radiusAt(Length place) {
        return job.pattern().outline().radiusAt(place);
    }

    /**
     * {@return whether the piece is left square there}
     *
     * @param place from the start end; outside the piece its nearer end counts
     */
    public boolean isSquareAt(Length place) {
        return job.pattern().outline().sectionAt(place) == Section.SQUARE;
    }

    /** {@return what a finished piece weighs and where} */
    public SolidFigures solid() {
        Solid solid = Solid.of(job.pattern().outline(), job.wood().density());
        return new SolidFigures(
                solid.volumeMm3(), solid.mass(), solid.balance(), solid.spinInertiaGMm2(), solid.swingInertiaGMm2());
    }

    /** {@return every mark, in order of place, both ends among them} */
    public List<LayoutLine> marks() {
        return job.pattern().marks().stream()
                .map(mark -> new LayoutLine(mark.place(), mark.label()))
                .toList();
    }

    /** {@return the fewest openings found that lay the piece out and size it} */
    public LayoutSettings settings() {
        DividerPlan found = plan.get().settings().dividers();
        return new LayoutSettings(
                found.settings().stream().map(SpindleOrder::opening).toList(),
                plan.get().settings().calipers().stream()
                        .map(SpindleOrder::opening)
                        .toList(),
                found.listOnTheStick(),
                found.worst(),
                found.lowerBound(),
                found.fewestProven());
    }

    private static ToolOpening opening(DividerSetting setting) {
        return new ToolOpening(
                setting.opening(),
                setting.steps().stream()
                        .map(DividerStep::to)
                        .distinct()
                        .sorted()
                        .toList());
    }

    private static ToolOpening opening(CaliperSetting setting) {
        return new ToolOpening(setting.opening(), setting.members());
    }

    /** {@return how it is turned, with its cautions} */
    public LatheWork turning() {
        Turning turning = plan.get().turning();
        OptionalDouble slowest = turning.offered().stream()
                .mapToDouble(speeds -> speeds.turning().from().rpm())
                .findFirst();
        OptionalDouble fastest = turning.offered().stream()
                .mapToDouble(speeds -> speeds.turning().to().rpm())
                .findFirst();
        return new LatheWork(
                turning.cuts().stream().map(SpindleOrder::step).toList(),
                slowest,
                fastest,
                turning.cautions().stream().map(caution -> caution.sentence()).toList());
    }

    private static LatheStep step(Cut cut) {
        return new LatheStep(cut.order(), cut.what(), cut.from(), cut.to(), cut.caution());
    }

    /** {@return every figure of the plan, as {@code plan --json} prints it: lengths in mm, masses in g} */
    public String planJson() {
        return PlanJson.print(plan.get());
    }

    /** {@return the piece as a body to print, binary STL in millimetres; closed, its volume within 0.01 % of {@link SolidFigures#volumeMm3}} */
    public byte[] stl() {
        return StlFile.of(Mesh.of(job.pattern().outline()), job.title());
    }

    /** {@return the same body with its unit and name, 3MF} */
    public byte[] threeMf() {
        return ThreeMfFile.of(Mesh.of(job.pattern().outline()), job.title());
    }

    /**
     * {@return a table of places and diameters as CSV, in the order's units}
     *
     * @param step between rows, above zero, else {@link IllegalArgumentException}
     */
    public String stations(Length step) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("the step must be above zero, was %s mm".formatted(step.mm()));
        }
        return StationTable.of(job.pattern(), job.units(), step);
    }

    /**
     * {@return the set chosen from these pieces and placed in the order's frame} Searches a fixed count of steps: about a second for a wheel.
     *
     * @param pieces a pieces file's whole text, CSV as the readme describes it
     * @throws WrongInput with every problem in the file, or with what keeps these pieces from being placed
     */
    public PlacedSet place(String pieces) {
        PiecesFile.Read read = PiecesFile.parse(pieces, job.units());
        List<Problem> problems = new ArrayList<>(read.problems());
        if (problems.isEmpty()) {
            problems.addAll(MatchJob.problems(job, read.pieces()));
        }
        if (!problems.isEmpty()) {
            throw new WrongInput(problems);
        }
        SetMatch match = MatchJob.of(job, read.pieces(), false, Effort.usual());
        return new PlacedSet(
                match.order(),
                match.spareLabels(),
                match.leftOver(),
                match.endedBy() == Ending.PROOF,
                match.warnings(),
                MatchJson.print(match, ColumnTargets.questions(job, read)));
    }
}
