package turnalike.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.drawing.board.BoardDrawing;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.job.boards.BoardNotes;
import turnalike.job.boards.BoardWords;
import turnalike.job.boards.JobBlanks;
import turnalike.job.boards.WoodToBuy;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.Wanted;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What to saw, on landscape pages for the shop: what is missing, the blanks, then board after board with its picture and its cuts. */
public final class CutSheet {
    private static final double AFTER_PICTURE_MM = 1;
    private static final double HEADING_MM = 8;

    /** The longest left-overs are told; a rack holds no more. */
    private static final int MOST_KEPT = 20;

    private final List<JobBlanks.Named> jobs;
    private final CuttingPlan plan;
    private final UnitSystem units;

    private CutSheet(List<JobBlanks.Named> jobs, CuttingPlan plan) {
        this.jobs = jobs;
        this.plan = plan;
        this.units = JobBlanks.units(jobs);
    }

    /**
     * The sheet.
     *
     * @param jobs whose blanks are cut, at least one
     * @param plan how
     * @param date as it is to be printed
     */
    public static Sheet of(List<JobBlanks.Named> jobs, CuttingPlan plan, String date, Paper paper) {
        return new CutSheet(jobs, plan).sheet(date, paper);
    }

    /** Each board's picture by the name of its file, at the given width. */
    public static Map<String, Svg> drawings(List<JobBlanks.Named> jobs, CuttingPlan plan, Length width) {
        CutSheet sheet = new CutSheet(jobs, plan);
        Map<String, Svg> out = new LinkedHashMap<>();
        for (int i = 0; i < plan.boards().size(); i++) {
            out.put("board-%d.svg".formatted(i + 1), sheet.picture(plan.boards().get(i), width));
        }
        return out;
    }

    private Svg picture(CutBoard cut, Length width) {
        List<String> names = jobs.stream().map(JobBlanks.Named::name).toList();
        return BoardDrawing.svg(cut, plan, units, names, width);
    }

    private Sheet sheet(String date, Paper paper) {
        String title = jobs.size() == 1
                ? jobs.get(0).name()
                : "%s and %d more".formatted(jobs.get(0).name(), jobs.size() - 1);
        PageFlow flow = new PageFlow("cut sheet", title, paper, paper.landscape());
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head("Cut sheet: " + title, date));
        if (!plan.missing().isEmpty()) {
            List<String> missing = new ArrayList<>();
            plan.missing()
                    .forEach(each -> missing.add("%s; %s."
                            .formatted(
                                    WoodToBuy.missing(plan, each, units), WoodToBuy.buy(plan.order(), each, units))));
            parts.add(flow.sentences("Wood is missing", missing));
        }
        parts.add(flow.sentences("Blanks, rough", blanks()));
        if (!plan.boards().isEmpty()) {
            parts.add(flow.cautions(BoardNotes.CAUTIONS));
        }
        for (CutBoard cut : plan.boards()) {
            Svg svg = picture(cut, Length.ofMm(flow.widthMm()));
            parts.add(headed(BoardWords.board(cut, units), svg));
            parts.add(flow.sentences(
                    "Cuts of board " + cut.label(),
                    BoardWords.steps(cut, plan.order().sawing(), units)));
        }
        parts.add(flow.sentences(
                "Left over, as long as the shortest blank (%s) or longer"
                        .formatted(plan.keep().format(units)),
                kept()));
        List<String> notes = BoardNotes.of(jobs, plan.order());
        if (!notes.isEmpty()) {
            parts.add(flow.sentences("Notes", notes));
        }
        return flow.sheet(parts);
    }

    /** The heading goes with its picture to the next page. */
    private static Flowing headed(String heading, Svg svg) {
        List<Shape> shapes = List.of(
                TextLine.of(Lettering.HEADING, 0, HEADING_MM - 3, heading), Group.at(0, HEADING_MM, svg.shapes()));
        return Flowing.whole(shapes, HEADING_MM + svg.height().mm() + AFTER_PICTURE_MM);
    }

    private List<String> blanks() {
        List<String> out = new ArrayList<>();
        for (Wanted each : plan.order().wanted()) {
            int job = jobs.stream().map(JobBlanks.Named::name).toList().indexOf(each.job());
            out.add("%s  %s: %d, %s square and %s long"
                    .formatted(
                            BoardDrawing.letter(job),
                            each.job(),
                            each.count(),
                            each.size().formatBoth(units),
                            each.length().formatBoth(units)));
        }
        out.add(BoardWords.aim(plan, units));
        return out;
    }

    private List<String> kept() {
        List<String> kept = BoardWords.kept(plan, units, MOST_KEPT);
        return kept.isEmpty() ? List.of("none") : kept;
    }
}
