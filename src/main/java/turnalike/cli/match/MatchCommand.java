package turnalike.cli.match;

import java.io.PrintWriter;
import java.nio.file.Path;
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
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.kit.PaperOption;
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.Steps;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.WorkingsOption;
import turnalike.cli.kit.WrittenFiles;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.answer.MatchJson;
import turnalike.job.answer.SetTable;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.MatchJob;
import turnalike.job.set.SetMatch;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.sheets.Paper;
import turnalike.sheets.SetPicture;
import turnalike.sheets.SetSheets;
import turnalike.units.Length;
import turnalike.units.Problem;

@Command(
        name = "match",
        description = {
            "Chooses the set out of all pieces and places it in the job's frame, so that the wheel has no heavy spot.",
            "PIECES.csv needs the columns piece and mass_g (or mass_oz); length, balance, d1, d2 … if measured."
        },
        footer = {"", "Example: turnalike match wheel.job.json pieces.csv"},
        mixinStandardHelpOptions = true)
public final class MatchCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json), with a frame.")
    private Path jobFile = Path.of("");

    @Parameters(index = "1", paramLabel = "PIECES.csv", description = "The pieces with their weights.")
    private Path piecesFile = Path.of("");

    @Option(names = "--json", description = "Print one JSON object at full precision.")
    private boolean json;

    @Option(
            names = "--strict",
            description =
                    "Place the least unbalance there is, even below what the scale can tell apart and where another order is rounder.")
    private boolean strict;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description =
                    "Stop improving after N seconds, or at Ctrl-C, unless proven sooner (if left out: after a fixed count of steps, about a"
                            + " second's work, so that the same input gives the same set).")
    private Optional<Double> seconds = Optional.empty();

    @Option(
            names = "--rest",
            description =
                    "Search again what is not held by hand, from the order that stands by hand on; without it such an order is told as it stands.")
    private boolean rest;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Write the record of the set (PDF, SVG), its pictures, its places as a table (set.csv) and match.json into this folder.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Job told = InputFiles.job(jobFile);
        PiecesFile.Read read = InputFiles.pieces(piecesFile, told);
        Job inItsUnit = told.toldIn(read.massUnit());
        Job job = rest ? inItsUnit.with(told.byHand().searched()) : inItsUnit;
        Optional<Double> most = seconds.map(Arguments::seconds);
        try (ConsoleProgress waiter = ConsoleProgress.at(spec.commandLine().getErr())) {
            SetMatch match = match(job, read, piecesFile, strict, effort(most, waiter));
            waiter.found();
            print(job, read, match);
        }
    }

    private static Effort effort(Optional<Double> most, ConsoleProgress waiter) {
        Optional<Effort> timed = most.map(each -> Deadline.inSeconds(each, waiter));
        return timed.orElseGet(() -> Steps.usual(waiter));
    }

    private void print(Job job, PiecesFile.Read read, SetMatch match) {
        List<Slip> questions = ColumnTargets.questions(job, read);
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> {
            each.write("match.json", MatchJson.print(match, questions));
            writeRecord(job, match, paper.orUsual(job.units()), each);
        });
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(MatchJson.print(match, questions));
        } else {
            console.print(MatchSummary.text(match));
            console.print(QuestionsText.text(questions));
            workings.print(match.workings(), console);
            folder.ifPresent(each -> console.print(WrittenFiles.text(each.written())));
        }
        console.flush();
    }

    public static void writeRecord(Job job, SetMatch match, PaperChoice paper, OutputFolder folder) {
        SetSheets.drawings(match).forEach((name, svg) -> folder.write(name, svg.file()));
        SetPicture.of(match)
                .frame(job.pattern(), Length.ofMm(240))
                .ifPresent(svg -> folder.write("frame.svg", svg.file()));
        folder.write(SetTable.FILE, SetTable.csv(match));
        for (Paper each : paper.papers()) {
            folder.write(SetSheets.record(job.title(), Today.text(), match, job.pattern(), each));
        }
    }

    public static SetMatch match(Job job, PiecesFile.Read read, Path piecesFile, boolean strict, Effort effort) {
        List<Problem> problems = MatchJob.problems(job, read.pieces());
        if (!problems.isEmpty()) {
            throw InputFiles.in(piecesFile, problems);
        }
        return MatchJob.of(job, read.pieces(), strict, effort);
    }
}
