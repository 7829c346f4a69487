package turnalike.web.job;

import java.util.List;
import turnalike.drawing.piece.SpindleDrawing;
import turnalike.drawing.piece.TwoOutlines;
import turnalike.job.Plan;
import turnalike.job.edit.WhatDiffers;
import turnalike.job.kept.JobText;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.web.kit.JobSteps;

/** One moment of a job's history: the piece and its settings as they were then, and laid over another moment. */
public final class MomentView {
    private static final Length WIDTH = Length.ofMm(290);
    private static final Length TALLEST = Length.ofMm(55);

    /**
     * The job after a step.
     *
     * @param step its number
     * @param text as it stood
     */
    record Moment(int step, JobText text) {}

    private final HistoryView history;
    private final Moment then;
    private final Moment other;
    private final Plan plan;
    private final boolean settled;

    /**
     * @param plan what follows from the text as it stood then
     * @param settled whether its settings are searched for no longer
     */
    MomentView(HistoryView history, Moment then, Moment other, Plan plan, boolean settled) {
        this.history = history;
        this.then = then;
        this.other = other;
        this.plan = plan;
        this.settled = settled;
    }

    /** Whether its settings stay as they are shown; else a search of a second may still find fewer. */
    public boolean isSettled() {
        return settled;
    }

    public String address() {
        return history.address();
    }

    public JobSteps steps() {
        return history.steps();
    }

    public String title() {
        return "%s after step %d".formatted(history.title(), then.step());
    }

    public int step() {
        return then.step();
    }

    /** The step that it is laid over. */
    public int with() {
        return other.step();
    }

    /** Whether it is how the job stands: then there is nothing to go back to. */
    public boolean isNow() {
        return then.step() == history.last();
    }

    /** What was done in this step, and when. */
    public String words() {
        return history.line(then.step())
                .map(line -> "%s: %s".formatted(line.time(), line.words()))
                .orElse("");
    }

    /** What it may be laid over. */
    public List<HistoryView.Line> choices() {
        return history.lines();
    }

    private UnitSystem units() {
        return plan.job().units();
    }

    /** The piece as it was. */
    public String drawing() {
        return SpindleDrawing.filling(plan.job().pattern(), units(), WIDTH, TALLEST)
                .svg()
                .inline();
    }

    /** Its length, weight and balance point as they were. */
    public List<FigureView> figures() {
        return PieceFigures.of(plan);
    }

    /** Its settings in a sentence. */
    public String settings() {
        return SettingsWords.of(plan, settled);
    }

    /** Each opening of the dividers and size of the calipers, as it was. */
    public List<String> openings() {
        return SettingsWords.openings(plan);
    }

    /** Both, one over the other. */
    public String overlaid() {
        return TwoOutlines.svg(version(then), version(other), WIDTH, TALLEST).inline();
    }

    private TwoOutlines.Version version(Moment moment) {
        String words = moment.step() == history.last() ? "as it stands now" : "after step " + moment.step();
        return new TwoOutlines.Version(moment.text().job().pattern().outline(), words);
    }

    /** What the other says differently. */
    public List<WhatDiffers.Difference> differences() {
        return then.step() <= other.step()
                ? WhatDiffers.between(then.text(), other.text())
                : WhatDiffers.between(other.text(), then.text());
    }

    /** The earlier step of the two. */
    public String earlier() {
        return named(Math.min(then.step(), other.step()));
    }

    /** The later step of the two. */
    public String later() {
        return named(Math.max(then.step(), other.step()));
    }

    /** A moment in a few words. */
    public String named(int step) {
        return step == history.last() ? "as it stands now" : "after step " + step;
    }
}
