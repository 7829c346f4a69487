package turnalike.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.set.CoarseScale;
import turnalike.job.set.FrameFit;
import turnalike.job.set.Misfit;
import turnalike.outline.Section;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Stock;
import turnalike.pattern.Turnability;
import turnalike.pattern.Warning;
import turnalike.settings.DividerOutcome;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.solid.Sensitivity;
import turnalike.solid.Solid;
import turnalike.stock.Blank;
import turnalike.stock.BlankNeed;
import turnalike.stock.Spares;
import turnalike.stock.StockPlan;
import turnalike.turning.EndSlopes;
import turnalike.turning.Held;
import turnalike.turning.Turning;
import turnalike.turning.TurningProblem;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * Everything that follows from a job file alone.
 *
 * @param job the order
 * @param solid the pattern's figures in the job's wood
 * @param marks in order of place
 * @param settings dividers and calipers
 * @param stock blanks and spares
 * @param turningLater the order of cuts, speed and whip, worked out when asked for
 * @param weights the members, the one whose diameter matters most to the mass first
 * @param frame how the pattern stands in its frame, if the job has one that asks something of it
 * @param lengths what follows for each length that the pieces are made in, in the order told; none where all are as drawn
 * @param spreadLater how finished weights will differ, worked out when asked for
 * @param year how the joints stand through the year, where the job says where the pieces will live
 * @param warnings what cannot be built, then what is unwise, in the order met
 */
public record Plan(
        Job job,
        Solid solid,
        List<Mark> marks,
        JobSettings settings,
        StockPlan stock,
        Lazy<Turning> turningLater,
        List<MemberWeight> weights,
        Optional<FrameFit> frame,
        List<LengthPlan> lengths,
        Lazy<SpreadForecast> spreadLater,
        Optional<YearOfJoints> year,
        List<Warning> warnings) {
    public Plan {
        lengths = List.copyOf(lengths);
        marks = List.copyOf(marks);
        weights = List.copyOf(weights);
        warnings = List.copyOf(warnings);
    }

    /**
     * Works everything out; only the divider search takes longer than an instant, and it keeps to the effort.
     *
     * @param job the order, as reading gave it: one whose wishes leave a sound plan
     * @param effort what the divider search may spend; spent early, it gives the best it has
     * @return the plan, its turning not worked out yet
     */
    public static Plan of(Job job, Effort effort) {
        int[] left = {1 + OneLength.of(job).size()};
        return of(job, problem -> {
            Effort own = left[0] == 1 ? effort : effort.share(1.0 / left[0]);
            left[0]--;
            return Dividers.solve(problem, own);
        });
    }

    /**
     * The same with another search for the divider settings: one that remembers what it found, say.
     *
     * @param job the order
     * @param search finds the openings; must answer with a plan whenever {@link Dividers#obstacles} names none, else
     *     {@link java.util.NoSuchElementException}
     * @return the plan, its turning not worked out yet
     */
    public static Plan of(Job job, Function<DividerProblem, DividerOutcome> search) {
        return of(job, search, EndSlopes.NONE);
    }

    /** @param own the slopes of its ends, where it has no frame to tell them */
    private static Plan of(Job job, Function<DividerProblem, DividerOutcome> search, EndSlopes own) {
        Pattern pattern = job.pattern();
        List<Mark> marks = pattern.marks();
        JobSettings settings = JobSettings.of(job, search);
        Optional<FrameFit> frame =
                job.frame().flatMap(each -> each.fit(pattern, job.wood().density(), job.units()));
        EndSlopes slopes = frame.map(FrameFit::slopes).orElse(own);
        List<Warning> warnings = new ArrayList<>();
        frame.ifPresent(each -> each.misfits().forEach(misfit -> warnings.add(warning(misfit))));
        job.frame()
                .flatMap(each -> each.otherwiseCounted(job.count()))
                .ifPresent(misfit -> warnings.add(warning(misfit)));
        warnings.addAll(Turnability.warnings(
                pattern, job.units(), hold(job), job.lathe().rules().shapes()));
        warnings.addAll(CuttingWarnings.of(job, settings));
        Optional<YearOfJoints> year = YearOfJoints.of(job);
        year.ifPresent(each -> warnings.addAll(each.warnings(job.units())));
        job.wood()
                .warnings()
                .forEach(problem -> warnings.add(new Warning(problem.where(), problem.what() + "; " + problem.mend())));
        Solid solid = Solid.of(pattern.outline(), job.wood().density());
        if (job.count() > 1) {
            CoarseScale.words(job.tolerances().weighing(), job.tolerances().massPct(), solid.mass())
                    .ifPresent(words -> warnings.add(new Warning("weights", words)));
        }
        StockPlan stock = stock(job);
        return new Plan(
                job,
                solid,
                marks,
                settings,
                stock,
                new Lazy<>(() -> turning(job, marks, settings, slopes)),
                weights(job),
                frame,
                OneLength.of(job).stream()
                        .map(each -> new LengthPlan(each, of(each.job(), search, slopes)))
                        .toList(),
                new Lazy<>(() -> SpreadForecast.of(job, stock)),
                year,
                warnings);
    }

    /**
     * {@return the same plan for the same order under another title, on which nothing here hangs; empty for any other order, and where the
     * pieces are of several lengths, each of which bears the title}
     *
     * @param other the order
     */
    public Optional<Plan> findTitled(Job other) {
        if (!lengths.isEmpty() || !job.titled(other.title()).equals(other)) {
            return Optional.empty();
        }
        return Optional.of(new Plan(
                other,
                solid,
                marks,
                settings,
                stock,
                turningLater,
                weights,
                frame,
                lengths,
                spreadLater,
                year,
                warnings));
    }

    private static Warning warning(Misfit misfit) {
        return new Warning(misfit.where(), misfit.said());
    }

    private static Turnability.Hold hold(Job job) {
        Held held = job.lathe().held();
        double greatest = 2 * job.pattern().outline().largestRadius().mm();
        return new Turnability.Hold(
                held.bears(Held.At.START),
                held.bears(Held.At.END),
                held.byOneEnd() ? Optional.of(held.at() == Held.At.START) : Optional.empty(),
                job.pattern().length().mm() >= job.lathe().rules().steadyFrom() * greatest);
    }

    /**
     * {@return the stock alone, which needs no search}
     *
     * @param job the order
     */
    public static StockPlan stock(Job job) {
        Stock stock = job.pattern().stock();
        boolean cornersStay = job.pattern().members().stream().anyMatch(member -> member.section() == Section.SQUARE);
        Blank blank = new Blank(stock.section(), stock.size(), stock.length());
        return new StockPlan(
                new BlankNeed(blank, job.pattern().length(), cornersStay),
                job.cutting().stock(),
                Spares.of(job.count(), job.lossRate()),
                job.wood().density());
    }

    private static Turning turning(Job job, List<Mark> marks, JobSettings settings, EndSlopes slopes) {
        return Turning.of(new TurningProblem(
                job.pattern(),
                marks,
                settings.dividers(),
                settings.calipers(),
                job.cutting().sizing(),
                job.tolerances().diameter(),
                job.wood().density(),
                job.wood().stiffness(),
                job.wood().rupture(),
                job.lathe(),
                slopes,
                job.units()));
    }

    private static List<MemberWeight> weights(Job job) {
        Length step = job.units() == UnitSystem.INCH ? Length.ofInches(1 / 64.0) : Length.ofMm(0.4);
        List<MemberWeight> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            Solid part = Solid.of(placed.outline(), job.wood().density());
            Sensitivity sensitivity =
                    Sensitivity.of(placed.outline(), job.wood().density());
            out.add(new MemberWeight(placed, part.mass(), sensitivity, step));
        }
        out.sort(Comparator.comparing(MemberWeight::perStep).reversed());
        return out;
    }

    /** {@return the question that {@link #settings} answers with its dividers} */
    public DividerProblem dividerProblem() {
        return JobSettings.problem(job);
    }

    /** {@return what ended the searches for it, of several lengths each} The one that promises least. */
    public Ending endedBy() {
        return lengths.stream()
                .map(each -> each.plan().endedBy())
                .reduce(settings.dividers().endedBy(), Ending::and);
    }

    /** {@return the widest divider opening used, but for pinned ones} */
    public Length largestOpening() {
        return job.wishes().largest(job.units());
    }

    /** {@return the narrowest divider opening used, but for pinned ones} */
    public Length smallestOpening() {
        return job.wishes().smallest(job.units());
    }

    /** {@return why the stick gives the marks that are out of reach of the dividers, half a sentence: no chain of openings …} */
    public String whyOutOfReach() {
        int steps = dividerProblem().mostSteps();
        return "no chain of openings from %s to %s reaches %s in %d step%s"
                .formatted(
                        smallestOpening().formatBoth(job.units()),
                        largestOpening().formatBoth(job.units()),
                        settings.dividers().given().outOfReach().size() == 1 ? "it" : "them",
                        steps,
                        steps == 1 ? "" : "s");
    }

    /** {@return the order of cuts, speed and whip; worked out at the first asking} */
    public Turning turning() {
        return turningLater.get();
    }

    /** {@return how finished weights will differ; simulated at the first asking} */
    public SpreadForecast spread() {
        return spreadLater.get();
    }

    /** {@return how the figures were found, in the order a person meets them} Works the turning out where nobody asked for it before. */
    public List<Working> workings() {
        List<Working> out = new ArrayList<>(workingsBeforeTurning());
        out.addAll(spread().workings());
        out.addAll(turning().workings());
        return out;
    }

    /** {@return the same without how the piece is turned, which then need not be worked out} */
    public List<Working> workingsBeforeTurning() {
        List<Working> out = new ArrayList<>();
        out.add(job.wood().working());
        out.add(solid.working());
        out.addAll(settings.workings());
        out.addAll(stock.workings(job.units()));
        frame.ifPresent(each -> out.addAll(each.workings()));
        year.ifPresent(each -> out.addAll(each.workings()));
        out.add(new Working(
                "where the weight sits",
                "adding δ to a member's diameter adds ρ(π∫r dx · δ + πL/4 · δ²)",
                Working.DERIVED,
                "exact for the drawn shape; members ordered by it, largest first"));
        return out;
    }
}
