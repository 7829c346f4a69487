package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.POST;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.BlanksJson;
import turnalike.job.answer.BoardsJson;
import turnalike.job.answer.ControlJson;
import turnalike.job.answer.LikenessJson;
import turnalike.job.answer.MatchJson;
import turnalike.job.answer.MendJson;
import turnalike.job.answer.PlainJson;
import turnalike.job.answer.PlanJson;
import turnalike.job.answer.PriceJson;
import turnalike.job.boards.BoardsFile;
import turnalike.job.boards.JobBlanks;
import turnalike.job.kept.KeptBlanks;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.ShopLog;
import turnalike.job.pieces.BlanksReport;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.ControlReport;
import turnalike.job.pieces.LikenessReport;
import turnalike.job.pieces.MatchJob;
import turnalike.job.pieces.MendJob;
import turnalike.job.price.LoggedTimes;
import turnalike.job.price.PriceReport;
import turnalike.pieces.MassText;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.RuleChoice;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingPlan;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.web.api.Operation.Reply;
import turnalike.web.kit.Refusal;

/** What follows from a job and its log: the same answers as the commands print. */
final class FigureOperations {
    private static final String JOB = "/jobs/{job}";
    private static final String BOARDS =
            "board,thickness,width,length,count,price\nA,60 mm,220 mm,2400 mm,4,31.5\nB,60 mm,180 mm,1800 mm,6,20\n";

    private FigureOperations() {}

    static List<Operation> list() {
        return List.of(
                Operation.get(
                        JOB + "/plan",
                        "plan",
                        "Works out the plan, as `plan --json`; its search ends by proof or a fixed count of steps.",
                        Reply.json("The plan.", "settings", "stock"),
                        call -> Answer.json(plan(call))),
                Operation.get(
                        JOB + "/settings",
                        "settings",
                        "Works out the divider and caliper settings: the part `settings` of the plan.",
                        Reply.json("The settings."),
                        call -> Answer.json(PlainJson.part(plan(call), "settings")
                                .orElseThrow(() -> Refusal.notFound("a setting")))),
                Operation.get(
                                JOB + "/match",
                                "match",
                                "Chooses and places the set out of the logged pieces, as `match --json`, by the usual count of steps.",
                                Reply.json("The set.", "ended_by"),
                                FigureOperations::match)
                        .choosing("strict", "whether to go on below what the scale can tell", "no", "yes")
                        .choosing("rest", "whether what stands by hand but is not held is searched anew", "no", "yes"),
                Operation.get(
                        JOB + "/likeness",
                        "likeness",
                        "Tells how like each logged piece is to the others, as `likeness --json`.",
                        Reply.json("The figures."),
                        call -> {
                            KeptJob kept = call.job();
                            PiecesFile.Read read = pieces(kept);
                            Job job = kept.text().job();
                            return Answer.json(LikenessJson.print(
                                    LikenessReport.of(
                                            job, read.pieces(), job.tolerances().masses()),
                                    questions(job, read)));
                        }),
                Operation.get(
                                JOB + "/mend",
                                "mend",
                                "Tells how a piece is brought to weight, as `mend --json`.",
                                Reply.json("What to do.", "piece"),
                                FigureOperations::mend)
                        .asking("piece", "its label", "1")
                        .asking("to", "the mass wanted; the median of the others if left out", "142 g"),
                Operation.get(
                                JOB + "/control",
                                "control",
                                "Charts a column of the log, as `control --json`.",
                                Reply.json("The chart."),
                                FigureOperations::control)
                        .asking("column", "which; `mass_g` if left out", "mass_g")
                        .asking("rules", "one of " + RuleChoice.words(), RuleChoice.SELF_STARTING.word()),
                Operation.of(
                                POST,
                                JOB + "/boards",
                                "cutBoards",
                                "Cuts the blanks of the job, and of others sawn along, out of boards, as `boards --json`, by the usual count of"
                                        + " steps. Nothing is kept.",
                                Reply.json("The cutting.", "boards", "used", "bound", "proven", "missing", "ended_by"),
                                FigureOperations::boards)
                        .sending(boardsSchema(), Map.of("boards", BOARDS)),
                Operation.get(
                        JOB + "/blanks",
                        "blanks",
                        "Tells what the job's weighed blanks will give and which to turn, as `blanks --json`; without any it answers 422.",
                        Reply.json("The forecast.", "blanks", "choose", "spread_g"),
                        FigureOperations::blanks),
                Operation.get(
                        JOB + "/price",
                        "price",
                        "Tells what the job takes and comes to, as `price --json`; without any time taken it answers 422.",
                        Reply.json("Times and price.", "stages", "total_minutes", "notes"),
                        FigureOperations::price));
    }

    private static Map<String, ?> boardsSchema() {
        Map<String, Object> boards = Map.of(
                "type",
                "string",
                "description",
                "the boards as CSV, as `boards --boards` reads it; the job's own if left out");
        Map<String, Object> with = Map.of(
                "type",
                "array",
                "items",
                Map.of("type", "string"),
                "description",
                "ids of jobs whose blanks are sawn along");
        return Map.of("type", "object", "properties", Map.of("boards", boards, "with", with));
    }

    private static String plan(Call call) {
        return PlanJson.print(Plan.of(call.job().text().job(), Effort.usual()));
    }

    private static PiecesFile.Read pieces(KeptJob kept) {
        return new PiecesFile.Read(
                kept.pieces().stream().map(KeptPiece::piece).toList(),
                List.of(),
                List.of(),
                kept.text().job().tolerances().masses());
    }

    private static List<Slip> questions(Job job, PiecesFile.Read read) {
        return ColumnTargets.questions(job, read);
    }

    private static boolean isYes(Call call, String name) {
        return call.query(name).filter("yes"::equals).isPresent();
    }

    private static Answer match(Call call) {
        KeptJob kept = call.job();
        Job told = kept.text().job();
        Job job = isYes(call, "rest") ? told.with(told.byHand().searched()) : told;
        PiecesFile.Read read = pieces(kept);
        Call.refuse(read.pieces().stream()
                .filter(piece -> piece.mass().isEmpty())
                .map(piece -> new Problem("piece " + piece.label(), "has no mass", "weigh it"))
                .toList());
        Call.refuse(MatchJob.problems(job, read.pieces()));
        return Answer.json(MatchJson.print(
                MatchJob.of(job, read.pieces(), isYes(call, "strict"), Effort.usual()), questions(job, read)));
    }

    private static Answer mend(Call call) {
        KeptJob kept = call.job();
        Job job = kept.text().job();
        PiecesFile.Read read = pieces(kept);
        String label = call.query("piece").orElse("");
        Optional<Mass> target = call.query("to")
                .map(text -> MassText.parse(text, MassUnit.GRAM).fold(mass -> mass, (what, mend) -> {
                    throw Refusal.of(422, "to", what, mend);
                }));
        if (target.filter(mass -> !(mass.grams() > 0)).isPresent()) {
            throw Refusal.of(422, "to", "must be above zero", "give the mass wanted");
        }
        MendJob.lack(job, read.pieces(), label, target).ifPresent(lack -> {
            throw new Refusal(422, List.of(lacking(lack, label)));
        });
        return Answer.json(MendJson.print(MendJob.of(job, read.pieces(), label, target), questions(job, read)));
    }

    private static Problem lacking(MendJob.Lack lack, String label) {
        return switch (lack) {
            case PIECE -> new Problem("piece", "no piece is labelled '%s'".formatted(label), "use a logged label");
            case MASS -> new Problem("piece " + label, "has no mass", "weigh it");
            case LENGTH ->
                new Problem(
                        "piece " + label,
                        "nothing says which of the row's lengths it is made in",
                        "fill in its length, or let its label begin with the letter: A for the first");
            case TARGET -> new Problem("to", "no other piece is weighed to aim at", "give the mass wanted");
        };
    }

    private static Answer control(Call call) {
        KeptJob kept = call.job();
        Job job = kept.text().job();
        PiecesFile.Read read = pieces(kept);
        String column = call.query("column").orElse("mass_g");
        String word = call.query("rules").orElse(RuleChoice.SELF_STARTING.word());
        RuleChoice rules = RuleChoice.find(word)
                .orElseThrow(() -> Refusal.of(
                        422, "rules", "no choice is called '%s'".formatted(word), "give one of " + RuleChoice.words()));
        ControlReport report = ControlReport.of(Optional.of(job), read, column, ChartConstants.PRINTED, rules)
                .fold(found -> found, (what, mend) -> {
                    throw Refusal.of(422, column, what, mend);
                });
        return Answer.json(ControlJson.print(column, report, questions(job, read)));
    }

    private static Answer boards(Call call) {
        KeptJob kept = call.job();
        Map<String, Object> sent = call.text().isBlank() ? Map.of() : call.object();
        List<String> with = sent.getOrDefault("with", List.of()) instanceof List<?> ids
                ? ids.stream().map(String::valueOf).toList()
                : List.of();
        List<JobBlanks.Named> named = KeptBlanks.named(call.store(), kept, with);
        List<Board> boards = sent.containsKey("boards")
                ? told(String.valueOf(sent.get("boards")), named)
                : kept.text().job().shop().boards();
        if (boards.isEmpty()) {
            throw Refusal.of(
                    422,
                    "boards",
                    "the job has no boards of its own",
                    "send a table of them, or type them on its page");
        }
        CuttingPlan plan = JobBlanks.plan(named, boards, Effort.ofAsks(JobBlanks.USUAL_STEPS));
        Ending ended = plan.proven() && plan.longestProven() ? Ending.PROOF : Ending.STEPS;
        return Answer.json(BoardsJson.print(named, plan, ended));
    }

    private static List<Board> told(String table, List<JobBlanks.Named> named) {
        BoardsFile.Read read = BoardsFile.read(table, JobBlanks.units(named));
        Call.refuse(read.problems());
        return read.boards();
    }

    private static Answer blanks(Call call) {
        KeptJob kept = call.job();
        Job job = kept.text().job();
        if (job.shop().blanks().isEmpty()) {
            throw Refusal.of(
                    422,
                    "blanks",
                    "the job has no blanks of its own",
                    "put them into the job file, or type them on its page");
        }
        Call.refuse(BlanksReport.problems(job, job.shop().blanks()));
        ShopLog log = ShopLog.of(kept, call.store().done(kept.id()));
        return Answer.json(BlanksJson.print(BlanksReport.of(job, job.shop().blanks(), log.blanks())));
    }

    private static Answer price(Call call) {
        KeptJob kept = call.job();
        Job job = kept.text().job();
        LoggedTimes times = LoggedTimes.of(job.shop().times(), ShopLog.turned(kept));
        if (times.stages().isEmpty()) {
            throw Refusal.of(422, "times", "nothing is timed yet", "put times into the job file, or time a piece");
        }
        return Answer.json(PriceJson.print(PriceReport.of(job, times, job.shop().charges())));
    }
}
