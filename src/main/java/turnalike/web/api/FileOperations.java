package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.POST;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.TraceJson;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanSheet;
import turnalike.sheets.Sheet;
import turnalike.web.api.Operation.Reply;
import turnalike.web.copy.TraceOnce;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Originals traced and sheets made. */
final class FileOperations {
    private static final String SHEETS = "/jobs/{job}/sheets";
    private static final String FORM = "multipart/form-data";
    private static final String POINTS =
            "x,diameter\n0,20\n20,20\n40,34\n60,40\n100,30\n140,24\n180,24\n200,18\n240,18\n";

    private FileOperations() {}

    static List<Operation> list() {
        return List.of(
                Operation.of(
                                POST,
                                "/trace",
                                "trace",
                                "Makes a pattern of an original, as `trace --json`: a photograph, a table of measured points or a drawing,"
                                        + " told apart by the file's name; with a job, how a finished piece stands against it. Nothing is kept.",
                                Reply.json("What was found.", "source", "length_mm", "outline", "members", "warnings"),
                                FileOperations::trace)
                        .sending(FORM, form(), Map.of("source", POINTS, "units", "mm")),
                Operation.get(
                        SHEETS,
                        "listSheets",
                        "Lists the sheets that the job has.",
                        Reply.json("The sheets.", "sheets"),
                        FileOperations::sheets),
                Operation.get(
                                SHEETS + "/{sheet}/pdf",
                                "sheetPdf",
                                "Makes a sheet as PDF.",
                                new Reply(200, "application/pdf", "The sheet.", List.of()),
                                call -> new Answer(
                                        "application/pdf", sheet(call).pdf()))
                        .inPath("sheet", "which, as the list of sheets names it", "bench-card")
                        .choosing("paper", "`a4` if left out", "a4", "letter"),
                Operation.get(
                                SHEETS + "/{sheet}/svg",
                                "sheetSvg",
                                "Makes a drawing of a sheet as SVG, at its true size.",
                                new Reply(200, "image/svg+xml", "The drawing.", List.of()),
                                FileOperations::svg)
                        .inPath("sheet", "which, as the list of sheets names it", "bench-card")
                        .choosing("paper", "`a4` if left out", "a4", "letter")
                        .asking("page", "which of its pages; `1` if left out", "1"));
    }

    private static Map<String, ?> form() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(
                "source",
                Map.of(
                        "type",
                        "string",
                        "contentMediaType",
                        "text/csv",
                        "description",
                        "the file, under its own name: .jpg, .png, .csv, .svg or .dxf"));
        properties.put("units", text("in or mm: how bare numbers are read; mm if left out"));
        properties.put("span", text("the piece's overall length, for a photograph without a sheet of squares"));
        properties.put("error", text("how well a table was measured"));
        properties.put("snap", text("yes: sizes are rounded"));
        properties.put("bar", text("how long the bar of 100 mm is on the printed sheet in the picture"));
        properties.put("height", text("how high the piece's axis stands above that sheet"));
        properties.put("against", text("the id of a kept job: the finished piece is held against its pattern as well"));
        properties.put(
                "held", text("start or end: which ends of piece and pattern are laid together; start if left out"));
        properties.put("piece", text("what is written on that piece"));
        return Map.of("type", "object", "required", List.of("source"), "properties", properties);
    }

    private static Map<String, Object> text(String about) {
        return Map.of("type", "string", "description", about);
    }

    private static Answer trace(Call call) {
        RequestInput.read(call.ctx());
        Optional<Job> job = RequestInput.field(call.ctx(), "against")
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .map(id -> call.job(id).text().job());
        TraceOnce found = TraceOnce.of(call.ctx(), job);
        return Answer.json(found.report()
                .map(report -> TraceJson.print(found.traced(), report))
                .orElseGet(() -> TraceJson.print(found.traced())));
    }

    private static Plan plan(Call call) {
        return Plan.of(call.job().text().job(), Effort.usual());
    }

    private static String name(PlanSheet kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Answer sheets(Call call) {
        List<Map<String, Object>> out = PlanSheet.of(plan(call)).stream()
                .map(each -> {
                    Map<String, Object> sheet = new LinkedHashMap<>();
                    sheet.put("sheet", name(each));
                    sheet.put("title", each.title());
                    sheet.put("use", each.use());
                    return sheet;
                })
                .toList();
        return Answer.json(Map.of("sheets", out));
    }

    private static Sheet sheet(Call call) {
        String asked = call.ctx().pathParam("sheet");
        String paper = call.query("paper").orElse("a4");
        if (!List.of("a4", "letter").contains(paper)) {
            throw Refusal.of(422, "paper", "was '%s'".formatted(paper), "give a4 or letter");
        }
        Plan plan = plan(call);
        return PlanSheet.of(plan).stream()
                .filter(each -> name(each).equals(asked))
                .findFirst()
                .map(each -> each.of(plan, paper.equals("a4") ? Paper.A4 : Paper.LETTER))
                .orElseThrow(() -> Refusal.of(
                        404, "sheet", "the job has no sheet '%s'".formatted(asked), "use one of the list of sheets"));
    }

    private static Answer svg(Call call) {
        Sheet sheet = sheet(call);
        List<String> drawings =
                sheet.fileNames().stream().filter(file -> file.endsWith(".svg")).toList();
        int page = RequestInput.number(call.query("page")).orElse(1);
        if (page < 1 || page > drawings.size()) {
            throw Refusal.of(404, "page", "was %d".formatted(page), "give 1 to %d".formatted(drawings.size()));
        }
        return new Answer("image/svg+xml", sheet.file(drawings.get(page - 1)).orElseThrow());
    }
}
