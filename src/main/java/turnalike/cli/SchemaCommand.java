package turnalike.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import turnalike.job.keys.JobSchema;

/** Prints what a job file may hold, for editors and other programs. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of a job file, for editors and other programs.",
        footer = {"", "Example: turnalike schema > turnalike-job.schema.json"},
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        var console = spec.commandLine().getOut();
        console.print(JobSchema.print());
        console.flush();
    }
}
