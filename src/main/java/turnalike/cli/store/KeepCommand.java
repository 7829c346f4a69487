package turnalike.cli.store;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.job.Job;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptSummary;
import turnalike.solid.Solid;
import turnalike.store.StorePlace;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;

@Command(
        name = "keep",
        description = {
            "Keeps a job in a store, a file or a database, which is made where there is none, and prints the id the job is known by there.",
            "JOB is a job file, or what 'give' wrote: that comes back with its pieces and all of its history, unchanged."
        },
        footer = {"", "Example: turnalike keep wheel.job.json --store shop.db"},
        mixinStandardHelpOptions = true)
public final class KeepCommand implements Runnable {
    @Parameters(paramLabel = "JOB", description = "The job file (*.job.json), or a whole job as 'give' wrote it.")
    private Path jobFile = Path.of("");

    @Option(names = "--store", paramLabel = "STORE", required = true, description = Stores.OPTION)
    private String named = "";

    @Option(
            names = "--beside",
            description =
                    "Keep a given job as one of its own, with a new id, even if it or another state of it is here.")
    private boolean beside;

    @Option(
            names = "--into",
            paramLabel = "ID",
            description =
                    "Put the job file in place of the one that job has; its pieces stay, and every version stays in the history.")
    private Optional<String> into = Optional.empty();

    @Option(names = "--json", description = "Print one JSON object: the id and the job as stored.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        String text = InputFiles.text(jobFile);
        if (GivenJob.claims(text)) {
            if (into.isPresent()) {
                throw UserError.of(
                        "--into", "takes a job file, not a whole job", "leave --into out to take the whole job back");
            }
            GivenJob.Read read = GivenJob.read(text);
            GivenJob given = read.job().orElseThrow(() -> InputFiles.in(jobFile, read.problems()));
            keep(store -> beside ? store.keepBeside(given) : store.keep(given));
        } else {
            JobText.Read read = JobText.read(text);
            JobText job = read.text().orElseThrow(() -> InputFiles.in(jobFile, read.problems()));
            Optional<JobId> known = into.map(Stores::id);
            keep(store -> known.map(id -> change(store, id, job)).orElseGet(() -> store.keep(job)));
        }
    }

    private static JobId change(JobStore store, JobId id, JobText job) {
        return store.edit(id, kept -> Edit.of("change the job file", Change.of(job)))
                .map(step -> id)
                .orElseThrow(() -> Stores.unknown(id));
    }

    private interface Keeping {
        JobId in(JobStore store);
    }

    private void keep(Keeping keeping) {
        StorePlace place = Stores.place(named);
        Stores.with(() -> place.openOrMake(Today.clock()), store -> {
            JobId id = keeping.in(store);
            PrintWriter console = spec.commandLine().getOut();
            if (json) {
                KeptJob kept = store.find(id).orElseThrow();
                KeptSummary.kept(console, kept, out -> store.give(id, out), store::notes);
            } else {
                Job job = store.find(id).orElseThrow().text().job();
                console.println("Kept '%s' in %s as job %s.".formatted(job.title(), place, id));
                console.println("Log a piece: turnalike log %s --store %s --piece 1 --mass %s"
                        .formatted(id, place, likelyMass(job)));
                Stores.note(console, store.notes());
            }
            console.flush();
            return id;
        });
    }

    /** As its scale would show a piece turned as drawn; of one too light for that scale, to three figures. */
    private static String likelyMass(Job job) {
        Mass mass = Solid.of(job.pattern().outline(), job.wood().density()).mass();
        WeighingScale scale = job.tolerances().weighing();
        String shown = scale.figure(mass);
        return Double.parseDouble(shown) > 0
                ? shown
                : PlainNumber.toFigures(scale.unit().count(mass), 3);
    }
}
