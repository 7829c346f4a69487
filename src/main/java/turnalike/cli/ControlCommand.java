package turnalike.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.job.ControlJson;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.RunRule;
import turnalike.pieces.control.Series;
import turnalike.pieces.control.Signal;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

@Command(
        name = "control",
        description = {
            "Charts one column of the pieces in the order they were turned: centre, limits, and what looks like a change in the work.",
            "The rules: Western Electric's four, six steadily rising or falling, and the moving range's own limit."
        },
        footer = {"", "Example: turnalike control pieces.csv --column mass_g"},
        mixinStandardHelpOptions = true)
final class ControlCommand implements Runnable {
    @Parameters(paramLabel = "PIECES.csv", description = "The pieces, in the order they were turned.")
    private Path piecesFile = Path.of("");

    @Option(
            names = "--column",
            paramLabel = "NAME",
            required = true,
            description = "mass_g, mass_oz, length, balance, d1, d2, … or any column of numbers.")
    private String column = "";

    @Option(names = "--d2", paramLabel = "X", description = "Mean moving range over sigma (default 1.128, as printed).")
    private Optional<Double> d2 = Optional.empty();

    @Option(
            names = "--d4",
            paramLabel = "X",
            description = "The range limit over the mean range (default 3.267, as printed).")
    private Optional<Double> d4 = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object at full precision, in the column's own unit.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        // Without a job nobody knows the units of bare lengths; read as mm, they are charted as written.
        PiecesFile.Read read = PiecesFile.parseWithoutMass(InputFiles.text(piecesFile), UnitSystem.METRIC);
        if (!read.problems().isEmpty()) {
            throw InputFiles.in(piecesFile, read.problems());
        }
        Series series = accept("--column", Series.of(read.pieces(), column));
        ControlChart chart = accept(
                String.valueOf(piecesFile.getFileName()) + ": " + column,
                ControlChart.of(series.points(), constants(), RunRule.usual()));
        PrintWriter console = spec.commandLine().getOut();
        console.print(json ? ControlJson.print(column, chart) : text(chart));
        console.flush();
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

    private static <T> T accept(String where, Parsed<T> parsed) {
        return parsed.fold(value -> value, (what, mend) -> {
            throw UserError.of(where, what, mend);
        });
    }

    private String text(ControlChart chart) {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "%s of %d pieces%s%n  centre  %.4f%n  limits  %.4f to %.4f%n  moving range  mean %.4f, limit %.4f%n",
                column,
                chart.points().size(),
                chart.isTrial() ? " (too few for more than trial limits)" : "",
                chart.centre(),
                chart.lower(),
                chart.upper(),
                chart.meanMovingRange(),
                chart.rangeUpper()));
        List<Signal> signals = chart.signals();
        out.append(signals.isEmpty() ? "Nothing looks like a change in the work.\n" : "Look at these\n");
        signals.forEach(signal -> out.append("  ").append(signal.words()).append('\n'));
        chart.memory().ifPresent(words -> out.append("  note: ").append(words).append('\n'));
        return out.toString();
    }
}
