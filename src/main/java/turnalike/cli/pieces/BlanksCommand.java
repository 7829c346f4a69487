package turnalike.cli.pieces;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.WorkingsText;
import turnalike.job.Job;
import turnalike.job.answer.BlanksJson;
import turnalike.job.pieces.BlanksReport;
import turnalike.pieces.blanks.BlanksFile;
import turnalike.units.Problem;

@Command(
        name = "blanks",
        description = {
            "What each weighed blank will give once it is turned, and which to turn so that the finished weights differ least. Weigh the"
                    + " blanks milled and cut to length; add finished_g as pieces are done, and the rest is corrected by them.",
            "BLANKS.csv needs the columns blank and mass_g (or mass_oz); length, size, moisture_pct, finished_g and lost if known."
        },
        footer = {"", "Example: turnalike blanks wheel.job.json blanks.csv"},
        mixinStandardHelpOptions = true)
public final class BlanksCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Parameters(index = "1", paramLabel = "BLANKS.csv", description = "The blanks with their weights.")
    private Path blanksFile = Path.of("");

    @Option(names = "--json", description = "Print one JSON object at full precision.")
    private boolean json;

    @Option(names = "--workings", description = "Say how it was found, and the source.")
    private boolean workings;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Job job = InputFiles.job(jobFile);
        BlanksFile.Read read = BlanksFile.parse(InputFiles.text(blanksFile), job.units());
        refuse(read.problems());
        refuse(BlanksReport.problems(job, read.blanks()));
        BlanksReport report = BlanksReport.of(job, read.blanks());
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(BlanksJson.print(report));
        } else {
            console.print(BlanksSummary.text(report));
            if (workings) {
                console.print(WorkingsText.text(report.workings()));
            }
        }
        console.flush();
    }

    private void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw InputFiles.in(blanksFile, problems);
        }
    }
}
