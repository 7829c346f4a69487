package turnalike.cli.boards;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.Arguments;
import turnalike.cli.kit.ConsoleProgress;
import turnalike.cli.kit.Deadline;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperOption;
import turnalike.cli.kit.Steps;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrittenFiles;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.Job;
import turnalike.job.answer.BoardsJson;
import turnalike.job.boards.BoardsFile;
import turnalike.job.boards.JobBlanks;
import turnalike.sheets.CutSheet;
import turnalike.sheets.Paper;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingPlan;
import turnalike.units.Length;

@Command(
        name = "boards",
        description = {
            "Cuts the rough blanks of one or several jobs out of the boards in hand, spares included: the boards that cost least (the fewest,"
                    + " where nothing has a price), and of such plans one that leaves the longest single piece.",
            "BOARDS.csv needs the columns board, thickness, width and length; count, price, species and faults as from1, to1, from2, to2 …"
                    + " if told. A bare number is in the first job's units.",
            "Saw cut, edge and end are the jobs' own key 'sawing'; jobs sawn in one go share the greatest of each."
        },
        footer = {"", "Example: turnalike boards wheel.job.json --boards boards.csv --out sheets"},
        mixinStandardHelpOptions = true)
public final class BoardsCommand implements Runnable {
    private static final Length PICTURE = Length.ofMm(270);

    @Parameters(paramLabel = "JOB", arity = "1..*", description = "The job files (*.job.json).")
    private List<Path> jobFiles = new ArrayList<>();

    @Option(
            names = "--boards",
            paramLabel = "BOARDS.csv",
            description = "The boards in hand (if left out: those of the first job, typed on its page).")
    private Optional<Path> boardsFile = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object: lengths in mm, at full precision.")
    private boolean json;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write the cut sheet (PDF, SVG), a picture of each board and boards.json into this folder.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description =
                    "Stop improving after N seconds, or at Ctrl-C, unless proven sooner (if left out: after a fixed count of steps, about five"
                            + " seconds' work, so that the same input gives the same plan).")
    private Optional<Double> seconds = Optional.empty();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        List<Job> jobs = jobFiles.stream().map(InputFiles::job).toList();
        List<String> names = jobFiles.stream()
                .map(file -> String.valueOf(file.getFileName()))
                .toList();
        List<JobBlanks.Named> named = JobBlanks.named(names, jobs);
        List<Board> boards = boardsFile.map(file -> boards(file, named)).orElseGet(() -> own(jobs.get(0)));
        Optional<Double> most = seconds.map(Arguments::seconds);
        try (ConsoleProgress waiter = ConsoleProgress.at(spec.commandLine().getErr())) {
            CuttingPlan plan = JobBlanks.plan(named, boards, effort(most, waiter));
            waiter.found();
            print(named, plan, ended(plan, most.isPresent(), waiter.hasEnough()));
        }
    }

    private static List<Board> boards(Path file, List<JobBlanks.Named> named) {
        BoardsFile.Read read = BoardsFile.read(InputFiles.table(file), JobBlanks.units(named));
        if (!read.problems().isEmpty()) {
            throw InputFiles.in(file, read.problems());
        }
        return read.boards();
    }

    private static List<Board> own(Job job) {
        if (job.shop().boards().isEmpty()) {
            throw UserError.of(
                    "--boards", "the job has no boards of its own", "name a table of them, or type them on its page");
        }
        return job.shop().boards();
    }

    private static Effort effort(Optional<Double> most, ConsoleProgress waiter) {
        Optional<Effort> timed = most.map(each -> Deadline.inSeconds(each, waiter));
        return timed.orElseGet(() -> Steps.ofAsks(JobBlanks.USUAL_STEPS, waiter));
    }

    private static Ending ended(CuttingPlan plan, boolean timed, boolean stopped) {
        if (plan.proven() && plan.longestProven()) {
            return Ending.PROOF;
        }
        return stopped ? Ending.STOPPED : timed ? Ending.SECONDS : Ending.STEPS;
    }

    private void print(List<JobBlanks.Named> jobs, CuttingPlan plan, Ending ended) {
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> write(jobs, plan, ended, each));
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(BoardsJson.print(jobs, plan, ended));
        } else {
            console.print(BoardsSummary.text(jobs, plan));
            folder.ifPresent(each -> console.print(WrittenFiles.list(each.written())));
        }
        console.flush();
    }

    private void write(List<JobBlanks.Named> jobs, CuttingPlan plan, Ending ended, OutputFolder folder) {
        folder.write("boards.json", BoardsJson.print(jobs, plan, ended));
        CutSheet.drawings(jobs, plan, PICTURE).forEach((name, svg) -> folder.write(name, svg.file()));
        for (Paper each : paper.orUsual(JobBlanks.units(jobs)).papers()) {
            folder.write(CutSheet.of(jobs, plan, Today.text(), each));
        }
    }
}
