package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Effort;
import turnalike.job.boards.BoardsFile;
import turnalike.job.boards.JobBlanks;
import turnalike.job.read.JobReader;
import turnalike.stock.boards.CuttingPlan;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Invented jobs and boards, from one short offcut to more than a page of planks. */
class CutSheetTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "%s", "units": "%s", "count": %d, "loss_pct": 0,
             "pattern": {"stock": {"section": "square", "size": "%s mm", "length": "%s mm"}, "members": [
              {"kind": "cylinder", "length": "60 mm", "diameter": "15 mm"}]},
             "wood": {"density_kg_m3": 700}}
            """;

    private static JobBlanks.Named job(String title, String units, int count, double size, double length) {
        String text = JOB.formatted(title, units, count, size, length);
        return new JobBlanks.Named(title, "x", JobReader.read(text).job().orElseThrow());
    }

    private static CuttingPlan plan(List<JobBlanks.Named> jobs, String boards) {
        return JobBlanks.plan(
                jobs,
                BoardsFile.read("board,thickness,width,length,count,price,from1,to1\n" + boards, UnitSystem.METRIC)
                        .boards(),
                Effort.ofAsks(200_000));
    }

    private static List<CuttingPlan> plans(List<JobBlanks.Named> jobs) {
        List<CuttingPlan> out = new ArrayList<>();
        out.add(plan(jobs, ""));
        out.add(plan(jobs, "offcut,30 mm,40 mm,130 mm,,,,\n"));
        out.add(plan(
                jobs,
                "thick,120 mm,130 mm,900 mm,,,400 mm,450 mm\nplank,45 mm,210 mm,2450 mm,6,19.5,1100 mm,1150 mm\n"));
        return out;
    }

    @Test
    void nothing_on_a_cut_sheet_overlaps_or_leaves_the_paper() throws IOException {
        for (String units : List.of("in", "mm")) {
            List<JobBlanks.Named> jobs = List.of(
                    job(
                            "Stair with a rather long title that says what it is for, and for whom, and when",
                            units,
                            40,
                            38,
                            520),
                    job("Gallery", units, 60, 18, 80));
            for (CuttingPlan plan : plans(jobs)) {
                for (Paper paper : Paper.values()) {
                    Sheet sheet = CutSheet.of(jobs, plan, "2026-11-28", paper);
                    for (Svg page : sheet.drawings()) {
                        assertThat(Lettered.overlaps(Lettered.boxes(page)))
                                .as(page.title())
                                .isEmpty();
                    }
                    Margins.assertFree(sheet.pdf(), paper.landscape());
                }
                CutSheet.drawings(jobs, plan, Length.ofMm(270)).values().forEach(Drawn::assertSound);
            }
        }
    }

    @Test
    void every_board_is_drawn_and_missing_wood_is_said_first() {
        List<JobBlanks.Named> jobs = List.of(job("Stair", "mm", 3, 38, 520));
        CuttingPlan plan = plan(jobs, "plank,45 mm,60 mm,1130 mm,,,,\n");
        assertThat(CutSheet.drawings(jobs, plan, Length.ofMm(270))).hasSize(1);
        List<String> lines = Lettered.boxes(
                        CutSheet.of(jobs, plan, "", Paper.A4).drawings().get(0))
                .stream()
                .map(Lettered.Box::text)
                .toList();
        assertThat(lines.indexOf("Wood is missing")).isBetween(0, lines.indexOf("Blanks, rough"));
        assertThat(lines).contains("Cautions");
        assertThat(Optional.of(lines.stream().filter("Cautions"::equals).count()))
                .hasValue(1L);
    }
}
