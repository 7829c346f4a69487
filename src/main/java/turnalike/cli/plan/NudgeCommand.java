package turnalike.cli.plan;

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
import turnalike.cli.kit.Arguments;
import turnalike.cli.kit.ConsoleProgress;
import turnalike.cli.kit.Deadline;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.UserError;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.kept.JobText;
import turnalike.job.nudge.Nudge;
import turnalike.job.nudge.NudgeJson;
import turnalike.job.nudge.NudgeSearch;
import turnalike.job.nudge.Nudges;

@Command(
        name = "nudge",
        description = {
            "The smallest changes within your own tolerances (places and diameters, 1/64 in or 0.5 mm at a time) that save a divider or a"
                    + " caliper opening, each with its cost to the eye.",
            "With --take, the job file as it is after that one; the file itself stays as it is."
        },
        footer = {"", "Example: turnalike nudge wheel.job.json --take 1 > nudged.job.json"},
        mixinStandardHelpOptions = true)
public final class NudgeCommand implements Runnable {
    /** Of all the seconds, for the settings that the nudges have to undercut. */
    private static final double PLAN_SHARE = 0.3;

    @Parameters(paramLabel = "JOB", description = "The job file (*.job.json).")
    private Path jobFile = Path.of("");

    @Option(names = "--json", description = "Print one JSON object: lengths in mm, at full precision.")
    private boolean json;

    @Option(names = "--take", paramLabel = "N", description = "Print the job file with the nudge of that number taken.")
    private Optional<Integer> take = Optional.empty();

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "10",
            description = "Stop trying after N seconds, or at Ctrl-C (default ${DEFAULT-VALUE}).")
    private double seconds;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        if (json && take.isPresent()) {
            throw UserError.of("--json, --take", "are two answers", "ask for one at a time");
        }
        JobText.Read read = JobText.read(InputFiles.text(jobFile));
        JobText text = read.text().orElseThrow(() -> InputFiles.in(jobFile, read.problems()));
        double most = Arguments.seconds(seconds);
        try (ConsoleProgress waiter = ConsoleProgress.at(spec.commandLine().getErr())) {
            Effort whole = Deadline.inSeconds(most, waiter);
            Plan plan = Plan.of(text.job(), whole.share(PLAN_SHARE));
            Nudges nudges = NudgeSearch.of(text, plan, whole);
            waiter.found();
            PrintWriter console = spec.commandLine().getOut();
            console.print(take.isPresent() ? taken(nudges.nudges(), take.get()) : told(nudges));
            console.flush();
        }
    }

    private static String taken(List<Nudge> nudges, int number) {
        if (number < 1 || number > nudges.size()) {
            throw UserError.of(
                    "--take",
                    nudges.isEmpty() ? "there is no nudge to take" : "there is none of number %d".formatted(number),
                    nudges.isEmpty()
                            ? "give it more --seconds, or wider tolerances"
                            : "choose from 1 to %d".formatted(nudges.size()));
        }
        return nudges.get(number - 1).text().text();
    }

    private String told(Nudges nudges) {
        if (json) {
            return NudgeJson.print(nudges);
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < nudges.nudges().size(); i++) {
            Nudge nudge = nudges.nudges().get(i);
            out.append(String.format(Locale.ROOT, "%2d  %s%n", i + 1, nudge.words()));
            out.append(String.format(Locale.ROOT, "    cost to the eye %.2f%n", nudge.cost()));
        }
        if (nudges.nudges().isEmpty()) {
            out.append("No change within the tolerances was found to save an opening.%n".formatted());
        } else {
            out.append("Any is taken with --take and its number; costs count tolerances, weighed as likeness is.%n"
                    .formatted());
        }
        out.append(Nudges.LOOKED_FOR).append('\n');
        if (nudges.stopped()) {
            out.append("Time was up with %d changes untried: more --seconds tries them.%n".formatted(nudges.left()));
        }
        if (!nudges.fewestProven()) {
            out.append("That no fewer divider openings do without a nudge is not proven.%n".formatted());
        }
        return out.toString();
    }
}
