package turnalike.cli.plan;

import java.nio.file.Path;
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
import turnalike.cli.kit.WorkingsOption;
import turnalike.cli.kit.WrittenFiles;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.drawing.svg.Svg;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanFile;
import turnalike.sheets.PlanSheet;
import turnalike.units.Length;

@Command(
        name = "plan",
        description = {
            "Everything that follows from a job file: the solid's figures, the marks, the fewest divider settings that reach them,"
                    + " caliper sizes, stock and spares, and what is unwise to turn as drawn.",
            "With --out, also the sheets to print: bench card, order of cuts, full-size marking stick and checking template; DXF files of the"
                    + " outline; and the piece as it will look."
        },
        footer = {"", "Example: turnalike plan wheel.job.json --out sheets"},
        mixinStandardHelpOptions = true)
public final class PlanCommand implements Runnable {
    private static final Length TURNED_WIDTH = Length.ofMm(280);
    private static final Length TURNED_TALLEST = Length.ofMm(90);

    @Parameters(paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Option(names = "--json", description = "Print one JSON object: lengths in mm, masses in g, at full precision.")
    private boolean json;

    @Option(names = "--out", paramLabel = "DIR", description = "Write the sheets (PDF, SVG, DXF) into this folder.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "5",
            description =
                    "Stop looking for fewer divider settings after N seconds, or at Ctrl-C, unless proven sooner (default ${DEFAULT-VALUE}).")
    private double seconds;

    @Mixin
    private WorkingsOption workings = new WorkingsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Job job = InputFiles.job(jobFile);
        double most = Arguments.seconds(seconds);
        try (ConsoleProgress waiter = ConsoleProgress.at(spec.commandLine().getErr())) {
            Plan plan = Plan.of(job, Deadline.inSeconds(most, waiter));
            waiter.found();
            print(plan);
        }
    }

    private void print(Plan plan) {
        Job job = plan.job();
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> writeSheets(plan, paper.orUsual(job.units()), each));
        var console = spec.commandLine().getOut();
        if (json) {
            console.print(PlanJson.print(plan));
        } else {
            console.print(PlanSummary.text(plan));
            workings.print(plan.workings(), console);
            folder.ifPresent(each -> console.print(WrittenFiles.text(each.written())));
        }
        console.flush();
    }

    public static void writeSheets(Plan plan, PaperChoice paper, OutputFolder folder) {
        for (Paper each : paper.papers()) {
            for (PlanSheet sheet : PlanSheet.of(plan)) {
                folder.write(sheet.of(plan, each));
            }
        }
        PlanFile.of("dxf").forEach(each -> folder.write(each.fileName(), each.of(plan.job())));
        Svg turned = ShadedSpindle.svg(plan.job().pattern(), TURNED_WIDTH, TURNED_TALLEST);
        folder.write("turned.svg", turned.file());
    }
}
