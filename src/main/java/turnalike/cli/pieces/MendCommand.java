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
import turnalike.cli.kit.QuestionsText;
import turnalike.cli.kit.UserError;
import turnalike.cli.kit.WorkingsOption;
import turnalike.job.Job;
import turnalike.job.answer.MendJson;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.MendJob;
import turnalike.job.pieces.MendWords;
import turnalike.pieces.MassText;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

@Command(
        name = "mend",
        description = "The least visible cut that brings a heavy piece to weight; for a light one, what it lacks.",
        footer = {"", "Example: turnalike mend wheel.job.json pieces.csv --piece 7 --to 141"},
        mixinStandardHelpOptions = true)
public final class MendCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Parameters(index = "1", paramLabel = "PIECES.csv", description = "The pieces with their weights.")
    private Path piecesFile = Path.of("");

    @Option(names = "--piece", paramLabel = "LABEL", required = true, description = "Which piece.")
    private String label = "";

    @Option(
            names = "--to",
            paramLabel = "MASS",
            description = "The mass wanted, in grams or like \"5 oz\"; else the median of the others.")
    private Optional<String> to = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object at full precision.")
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
        Optional<Mass> target = to.map(text -> mass(text, job.tolerances().masses()));
        MendJob.lack(job, read.pieces(), label, target).ifPresent(lack -> {
            throw InputFiles.in(piecesFile, List.of(problem(lack)));
        });
        MendJob mend = MendJob.of(job, read.pieces(), label, target);
        List<Slip> questions = ColumnTargets.questions(job, read);
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(MendJson.print(mend, questions));
        } else {
            console.print(text(mend, job.units()));
            console.print(QuestionsText.text(questions));
            workings.print(mend.workings(), console);
        }
        console.flush();
    }

    private Problem problem(MendJob.Lack lack) {
        return switch (lack) {
            case PIECE ->
                new Problem("--piece", "no piece is labelled '%s'".formatted(label), "use a label of the file");
            case MASS -> new Problem("piece " + label, "has no mass", "weigh it");
            case LENGTH ->
                new Problem(
                        "piece " + label,
                        "nothing says which of the row's lengths it is made in",
                        "fill in its length, or let its label begin with the letter: A for the first");
            case TARGET -> new Problem("--to", "no other piece is weighed to aim at", "give the mass wanted with --to");
        };
    }

    private static Mass mass(String text, MassUnit bare) {
        Mass mass = MassText.parse(text, bare).fold(value -> value, (what, mend) -> {
            throw UserError.of("--to", what, mend);
        });
        if (!(mass.grams() > 0)) {
            throw UserError.of("--to", "must be above zero, was '%s'".formatted(text), "give the mass wanted");
        }
        return mass;
    }

    private static String text(MendJob mend, UnitSystem units) {
        MendWords words = mend.words(units);
        String before = mend.plan() instanceof MendPlan.Light ? "  - " : "  ";
        StringBuilder out = new StringBuilder("%s: %s\n".formatted(words.head(), words.verdict()));
        words.steps().forEach(step -> out.append(before).append(step).append('\n'));
        return out.toString();
    }
}
