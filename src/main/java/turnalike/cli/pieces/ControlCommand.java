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
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.kit.PaperOption;
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WorkingsOption;
import turnalike.cli.kit.WrittenFiles;
import turnalike.job.Job;
import turnalike.job.answer.ControlJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.ControlReport;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.RuleChoice;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

@Command(
        name = "control",
        description = {
            "Charts one column of the pieces in the order they were turned: centre, limits, and what looks like a change in the work.",
            "The rules bring a signal in at most one stable set in twenty of up to 40 pieces; --rules chooses others."
        },
        footer = {
            "",
            "Example: turnalike control pieces.csv --column mass_g --job wheel.job.json --out charts",
            "         turnalike control pieces.csv --column mass_oz, for a table in ounces"
        },
        mixinStandardHelpOptions = true)
public final class ControlCommand implements Runnable {
    @Parameters(paramLabel = "PIECES.csv", description = "The pieces, in the order they were turned.")
    private Path piecesFile = Path.of("");

    @Option(
            names = "--column",
            paramLabel = "NAME",
            required = true,
            description =
                    "mass_g or mass_oz, whichever the table has; length, balance, d1, d2, … or any column of numbers.")
    private String column = "";

    @Option(names = "--d2", paramLabel = "X", description = "Mean moving range over sigma (default 1.128, as printed).")
    private Optional<Double> d2 = Optional.empty();

    @Option(
            names = "--d4",
            paramLabel = "X",
            description = "The range limit over the mean range (default 3.267, as printed).")
    private Optional<Double> d4 = Optional.empty();

    @Option(
            names = "--rules",
            paramLabel = "CHOICE",
            description =
                    "Which rules speak: self-starting (default), usual, western-electric, nelson. The last three bring"
                            + " a signal in a third to two thirds of stable sets.")
    private String rules = RuleChoice.SELF_STARTING.word();

    @Option(
            names = "--job",
            paramLabel = "JOB",
            description = "The job file: gives lengths their unit, and judges drift and capability by its tolerances.")
    private Optional<Path> jobFile = Optional.empty();

    @Option(names = "--out", paramLabel = "DIR", description = "Write the chart (PDF, SVG) into this folder.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Option(names = "--json", description = "Print one JSON object at full precision, in the column's own unit.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Optional<Job> job = jobFile.map(InputFiles::job);
        // Without a job nobody knows the units of bare lengths; read as mm, they are charted as written.
        PiecesFile.Read read = PiecesFile.parseWithoutMass(
                InputFiles.table(piecesFile), job.map(Job::units).orElse(UnitSystem.METRIC));
        if (!read.problems().isEmpty()) {
            throw InputFiles.in(piecesFile, read.problems());
        }
        String file = String.valueOf(piecesFile.getFileName());
        ControlReport report = accept(file + ": " + column, ControlReport.of(job, read, column, constants(), choice()));
        List<Slip> questions =
                job.map(each -> ColumnTargets.questions(each, read)).orElse(read.slips());
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> write(report, job, each));
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(ControlJson.print(column, report, questions));
        } else {
            console.print(ControlSummary.text(column, report));
            console.print(QuestionsText.text(questions));
            workings.print(report.workings(), console);
            folder.ifPresent(each -> console.print(WrittenFiles.text(each.written())));
        }
        console.flush();
    }

    private void write(ControlReport report, Optional<Job> job, OutputFolder folder) {
        String title = job.map(each -> each.title() + ": ").orElse("") + report.things();
        PaperChoice choice = paper.orUsual(job.map(Job::units).orElse(UnitSystem.METRIC));
        ControlSheets.write(report, title, choice, folder);
    }

    private ChartConstants constants() {
        double meanRange = d2.orElse(ChartConstants.PRINTED.d2());
        double rangeLimit = d4.orElse(ChartConstants.PRINTED.d4());
        if (!(meanRange > 0 && meanRange < 100) || !(rangeLimit > 0 && rangeLimit < 100)) {
            throw UserError.of(
                    "--d2, --d4", "were %s and %s".formatted(meanRange, rangeLimit), "give numbers between 0 and 100");
        }
        return new ChartConstants(meanRange, rangeLimit);
    }

    private RuleChoice choice() {
        return RuleChoice.find(rules)
                .orElseThrow(() -> UserError.of(
                        "--rules", "no choice is called '%s'".formatted(rules), "give one of " + RuleChoice.words()));
    }

    private static <T> T accept(String where, Parsed<T> parsed) {
        return parsed.fold(value -> value, (what, mend) -> {
            throw UserError.of(where, what, mend);
        });
    }
}
