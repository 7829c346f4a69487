package turnalike.web.wood;

import java.util.List;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.boards.JobBlanks;
import turnalike.job.edit.ShopTable;
import turnalike.job.kept.KeptJob;
import turnalike.job.pieces.BlankLog;
import turnalike.job.pieces.BlanksReport;
import turnalike.stock.boards.Wanted;
import turnalike.units.Article;
import turnalike.units.Problem;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;
import turnalike.web.job.FigureView;
import turnalike.web.job.StockFigures;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;

/**
 * An order's wood, as its page shows it.
 *
 * @param kept the job
 * @param plan what follows from it
 * @param log what its log says of the blanks
 * @param search for how the boards are cut, if one runs for them as they stand
 * @param state how they are cut, as it is kept
 * @param typed what was sent and could not be kept
 */
public record WoodView(
        KeptJob kept, Plan plan, BlankLog log, Optional<CutSearch> search, CutState state, TypedRow typed) {
    private Job job() {
        return kept.text().job();
    }

    private UnitSystem units() {
        return job().units();
    }

    public String address() {
        return JobAddress.address(kept.id());
    }

    public String here() {
        return address() + "/wood";
    }

    public String title() {
        return job().title();
    }

    /** What can be taken back here. */
    public JobSteps steps() {
        return JobSteps.of(kept);
    }

    public List<FigureView> figures() {
        return StockFigures.of(Plan.stock(job()), units(), job().tolerances().weighing());
    }

    /** The rough blanks, a line for each length. */
    public List<String> wanted() {
        return JobBlanks.order(JobBlanks.named(List.of("job"), List.of(job())), List.of()).wanted().stream()
                .map(this::wanted)
                .toList();
    }

    private String wanted(Wanted each) {
        return "%s: %s, %s square and %s long%s"
                .formatted(
                        each.job(),
                        Article.count(each.count(), "rough blank"),
                        each.size().formatBoth(units()),
                        each.length().formatBoth(units()),
                        each.wood().map(wood -> ", " + wood).orElse(""));
    }

    public TableView boards() {
        return TableView.of(ShopTable.BOARDS, kept.text(), typed);
    }

    public TableView blanks() {
        TableView table = TableView.of(ShopTable.BLANKS, kept.text(), typed);
        return forecast()
                .map(each -> table.telling(BlanksView.heads(job().tolerances().masses()), each.rows()))
                .orElse(table);
    }

    /** Whether it is still being looked for how the boards are cut. */
    public boolean isCutting() {
        return search.isPresent() && !search.get().isDone();
    }

    public String progress() {
        return search.map(CutSearch::progress).orElse("");
    }

    /** How they are cut, once that is found. */
    public Optional<CutView> cut() {
        return CutView.of(state);
    }

    /** Whether they were cut once, but boards, blanks or sawing are others now. */
    public boolean isOutOfDate() {
        return state.isOutOfDate();
    }

    /** Other jobs that can be sawn along. */
    public List<CutState.Choice> choices() {
        return state.choices();
    }

    /** Whether other jobs' blanks are cut too, and which. */
    public String along() {
        return String.join(", ", state.along());
    }

    /** Why nothing can be said of the blanks; empty when it can. */
    public List<Problem> blankProblems() {
        return BlanksReport.problems(job(), job().shop().blanks());
    }

    /** What the blanks will give; empty while none is weighed, or one cannot be. */
    public Optional<BlanksView> forecast() {
        return job().shop().blanks().isEmpty() || !blankProblems().isEmpty()
                ? Optional.empty()
                : Optional.of(BlanksView.of(BlanksReport.of(job(), job().shop().blanks(), log), log));
    }

    public List<String> losses() {
        return BlanksView.losses(log.losses(job().lossRate(), job().shop().blanks()), log, job().count());
    }

    /** How far the finished weights will differ, before any is turned. */
    public String spread() {
        return SentenceCase.capital(plan.spread().sentence()) + ".";
    }

    /** The joints through the year; empty while the job does not say where its pieces will live. */
    public Optional<YearView> year() {
        return plan.year().map(year -> YearView.of(year, units()));
    }
}
