package turnalike.cli.trace;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.OutputFolder;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WrittenFiles;
import turnalike.drawing.piece.AgainstPicture;
import turnalike.drawing.piece.TracePicture;
import turnalike.job.Job;
import turnalike.job.answer.TraceJson;
import turnalike.job.edit.TracedJob;
import turnalike.job.kept.JobText;
import turnalike.job.original.OriginalWish;
import turnalike.job.pieces.AgainstReport;
import turnalike.trace.Snap;
import turnalike.trace.Traced;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

@Command(
        name = "trace",
        description = {
            "A pattern from an original: the members that explain a photograph, measured points or a drawn outline, with their sizes and how sure they are.",
            "A table (CSV) has the columns x and diameter, or side where the piece is square; two rows at one place are a shoulder."
                    + " Measure where each member begins and ends, where it is thickest or thinnest, and once more half way between: three rows tell no"
                    + " vee from a cove. A drawing"
                    + " (SVG, DXF) has one closed outline, or half of one closed along its axis.",
            "With --out, also a job file ready for plan, and a picture of the members under what was read.",
            "A photograph with the printed sheet in it (--sheet) needs no length; with both, they check each other.",
            "With --against JOB, a finished piece is held against its pattern: where each member stands, how thick it is, and how sure that is."
        },
        footer = {
            "",
            "Examples: turnalike trace leg.jpg --span 710mm --out copy",
            "          turnalike trace points.csv --units in --snap --out copy",
            "          turnalike trace --sheet --pages 3 --paper letter --out sheet",
            "          turnalike trace piece7.jpg --against 7k3m-2x9q-ht4d --store shop.db --log 7"
        },
        mixinStandardHelpOptions = true)
public final class TraceCommand implements Runnable {
    @Parameters(
            paramLabel = "SOURCE",
            arity = "0..1",
            description = "A photograph (*.jpg, *.png), measured points (*.csv) or a drawn outline (*.svg, *.dxf).")
    private Optional<Path> given = Optional.empty();

    private Path source = Path.of("");

    @Option(
            names = "--span",
            paramLabel = "LENGTH",
            description =
                    "The piece's overall length: what a photograph or drawing is scaled to. A photograph held against a job without it, and"
                            + " without the sheet, is taken to be as long as the pattern.")
    private Optional<String> span = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description =
                    "in or mm: how bare numbers are read and lengths printed (default mm; against a job, lengths are printed in the job's).")
    private Optional<String> units = Optional.empty();

    @Option(
            names = "--error",
            paramLabel = "E",
            description =
                    "How far a diameter was measured to be off, one standard deviation (of a table by default 0.2 mm,"
                            + " half of what a job's diameters may be off, and more where the rows stray by more; of a"
                            + " drawing what its outline wavers by).")
    private Optional<String> error = Optional.empty();

    @Option(names = "--snap", description = "Round places and sizes to 0.5 mm, or to 1/64 in with --units in.")
    private boolean snap;

    @Option(names = "--out", paramLabel = "DIR", description = "Write the job file and the picture into this folder.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object: lengths in mm, at full precision.")
    private boolean json;

    @Mixin
    private SheetOptions sheet = new SheetOptions();

    @Mixin
    private AgainstOptions against = new AgainstOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        if (sheet.isAskedFor()) {
            PrintWriter console = spec.commandLine().getOut();
            console.print(sheet.write(given, out, units.map(TraceCommand::units)));
            console.flush();
            return;
        }
        source = given.orElseThrow(() -> UserError.of(
                "SOURCE", "is missing", "name a photograph, a table or a drawing; or print the sheet with --sheet"));
        Optional<Job> job = against.findJob();
        Optional<UnitSystem> told = units.map(TraceCommand::units);
        UnitSystem in = told.orElse(UnitSystem.METRIC);
        UnitSystem shown = told.or(() -> job.map(Job::units)).orElse(UnitSystem.METRIC);
        Optional<Length> overall = span.map(text -> length("--span", text, in));
        Optional<Length> pattern = TraceSource.isPhotograph(source)
                ? job.map(each -> each.pattern().length())
                : Optional.empty();
        OriginalWish wish = OriginalWish.of(
                        in,
                        overall,
                        error.map(text -> length("--error", text, in)),
                        snap ? Snap.in(in) : Snap.finest(in))
                .onSheet(sheet.known((option, text) -> length(option, text, in)).orLength(pattern));
        Traced traced = TraceSource.trace(source, wish);
        // As long as the pattern to the last digit: taken from it, for want of a span and a sheet.
        boolean asPattern = overall.isEmpty()
                && pattern.equals(Optional.of(traced.original().profile().length()));
        Optional<AgainstReport> report = job.map(each -> against.report(each, traced, !asPattern, shown));
        Optional<OutputFolder> folder = out.map(OutputFolder::new);
        folder.ifPresent(each -> write(traced, report, shown, each));
        boolean logged = report.isPresent() && against.log(report.get(), traced, file());
        print(traced, report, shown, folder, logged);
    }

    private void print(
            Traced traced,
            Optional<AgainstReport> report,
            UnitSystem in,
            Optional<OutputFolder> folder,
            boolean logged) {
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(report.map(each -> TraceJson.print(traced, each)).orElseGet(() -> TraceJson.print(traced)));
        } else if (report.isPresent()) {
            console.print(AgainstSummary.text(report.get(), traced, in, file()));
            console.print(AgainstSummary.warnings(traced, in));
            folder.ifPresent(each -> console.print(WrittenFiles.list(each.written())));
            if (logged) {
                console.print(against.logged());
            }
        } else {
            console.print(TraceSummary.text(traced, in, file()));
            folder.ifPresent(each -> console.print(TraceSummary.begun(each.written())));
        }
        console.flush();
    }

    private String file() {
        return String.valueOf(source.getFileName());
    }

    private void write(Traced traced, Optional<AgainstReport> report, UnitSystem in, OutputFolder folder) {
        if (report.isPresent()) {
            AgainstReport found = report.get();
            folder.write(
                    name() + ".against.svg",
                    AgainstPicture.svg(
                                    found.job().pattern(),
                                    found.comparison(),
                                    found.job().tolerances().diameter(),
                                    found.words(),
                                    in)
                            .file());
        } else {
            write(traced, in, folder);
        }
    }

    private void write(Traced traced, UnitSystem in, OutputFolder folder) {
        String name = name();
        JobText.Read read = TracedJob.of(traced.run(), in, name);
        if (read.text().isEmpty()) {
            throw new UserError(read.problems());
        }
        folder.write(name + ".job.json", read.text().get().text());
        folder.write(name + ".trace.svg", TracePicture.svg(traced, in).file());
    }

    /** The source's name without its ending. */
    private String name() {
        String file = file();
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private static UnitSystem units(String text) {
        return UnitSystem.find(text)
                .orElseThrow(() -> UserError.of("--units", "was '%s'".formatted(text), "give in or mm"));
    }

    private static Length length(String option, String text, UnitSystem in) {
        Length length = Length.parse(text, in).fold(value -> value, (what, mend) -> {
            throw UserError.of(option, what, mend);
        });
        if (!length.isPositive()) {
            throw UserError.of(option, "must be above zero", "give a length above zero");
        }
        return length;
    }
}
