package turnalike.cli.pieces;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.WorkingsOption;
import turnalike.job.Job;
import turnalike.job.answer.LikenessJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.LikenessReport;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;

@Command(
        name = "likeness",
        description = {
            "Says how alike the pieces are, as the eye compares them: one figure for each piece beside the pattern, what makes it unlike,"
                    + " and the piece most like it.",
            "A figure of 1 is one tolerance's worth of mass, 2 of diameter, 3 of length or of a mark's place, unless the job weighs them"
                    + " otherwise."
        },
        footer = {"", "Example: turnalike likeness wheel.job.json pieces.csv"},
        mixinStandardHelpOptions = true)
public final class LikenessCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Parameters(index = "1", paramLabel = "PIECES.csv", description = "The pieces with what was measured on them.")
    private Path piecesFile = Path.of("");

    @Option(names = "--json", description = "Print one JSON object at full precision, with every pair.")
    private boolean json;

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Job told = InputFiles.job(jobFile);
        PiecesFile.Read read = InputFiles.pieces(piecesFile, told);
        Job job = told.toldIn(read.massUnit());
        List<Slip> questions = ColumnTargets.questions(job, read);
        LikenessReport report =
                LikenessReport.of(job, read.pieces(), job.tolerances().masses());
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(LikenessJson.print(report, questions));
        } else {
            console.print(text(report));
            console.print(QuestionsText.text(questions));
            workings.print(report.workings(), console);
        }
        console.flush();
    }

    /** The least like the pattern first: that is the one to look at. */
    static String text(LikenessReport report) {
        StringBuilder out = new StringBuilder();
        out.append("Unlike   the piece, and what sets it apart; the most unlike first\n");
        for (LikenessReport.PieceLikeness entry : report.mostUnlikeFirst()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%7.2f  %s (%s%s)%n",
                    entry.figure().figure(),
                    entry.words(),
                    entry.nearest().isPresent() ? "most like " : "",
                    entry.twin()));
        }
        return out.toString();
    }
}
