package turnalike.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.UserError;
import turnalike.job.edit.NewJob;
import turnalike.job.edit.Starter;
import turnalike.job.edit.StarterJob;
import turnalike.job.kept.JobText;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Prints a new job's file: an empty blank, or a starter pattern at the size asked for. */
@Command(
        name = "new",
        description = {
            "Prints a new job file: a blank with nothing turned, or a starter pattern made to your length and blank.",
            "Details keep their proportions at any length; the long stretches between take up the rest."
        },
        footer = {"", "Example: turnalike new --from vase-baluster --length 32 --size 1-3/4 > baluster.job.json"},
        mixinStandardHelpOptions = true)
final class NewCommand implements Runnable {
    @Option(names = "--from", paramLabel = "NAME", description = "The starter pattern; see --list.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--list", description = "Print the starter patterns' names.")
    private boolean list;

    @Option(names = "--length", paramLabel = "LENGTH", description = "Of the piece (as usual for it unless given).")
    private Optional<String> length = Optional.empty();

    @Option(
            names = "--size",
            paramLabel = "LENGTH",
            description = "Of the square blank (1 3/4 in or 45 mm unless given).")
    private Optional<String> size = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "in",
            description = "in or mm (default ${DEFAULT-VALUE}).")
    private String units = "in";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        PrintWriter console = spec.commandLine().getOut();
        UnitSystem system = UnitSystem.find(units)
                .orElseThrow(() -> UserError.of("--units", "was '%s'".formatted(units), "give in or mm"));
        if (list) {
            for (Starter starter : Starter.values()) {
                console.printf("%-16s %s, %s%n", starter.word(), starter.title(), starter.use());
            }
        } else if (from.isPresent()) {
            console.print(text(from.get(), system).text());
        } else if (length.isPresent() || size.isPresent()) {
            throw UserError.of(
                    "--from", "is not given, so there is nothing to size", "name a starter pattern: " + names());
        } else {
            console.print(NewJob.in(system).text());
        }
        console.flush();
    }

    private JobText text(String name, UnitSystem system) {
        Starter starter = Starter.find(name)
                .orElseThrow(() ->
                        UserError.of("--from", "no starter pattern '%s'".formatted(name), "give one of " + names()));
        boolean inches = system == UnitSystem.INCH;
        Length across = length("--size", size.orElse(inches ? "1 3/4" : "45"), system);
        Length whole = length.map(text -> length("--length", text, system)).orElse(across.times(starter.usualLength()));
        return StarterJob.of(starter, whole, across, system).fold(text -> text, (what, mend) -> {
            throw UserError.of("--from " + name, what, mend);
        });
    }

    private static Length length(String option, String text, UnitSystem system) {
        return Length.parse(text, system).fold(length -> length, (what, mend) -> {
            throw UserError.of(option, what, mend);
        });
    }

    private static String names() {
        return Arrays.stream(Starter.values()).map(Starter::word).collect(Collectors.joining(", "));
    }
}
