package turnalike.cli.plan;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrittenFiles;
import turnalike.drawing.model.BodyWords;
import turnalike.drawing.model.StationTable;
import turnalike.job.Job;
import turnalike.sheets.PlanFile;
import turnalike.units.Length;
import turnalike.units.Parsed;

@Command(
        name = "export",
        description = {
            "Writes a job's pattern as files for other programs: stl and 3mf (a body in millimetres, to print a master from), stations (a table"
                    + " of places and diameters, CSV), svg and dxf (the outline at full size).",
            "A printed master is to be looked at and measured; keep it off the lathe. Nothing here steers a machine."
        },
        footer = {"", "Example: turnalike export wheel.job.json --to 3mf,stations --out exported"},
        mixinStandardHelpOptions = true)
public final class ExportCommand implements Runnable {
    private static final long MOST_ROWS = 20_000;

    @Parameters(paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Option(
            names = "--to",
            paramLabel = "FORMAT",
            split = ",",
            description = "stl, 3mf, stations, svg or dxf, or several with commas between; all of them if left out.")
    private List<String> formats = List.of();

    @Option(
            names = "--every",
            paramLabel = "LENGTH",
            description = "How far apart the stations stand between the marks; 1/4 in or 5 mm if left out.")
    private Optional<String> every = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "exported",
            description = "The folder to write into (default ${DEFAULT-VALUE}).")
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        List<PlanFile> files = files();
        Job job = InputFiles.job(jobFile);
        Length step = every.map(text -> step(text, job)).orElse(StationTable.usualStep(job.units()));
        if (StationTable.rows(job.pattern(), step) > MOST_ROWS) {
            throw UserError.of("--every", "gives more than %d stations".formatted(MOST_ROWS), "take a longer step");
        }
        OutputFolder folder = new OutputFolder(out);
        for (PlanFile file : files) {
            // The one file that asks for more than the job.
            byte[] bytes = file == PlanFile.STATIONS
                    ? StationTable.of(job.pattern(), job.units(), step).getBytes(StandardCharsets.UTF_8)
                    : file.of(job);
            folder.write(file.fileName(), bytes);
        }
        PrintWriter console = spec.commandLine().getOut();
        if (files.stream().anyMatch(PlanFile::isBody)) {
            BodyWords.of(job.pattern(), job.units()).forEach(console::println);
        }
        console.print(WrittenFiles.list(folder.written()));
        console.flush();
    }

    /** In their own order, each once. */
    private List<PlanFile> files() {
        List<String> words = new ArrayList<>();
        for (String format : formats) {
            String word = format.strip().toLowerCase(Locale.ROOT);
            if (PlanFile.of(word).isEmpty()) {
                throw UserError.of(
                        "--to",
                        "'%s' is no format that is written here".formatted(format),
                        "give %s".formatted(String.join(", ", PlanFile.words())));
            }
            words.add(word);
        }
        List<PlanFile> all = List.of(PlanFile.values());
        return words.isEmpty()
                ? all
                : all.stream().filter(each -> words.contains(each.word())).toList();
    }

    private static Length step(String text, Job job) {
        if (Length.parse(text, job.units()) instanceof Parsed.Refused<Length> refused) {
            throw UserError.of("--every", refused.what(), refused.mend());
        }
        Length step = Length.parse(text, job.units()).get();
        if (!step.isPositive()) {
            throw UserError.of("--every", "must be above zero", "give how far apart the stations stand, like 5 mm");
        }
        return step;
    }
}
