package turnalike.cli.pieces;

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
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WorkingsOption;
import turnalike.cli.store.LoggedJob;
import turnalike.job.Job;
import turnalike.job.answer.BlanksJson;
import turnalike.job.pieces.BlanksReport;
import turnalike.pieces.blanks.BlanksFile;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.units.MassUnit;
import turnalike.units.Problem;

@Command(
        name = "blanks",
        description = {
            "What each weighed blank will give once it is turned, and which to turn so that the finished weights differ least. Weigh the"
                    + " blanks milled and cut to length; add finished_g as pieces are done, and the rest is corrected by them.",
            "Without BLANKS.csv they are the job's own, typed on its page; with --store the pieces weighed and taken out so far in its log count.",
            "BLANKS.csv needs the columns blank and mass_g (or mass_oz); length, size, moisture_pct, finished_g and lost if known."
        },
        footer = {"", "Example: turnalike blanks wheel.job.json blanks.csv"},
        mixinStandardHelpOptions = true)
public final class BlanksCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json), or the id of a kept job.")
    private String jobFile = "";

    @Mixin
    private LoggedJob source = new LoggedJob();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "BLANKS.csv",
            description = "The blanks with their weights (if left out: the job's own).")
    private Optional<Path> blanksFile = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object at full precision.")
    private boolean json;

    /** Of the table; grams where there is none. */
    private MassUnit masses = MassUnit.GRAM;

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        LoggedJob.Found found = source.find(jobFile);
        List<WeighedBlank> blanks = blanks(found.job());
        Job job = found.job().toldIn(masses);
        refuse(BlanksReport.problems(job, blanks));
        BlanksReport report = BlanksReport.of(job, blanks, found.log().blanks());
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(BlanksJson.print(report));
        } else {
            console.print(BlanksSummary.text(report));
            workings.print(report.workings(), console);
        }
        console.flush();
    }

    private List<WeighedBlank> blanks(Job job) {
        if (blanksFile.isEmpty()) {
            if (job.shop().blanks().isEmpty()) {
                throw UserError.of(
                        "BLANKS.csv",
                        "the job has no blanks of its own",
                        "name a table of them, or type them on its page");
            }
            return job.shop().blanks();
        }
        BlanksFile.Read read = BlanksFile.parse(InputFiles.table(blanksFile.get()), job.units());
        refuse(read.problems());
        masses = read.massUnit();
        return read.blanks();
    }

    private void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw blanksFile.map(file -> InputFiles.in(file, problems)).orElseGet(() -> new UserError(problems));
        }
    }
}
