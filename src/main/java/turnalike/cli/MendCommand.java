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
import turnalike.job.Job;
import turnalike.job.MendJob;
import turnalike.job.MendJson;
import turnalike.pieces.MassText;
import turnalike.pieces.MassUnit;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

@Command(
        name = "mend",
        description = "The least visible cut that brings a heavy piece to weight; for a light one, what it lacks.",
        footer = {"", "Example: turnalike mend wheel.job.json pieces.csv --piece 7 --to 141"},
        mixinStandardHelpOptions = true)
final class MendCommand implements Runnable {
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

    @Option(names = "--workings", description = "Say how it was found, and the source.")
    private boolean workings;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Job job = InputFiles.job(jobFile);
        PiecesFile.Read read = InputFiles.pieces(piecesFile, job);
        Optional<Mass> target = to.map(MendCommand::mass);
        List<Problem> problems = MendJob.problems(read.pieces(), label, target);
        if (!problems.isEmpty()) {
            throw InputFiles.in(piecesFile, problems);
        }
        MendJob mend = MendJob.of(job, read.pieces(), label, target);
        List<Slip> questions = Questions.of(job, read);
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(MendJson.print(mend, questions));
        } else {
            console.print(mend.plan().match(new Text(mend, job.units())));
            console.print(Questions.text(questions));
            if (workings) {
                console.print(Workings.text(mend.workings()));
            }
        }
        console.flush();
    }

    private static Mass mass(String text) {
        Mass mass = MassText.parse(text, MassUnit.GRAM).fold(value -> value, (what, mend) -> {
            throw UserError.of("--to", what, mend);
        });
        if (!(mass.grams() > 0)) {
            throw UserError.of("--to", "must be above zero, was '%s'".formatted(text), "give the mass wanted");
        }
        return mass;
    }

    /** What to do, in words. */
    private record Text(MendJob mend, UnitSystem units) implements MendPlan.Cases<String> {
        private String head(String rest, Object... values) {
            return String.format(
                            Locale.ROOT,
                            "Piece %s weighs %.1f g, wanted %.1f g: ",
                            mend.piece().label(),
                            mend.mass().grams(),
                            mend.target().grams())
                    + String.format(Locale.ROOT, rest, values)
                    + "\n";
        }

        @Override
        public String leave(MendPlan.Leave leave) {
            return head("near enough, leave it.");
        }

        @Override
        public String cuts(MendPlan.Cuts plan) {
            StringBuilder out = new StringBuilder(head(
                    "%s", plan.gentle() ? "these cuts nobody will see." : "these cuts, at the edge of what shows."));
            plan.cuts().forEach(cut -> out.append("  ").append(cut.words(units)).append('\n'));
            out.append(String.format(
                    Locale.ROOT,
                    "  It will then weigh %.1f g. Weigh between cuts.%n",
                    plan.massAfter().grams()));
            return out.toString();
        }

        @Override
        public String light(MendPlan.Light light) {
            StringBuilder out =
                    new StringBuilder(head("it lacks %.1f g.", light.lacking().grams()));
            mend.lightWays().forEach(way -> out.append("  - ").append(way).append('\n'));
            return out.toString();
        }

        @Override
        public String makeAnother(MendPlan.MakeAnother another) {
            return head(
                    "%.1f g too much, and the deepest cuts within the tolerance take off %.1f g. Turn another.",
                    another.tooMuch().grams(), another.cutsTakeOff().grams());
        }
    }
}
